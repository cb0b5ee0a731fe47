import { ask } from "../asking/index.ts";
import { type LengthUnit, type Mm, mm } from "../units/index.ts";
import { type Given, Problem, problemAt } from "../worked/index.ts";
import { demoShop } from "./demo-shop.ts";
import { cuttersOf, hingesOf, type LengthReader } from "./read-things.ts";
import type { Shop } from "./shop.ts";

const LONGEST_SHOP = 1_000_000;
const MOST_WIDTHS = 40;

/** A length of the shop's file, by the demo shop's own where it is left out. */
const size = (says: string, most: number, example: string, least = 0) =>
  ask.length(says, { least, most, example, fallback: example });

/** The lengths of a shop's file, by their names there. */
export const shopAsks = {
  "extra-length": size("added to a length when it is sawn out", 100, "25 mm"),
  "extra-width": size("added to a width when it is ripped", 100, "6 mm"),
  "cheek-clearance": size("tenon thinner than its mortise", 100, "0.1 mm"),
  "width-clearance": size("mortise longer than its tenon is wide", 100, "0.5 mm"),
  "depth-clearance": size("mortise deeper than its tenon is long", 100, "1.5 mm"),
  "arm-kerf": size("cut of the saw that frees the ends of an arm", 10, "1.2 mm", 0.2),
  "rip-kerf": size("cut of the saw that rips", 10, "3 mm", 0.2),
  "pivot-screw": size("shank of the screw that an arm turns on", 20, "6.35 mm", 2),
  "pivot-hole": size("the hole it turns in", 20, "6.5 mm", 2),
  "pivot-head": size("head of that screw", 40, "12 mm", 4),
  "pivot-length": size("length of that screw", 200, "75 mm", 20),
  "pin-error": size("how far a hinge’s pin usually comes out off its place", 2, "0.1 mm"),
  "set-out-error": size("the same for a leaf’s set-out", 2, "0.05 mm"),
  "cutter-error": size("the same for a moulding’s radius", 2, "0.03 mm"),
  "thickness-error": size("the same for a planed thickness", 2, "0.05 mm"),
};
type LengthName = keyof typeof shopAsks;
const chisel = ask.length("a chisel's width", { least: 2, most: 50, example: "3/8 in" });
const washer = ask.length("a washer's thickness", { least: 0.1, most: 6, example: "1 mm" });

const FIELDS = [
  "format",
  "version",
  "name",
  "units",
  "chisels",
  "washers",
  "joint-cutters",
  "leaf-hinges",
  ...Object.keys(shopAsks),
];

export type ShopRead =
  | { readonly ok: true; readonly shop: Shop }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads a shop's file, gathering every fault; what is left out is the demo shop's.
 *
 * @param text  JSON: {"format": "latewood-shop", "version": 1, "name": …, "chisels": ["1/4 in", …]}
 */
export function readShop(text: string): ShopRead {
  const problems: Problem[] = [];
  const fault = (code: string, place: string, reason: string, remedy: string) =>
    void problems.push(new Problem(code, place, reason, remedy));
  const raw = parsed(text, fault);
  if (!raw) return { ok: false, problems };
  if (raw.format !== "latewood-shop")
    fault("not-this", "format", "This is not a shop's file.", 'Write "latewood-shop".');
  if (raw.version !== 1)
    fault("version-unknown", "version", "This Latewood knows version 1.", "Write 1.");
  for (const name of Object.keys(raw).filter((n) => !FIELDS.includes(n)))
    fault(
      "field-unknown",
      name.slice(0, 60),
      "There is no such field.",
      `Use ${FIELDS.join(", ")}.`,
    );
  const units: LengthUnit = raw.units === "inch" ? "inch" : "mm";
  if (raw.units !== undefined && raw.units !== units)
    fault("not-a-choice", "units", "There are two sides.", "Write inch or mm.");
  const reader: LengthReader = (question, given, place) =>
    lengthOf(question, given, place, units, problems);
  const length = (name: LengthName, stands: Mm): Mm => {
    const given = raw[name];
    if (given === undefined) return stands;
    return reader(shopAsks[name], given, name) ?? stands;
  };
  const shop: Shop = {
    name: typeof raw.name === "string" ? raw.name.slice(0, 120) : "A shop",
    isDemo: false,
    chisels: widthsOf("chisels", raw.chisels, chisel, demoShop.chisels, reader, problems),
    washers: widthsOf("washers", raw.washers, washer, demoShop.washers, reader, problems),
    jointCutters: cuttersOf(raw["joint-cutters"], reader, problems) ?? demoShop.jointCutters,
    leafHinges: hingesOf(raw["leaf-hinges"], reader, problems) ?? demoShop.leafHinges,
    extraLength: length("extra-length", demoShop.extraLength),
    extraWidth: length("extra-width", demoShop.extraWidth),
    cheekClearance: length("cheek-clearance", demoShop.cheekClearance),
    widthClearance: length("width-clearance", demoShop.widthClearance),
    depthClearance: length("depth-clearance", demoShop.depthClearance),
    armKerf: length("arm-kerf", demoShop.armKerf),
    ripKerf: length("rip-kerf", demoShop.ripKerf),
    pivotScrew: length("pivot-screw", demoShop.pivotScrew),
    pivotHole: length("pivot-hole", demoShop.pivotHole),
    pivotHead: length("pivot-head", demoShop.pivotHead),
    pivotLength: length("pivot-length", demoShop.pivotLength),
    pinError: length("pin-error", demoShop.pinError),
    setOutError: length("set-out-error", demoShop.setOutError),
    cutterError: length("cutter-error", demoShop.cutterError),
    thicknessError: length("thickness-error", demoShop.thicknessError),
  };
  if (problems.length === 0 && shop.pivotHole < shop.pivotScrew)
    fault(
      "pivot-hole-small",
      "pivot-hole",
      "The screw that an arm turns on is thicker than its hole.",
      "Write a hole a little wider than the screw.",
    );
  return problems.length > 0 ? { ok: false, problems } : { ok: true, shop };
}

type Fault = (code: string, place: string, reason: string, remedy: string) => void;

function parsed(text: string, fault: Fault): Readonly<Record<string, unknown>> | undefined {
  try {
    const raw: unknown = text.length > LONGEST_SHOP ? undefined : JSON.parse(text);
    if (typeof raw === "object" && raw !== null && !Array.isArray(raw))
      return raw as Readonly<Record<string, unknown>>;
  } catch (problem) {
    if (!(problem instanceof SyntaxError)) throw problem;
  }
  fault(
    "not-json",
    "the shop’s file",
    "It is no JSON object.",
    'Begin with {"format": "latewood-shop", "version": 1}.',
  );
  return undefined;
}

function lengthOf(
  question: typeof chisel,
  text: unknown,
  name: string,
  units: LengthUnit,
  problems: Problem[],
): Mm | undefined {
  if (typeof text !== "string") {
    problems.push(
      new Problem(
        "wrong-type",
        name,
        "It is no text.",
        'Write a length in quotation marks, such as "6 mm".',
      ),
    );
    return undefined;
  }
  const read = question.read(text, units, false);
  if (read.ok) return (read.value as Given<Mm>).value;
  problems.push(problemAt(name, read.fault));
  return undefined;
}

function widthsOf(
  name: string,
  texts: unknown,
  question: typeof chisel,
  stands: readonly Mm[],
  reader: LengthReader,
  problems: Problem[],
): readonly Mm[] {
  if (texts === undefined) return stands;
  if (!Array.isArray(texts) || texts.length === 0 || texts.length > MOST_WIDTHS) {
    const [a, b] = stands.map((width) => `"${width} mm"`);
    problems.push(
      new Problem("wrong-type", name, "It is no list of widths.", `Write [${a}, ${b}].`),
    );
    return stands;
  }
  const widths = texts.flatMap((text, i) => {
    const width = reader(question, text, `${name}, number ${i + 1}`);
    return width === undefined ? [] : [width];
  });
  return [...new Set(widths)].map(mm).sort((a, b) => a - b);
}
