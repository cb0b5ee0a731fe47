import { ask } from "../asking/index.ts";
import { type LengthUnit, type Mm, mm } from "../units/index.ts";
import { type Given, Problem, problemAt } from "../worked/index.ts";
import { demoShop, type Shop } from "./shop.ts";

const LONGEST_SHOP = 1_000_000;
const MOST_CHISELS = 40;

const small = (says: string, example: string) =>
  ask.length(says, { least: 0, most: 100, example, fallback: example });

/** The lengths of a shop's file, by their names there. */
export const shopAsks = {
  "extra-length": small("added to a length when it is sawn out", "25 mm"),
  "extra-width": small("added to a width when it is ripped", "6 mm"),
  "cheek-clearance": small("tenon thinner than its mortise", "0.1 mm"),
  "width-clearance": small("mortise longer than its tenon is wide", "0.5 mm"),
  "depth-clearance": small("mortise deeper than its tenon is long", "1.5 mm"),
};
const chisel = ask.length("a chisel's width", { least: 2, most: 50, example: "3/8 in" });

const FIELDS = ["format", "version", "name", "units", "chisels", ...Object.keys(shopAsks)];

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
  const length = (question: (typeof shopAsks)["extra-width"], name: string, stands: Mm): Mm => {
    const given = raw[name];
    if (given === undefined) return stands;
    return lengthOf(question, given, name, units, problems) ?? stands;
  };
  const shop: Shop = {
    name: typeof raw.name === "string" ? raw.name.slice(0, 120) : "A shop",
    isDemo: false,
    chisels: chiselsOf(raw.chisels, units, problems),
    extraLength: length(shopAsks["extra-length"], "extra-length", demoShop.extraLength),
    extraWidth: length(shopAsks["extra-width"], "extra-width", demoShop.extraWidth),
    cheekClearance: length(shopAsks["cheek-clearance"], "cheek-clearance", demoShop.cheekClearance),
    widthClearance: length(shopAsks["width-clearance"], "width-clearance", demoShop.widthClearance),
    depthClearance: length(shopAsks["depth-clearance"], "depth-clearance", demoShop.depthClearance),
  };
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

function chiselsOf(texts: unknown, units: LengthUnit, problems: Problem[]): readonly Mm[] {
  if (texts === undefined) return demoShop.chisels;
  if (!Array.isArray(texts) || texts.length === 0 || texts.length > MOST_CHISELS) {
    problems.push(
      new Problem(
        "wrong-type",
        "chisels",
        "It is no list of widths.",
        'Write ["1/4 in", "3/8 in"].',
      ),
    );
    return demoShop.chisels;
  }
  const widths = texts.flatMap((text, i) => {
    const width = lengthOf(chisel, text, `chisels, number ${i + 1}`, units, problems);
    return width === undefined ? [] : [width];
  });
  return [...new Set(widths)].map(mm).sort((a, b) => a - b);
}
