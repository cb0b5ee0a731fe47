import fc from "fast-check";
import { kindNamed } from "../../src/kinds/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import type { LengthUnit } from "../../src/units/index.ts";
import { documentsOf, someOf, written } from "./tables.ts";

const table = kindNamed("drop-leaf-table");

type Range = readonly [least: number, most: number];

/** Sizes a maker might ask for, most of which can be made together [mm]. */
const ranges: Readonly<Record<string, Range>> = {
  length: [1050, 2200],
  width: [410, 720],
  leaf: [110, 480],
  height: [560, 800],
  "top-thickness": [17, 28],
  "end-overhang": [0, 130],
  "side-overhang": [4, 50],
  "widest-strip": [60, 300],
  leg: [42, 75],
  foot: [18, 42],
  "taper-start": [0, 60],
  "rail-width": [75, 125],
  "rail-thickness": [20, 30],
  setback: [0, 10],
  "arm-reach": [110, 230],
  "arm-tail": [55, 110],
  "arm-height": [24, 48],
};

/** Sizes of a joint's section: hundredths of a millimetre, thousandths of an inch [mm]. */
const fineRanges: Readonly<Record<string, Range>> = {
  "set-out": [0.1, 1],
  crown: [0, 0.5],
  bevel: [0.5, 2.5],
};

/** A small length in this side's own notation. */
const fine = ([least, most]: Range, units: LengthUnit): fc.Arbitrary<string> =>
  units === "mm"
    ? fc
        .integer({ min: Math.ceil(least * 100), max: Math.floor(most * 100) })
        .map((n) => `${n / 100} mm`)
    : fc
        .integer({ min: Math.ceil((least / 25.4) * 1000), max: Math.floor((most / 25.4) * 1000) })
        .map((n) => `${n / 1000} in`);

/** Answers that go by no range of lengths: words, things by name, an angle. */
const worded = (name: string, choices: readonly string[]): fc.Arbitrary<string> => {
  switch (name) {
    case "cutters":
      return fc.constantFrom(...demoShop.jointCutters.map((one) => one.name));
    case "arm-angle":
      return fc.integer({ min: 15, max: 50 }).map(String);
    // Screws ask for narrow tops and thick rails, and are refused most often.
    case "fastening":
      return fc.constantFrom("buttons", "buttons", "buttons", "buttons", "screws in slots");
    case "joint":
      return fc.constantFrom("rule joint", "rule joint", "square edges");
    default:
      return fc.constantFrom(...choices);
  }
};

const [tableHinge = "", deepHinge = "", backFlap = ""] = demoShop.leafHinges.map((one) => one.name);

/** Hinges that go with a joint, and now and then one that does not. */
const hingeFor = (joint: string | undefined): fc.Arbitrary<string> =>
  joint === "square edges"
    ? fc.constantFrom(...Array(10).fill(backFlap), tableHinge, deepHinge)
    : fc.constantFrom(...Array(10).fill(tableHinge), ...Array(9).fill(deepHinge), backFlap);

/** Mostly where it belongs, over the gap's far side; now and then elsewhere. */
const pinFor = (setOut: string | undefined, units: LengthUnit): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 3, arbitrary: fc.constant(setOut ?? "0.4 mm") },
    { weight: 1, arbitrary: fine([0, 1.2], units) },
  );

/** Answers to a drop-leaf table's questions. */
function answersOn(units: LengthUnit): fc.Arbitrary<Readonly<Record<string, string>>> {
  const texts = Object.entries(table.asks).map(([name, { choices }]) => {
    const [range, small] = [ranges[name], fineRanges[name]];
    // What goes by another answer comes after it.
    if (name === "hinge" || name === "pin-out") return [name, fc.constant("")] as const;
    if (small) return [name, fine(small, units)] as const;
    return [name, range ? written(range[0], range[1], units) : worded(name, choices)] as const;
  });
  const all: fc.Arbitrary<Record<string, string>> = fc.record(Object.fromEntries(texts), {
    requiredKeys: texts.map(([name]) => name),
  });
  return all.chain((answers) =>
    fc
      .record({ hinge: hingeFor(answers.joint), "pin-out": pinFor(answers["set-out"], units) })
      .map((later) => ({ ...answers, ...later })),
  );
}

/** Values that a maker might give: of all leaf joints alike, of all arms, of one leaf, one rail, one tenon. */
const ownKeys = {
  overrides: {
    "table/leaf-joint.radius": [8, 14],
    "table/leaf-joint.cove": [8, 14],
    "table/leaf-joint.fillet": [2, 6],
    "table/leaf-joint.pin-out": [0, 1.5],
    "table/leaf-joint.pin-height": [1.5, 6],
    "table/leaf-joint.bevel": [0, 3],
    "table/arms.reach": [100, 260],
    "table/arms.tail": [50, 120],
    "table/arms.height": [22, 50],
    "table/arms.opening": [24, 55],
    "table/arms.offset": [-8, 8],
    "table/leaf/front.width": [40, 500],
    "table/leaf/back.length": [1000, 2200],
    "table/top.width": [400, 760],
    "table/tenons/end.length": [12, 40],
    "table/tenons/long.upper": [0, 30],
  },
  measured: {
    "table/leaf-joint.cove": [9, 13],
    "table/leaf-joint.set-out": [0, 1],
    "table/leaf-joint.crown": [0, 0.5],
    "table/leaf-joint.plate": [1, 2.5],
    "table/leaf-joint.pin-over-face": [1, 6],
    "table/arms.kerf": [0.5, 3],
    "table/arms.opening": [24, 55],
    "table/top.thickness": [16, 29],
    "table/leaf/front.thickness": [16, 29],
    "table/rail/front.thickness": [18, 34],
    "table/rail/back.width": [70, 130],
    "table/leg/front-left.width": [40, 80],
  },
} as const;

/** Documents of drop-leaf tables, as a maker might ask for them; most of them sound. */
export const dropLeafDocument = documentsOf({
  kind: table.name,
  answers: answersOn,
  overrides: (units) => someOf(ownKeys.overrides, units),
  measured: (units) => someOf(ownKeys.measured, units),
});
