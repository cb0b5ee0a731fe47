import { describe, expect, test } from "vitest";
import { frameOf } from "../../src/geometry/index.ts";
import { type Piece, posedAt } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { createSolids, type Outlines } from "../../src/solid/index.ts";
import { deg } from "../../src/units/index.ts";
import { createWorkup, type Workup } from "../../src/workup/index.ts";
import { faults, type Planted, plantedIn } from "../kit/planted-leaves.ts";
import { kernel } from "../kit/solids.ts";
import { type Overlap, overlapsOf } from "../kit/sweeps.ts";

const solids = createSolids(kernel);

function workupOf(planted: Planted): Workup {
  const outcome = createWorkup(planted.shop ?? demoShop)(plantedIn(planted));
  if (!outcome.ok) throw new Error(outcome.problems.map((p) => p.message).join(" "));
  return outcome.workup;
}

const overlaps = (planted: Planted): readonly Overlap[] =>
  overlapsOf(workupOf(planted).piece, solids);

/** The two parts that share room, in the order of the alphabet, each pair once. */
const pairs = (found: readonly Overlap[]): readonly string[] =>
  [...new Set(found.map(({ a, b }) => [a, b].sort().join(" in ")))].sort();

const [top, leaf, arm, rail] = [
  "table/top",
  "table/leaf/front",
  "table/arm/front-1",
  "table/rail/front",
];

/** Height in the piece of a part's upper edge [mm]. */
const highest = ({ parts }: Piece, key: string): number => {
  const part = parts.find((one) => one.key === key);
  if (!part) throw new Error(`no ${key}`);
  return part.pose.origin[2] + part.blank.width;
};

/** Seen from above with the leaf plumb: from the end of the top's tongue to the leaf's lip [mm]. */
function gapFromAbove(planted: Planted): number {
  const { piece } = workupOf(planted);
  const joint = piece.joints.find((one) => one.kind === "leaf");
  const board = piece.parts.find(({ key }) => key === top);
  if (joint?.kind !== "leaf" || !board) throw new Error("no leaf");
  const { motion, pinHeight, section } = joint.leaf;
  // The lip's end lies as high as the pin, for the set-out is the pin's place out.
  const height = section.origin[2] + (typeof pinHeight === "object" ? pinHeight.value : pinHeight);
  const seenFrom = (z: number) => frameOf([0, 0, z], [1, 0, 0], [0, 1, 0]);
  const posed = posedAt(piece.parts, piece.motions, { [motion]: deg(90) });
  const cut = solids.sections(posed, seenFrom(height - 0.01)).find(({ key }) => key === leaf);
  const across = (outlines: Outlines = []) => outlines.flat().map(([, y]) => y);
  const tongue = Math.min(...across(solids.outline(board, seenFrom(0))));
  return tongue - Math.max(...across(cut?.outlines));
}

test("the table they are planted in is sound", () => {
  expect(overlaps({})).toEqual([]);
  expect(workupOf({}).findings.filter((f) => f.verdict === "fails")).toEqual([]);
  // The pin's place out, and the crown gap; a chord may add to it.
  expect(Math.abs(gapFromAbove({}) - 0.5)).toBeLessThan(0.03);
}, 30_000);

describe("solids show a planted fault where it is", { timeout: 30_000 }, () => {
  test("a pin 0.8 mm too high: the leaf goes into the tongue's lower edge", () => {
    const found = overlaps(faults.pinHigh);
    expect(pairs(found)).toEqual([`table/leaf/back in ${top}`, `${leaf} in ${top}`]);
    const [one] = found.filter((o) => o.a === leaf || o.b === leaf);
    // The tongue goes 12.7 mm out from the edge, 240 mm from the middle, and is 3.1 mm high there.
    expect(one?.middle[1]).toBeGreaterThan(-253);
    expect(one?.middle[1]).toBeLessThan(-249);
    expect(one?.middle[2]).toBeGreaterThan(721);
    expect(one?.middle[2]).toBeLessThan(725.2);
  });

  test("hinges let in with a fillet for the face: the leaf binds before it is down", () => {
    const found = overlaps(faults.letIn);
    expect(pairs(found)).toEqual([`table/leaf/back in ${top}`, `${leaf} in ${top}`]);
    const swept = found.find(({ when }) => when.startsWith("front leaf at"));
    expect(swept?.a).toBe(leaf);
  });

  test("hinges on the face with a fillet for let in: the joint opens by the plate's thickness", () => {
    expect(overlaps(faults.onFace)).toEqual([]);
    expect(Math.abs(gapFromAbove(faults.onFace) - gapFromAbove({}) - 1.5)).toBeLessThan(0.03);
  });

  test("an arm 2 mm low stands shy of its rail, and of the leaf it is to bear", () => {
    expect(overlaps(faults.armLow)).toEqual([]);
    const low = workupOf(faults.armLow).piece;
    expect(highest(low, rail) - highest(low, arm)).toBeCloseTo(2, 9);
    const flush = workupOf({}).piece;
    expect(highest(flush, rail) - highest(flush, arm)).toBeCloseTo(0.1, 9);
  });

  test("an arm 1 mm proud stands in the top, and in the leaf when it is out", () => {
    const found = overlaps(faults.armProud);
    expect(pairs(found)).toContain(`${arm} in ${top}`);
    expect(pairs(found)).toContain(`${arm} in ${leaf}`);
    expect(pairs(found).every((pair) => pair.includes("arm/"))).toBe(true);
    expect(found.every(({ middle }) => Math.abs(middle[2] - 721.5) < 0.3)).toBe(true);
    const { piece } = workupOf(faults.armProud);
    expect(highest(piece, arm) - highest(piece, rail)).toBeCloseTo(1, 9);
  });

  test("tails that meet do so in the middle of the frame, with both arms out", () => {
    const found = overlaps(faults.armsMeet);
    expect(pairs(found)).toEqual(["table/arm/back-1 in table/arm/front-1"]);
    const [open] = found.filter(({ when }) => when === "front-leaf+back-leaf");
    expect(open?.middle.map(Math.round)).toEqual([0, 0, 702]);
    expect(found.some(({ when }) => /^(front|back) arm at [1-9]\d°$/.test(when))).toBe(true);
  });

  test("a leaf over legs that stand under its joint runs into all of them", () => {
    const found = overlaps(faults.legStruck);
    expect(pairs(found)).toEqual([
      "table/leaf/back in table/leg/back-left",
      "table/leaf/back in table/leg/back-right",
      "table/leaf/front in table/leg/front-left",
      "table/leaf/front in table/leg/front-right",
    ]);
    const [front] = found.filter(({ a, b }) => a === leaf || b === leaf);
    // Behind the legs' outer face, and by more than the pin's height of 3.2 mm at the leaf's outer edge.
    expect(front?.middle[1]).toBeGreaterThan(-240);
    expect(front?.middle[1]).toBeLessThan(-225);
  });
});

describe("a planted fault is found, ranked first, and located", () => {
  const first = ({ findings }: Workup) => findings[0];

  test.each([
    ["a pin 0.8 mm too high", faults.pinHigh, "leaf/swing", [leaf, top]],
    ["hinges let in with a fillet for the face", faults.letIn, "leaf/swing", [leaf, top]],
    ["a proud arm", faults.armProud, "arm/passes", [arm, top]],
    ["arms that meet", faults.armsMeet, "arm/passes", [arm, "table/arm/back-1"]],
    [
      "a leaf that strikes",
      faults.legStruck,
      "leaf/hangs/front-leaf",
      [leaf, "table/leg/front-left"],
    ],
  ] as const)("%s", (_, planted: Planted, id, lights) => {
    const found = first(workupOf(planted));
    expect(found).toMatchObject({ id, verdict: "fails" });
    expect(found?.lights).toEqual(expect.arrayContaining([...lights]));
  });

  test.each([
    ["hinges on the face with a fillet for let in", faults.onFace, "leaf/mounting", [leaf, top]],
    ["a low arm", faults.armLow, "arm/flush", [arm]],
  ] as const)("%s, which can be lived with", (_, planted: Planted, id, lights) => {
    const { findings } = workupOf(planted);
    expect(findings.filter((f) => f.verdict === "fails")).toEqual([]);
    const found = findings.find((f) => f.id === id);
    expect(found?.verdict).toBe("watch");
    expect(found?.lights).toEqual(expect.arrayContaining([...lights]));
  });
});
