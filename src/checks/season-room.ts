import type { Part, Piece, Value } from "../piece/index.ts";
import { type McPct, type Mm, mm } from "../units/index.ts";
import { widthChange } from "../wood/index.ts";
import {
  commonPractice,
  derived,
  type Finding,
  type Given,
  given,
  isWorked,
  type Worked,
  work,
} from "../worked/index.ts";

/** Least of a tongue that stays in the rail when the top is narrowest; common practice. */
const HOLD = given("least of the tongue that must hold", mm(4), "mm", commonPractice);

/** Values of one place where the top is held, by what they are. */
type Held = { readonly key: string; readonly of: Readonly<Record<string, Value>> };

/** Whether every place where the top is held still lets it move through the year. */
export function seasonRoom(piece: Piece): readonly Finding[] {
  const places = heldPlaces(piece.values);
  const judged = places
    .flatMap((held) => marginsOf(held).map((margin) => ({ held, margin })))
    .sort((a, b) => a.margin.value - b.margin.value);
  const [tightest] = judged;
  if (!tightest) return [];
  const short = judged.filter(({ margin }) => margin.value < -0.05);
  const isHeldFast =
    piece.joints.some(({ says }) => says.endsWith("held fast")) || places.some(isButton);
  const says =
    short.length > 0
      ? `${capital(tightest.margin.says)} is too little for the seasons: the top may split, or lift off.`
      : "The top can swell and shrink through the year where it is held.";
  return [
    {
      id: "seasons/top-fastening",
      group: "Seasons",
      verdict: short.length > 0 || !isHeldFast ? "watch" : "ok",
      says,
      margin: tightest.margin,
      why: [tightest.margin],
      lights: [...new Set(short.map(({ held }) => held.key))],
    },
  ];
}

const capital = (says: string) => says.charAt(0).toUpperCase() + says.slice(1);
const isButton = ({ of }: Held): boolean => of.tongue !== undefined;

function heldPlaces(values: readonly Value[]): readonly Held[] {
  const places = new Map<string, Record<string, Value>>();
  for (const value of values) {
    const found = /^(.*\/fastening\/[a-z]+-\d+)\.(travel|tongue|gap|depth)$/.exec(value.key);
    const [, key = "", what = ""] = found ?? [];
    if (!found) continue;
    const place = places.get(key) ?? {};
    place[what] = value;
    places.set(key, place);
  }
  return [...places].map(([key, of]) => ({ key, of }));
}

/** What is left, dry and damp, of what each place needs; all of it from the sizes in force. */
function marginsOf({ of: { travel, tongue, gap, depth } }: Held): readonly Worked<Mm>[] {
  if (travel) {
    const move = moveOf(travel);
    const v = made(travel);
    return [
      work({
        says: `room left in its slot, ${travel.says.split(": ")[0]}`,
        unit: "mm",
        formula: "a = v/2 − Δ",
        inputs: { v, Δ: move },
        value: mm(travel.inForce / 2 - move.value),
        source: derived("geometry of the slot"),
      }),
    ];
  }
  if (!tongue || !gap || !depth) return [];
  const move = moveOf(tongue);
  const [l, g, p] = [made(tongue), made(gap), made(depth)];
  const name = tongue.says.split(": ")[0];
  return [
    work({
      says: `hold of the tongue in the driest season, ${name}`,
      unit: "mm",
      formula: "a = l − g − Δ − h",
      inputs: { l, g, Δ: move, h: HOLD },
      value: mm(tongue.inForce - gap.inForce - move.value - HOLD.value),
      source: derived("geometry of the button"),
    }),
    work({
      says: `gap left in the dampest season, ${name}`,
      unit: "mm",
      formula: "a = g − Δ",
      inputs: { g, Δ: move },
      value: mm(gap.inForce - move.value),
      source: derived("geometry of the button"),
    }),
    work({
      says: `depth left behind the tongue in the dampest season, ${name}`,
      unit: "mm",
      formula: "a = p − (l − g) − Δ",
      inputs: { p, l, g, Δ: move },
      value: mm(depth.inForce - (tongue.inForce - gap.inForce) - move.value),
      source: derived("geometry of the button"),
    }),
  ];
}

const made = ({ says, inForce }: Value): Given<Mm> =>
  given(says, inForce, "mm", derived("as made"));

/** The movement that a size was computed for. */
function moveOf({ key, computed }: Value): Given<Mm> | Worked<Mm> {
  const move = computed.inputs.Δ;
  if (!move) throw new Error(`${key} was not computed from a movement`);
  return (isWorked(move) ? move : { ...move }) as Given<Mm> | Worked<Mm>;
}

/** What the widths of top and leaves do through the year: told, for the owner to know. */
export function boardsThroughYear(piece: Piece): readonly Finding[] {
  const coefficient = piece.values
    .map(({ computed }) => deepInput(computed, "C"))
    .find((found) => found !== undefined);
  if (!coefficient) return [];
  const of = (role: Part["role"]) => piece.parts.filter((part) => part.role === role);
  const told = (boards: readonly Part[], id: string, name: string, end: string) => {
    const [board] = boards;
    return board ? [throughYear(piece, coefficient, boards, { id, name, end })] : [];
  };
  return [
    ...told(of("top"), "seasons/top-width", "the top", "held so that it may"),
    ...told(of("leaf"), "seasons/leaf-width", "a leaf", "free at its edge"),
  ];
}

type Said = { readonly id: string; readonly name: string; readonly end: string };

function throughYear(
  { seasons }: Piece,
  coefficient: Worked | Given,
  boards: readonly Part[],
  { id, name, end }: Said,
): Finding {
  const { driest, dampest, made: now } = seasons;
  const widest = mm(Math.max(...boards.map(({ blank }) => blank.width)));
  const change = (to: Given<McPct> | Worked<McPct>) =>
    widthChange(widest, coefficient as Parameters<typeof widthChange>[1], now, to);
  const [dry, damp] = [change(driest), change(dampest)];
  return {
    id,
    group: "Seasons",
    verdict: "ok",
    says: `Through the year ${name} ${words(dry.value)} in the dry season and ${words(damp.value)} in the damp one, ${end}.`,
    margin: Math.abs(dry.value) > Math.abs(damp.value) ? dry : damp,
    why: [dry, damp],
    lights: boards.map(({ key }) => key),
  };
}

const words = (change: number): string =>
  Math.abs(change) < 0.1 ? "stays as it is" : change > 0 ? "grows wider" : "grows narrower";

function deepInput(worked: Worked, name: string): Worked | Given | undefined {
  if (worked.inputs[name]) return worked.inputs[name];
  for (const input of Object.values(worked.inputs)) {
    const found = isWorked(input) ? deepInput(input, name) : undefined;
    if (found) return found;
  }
  return undefined;
}
