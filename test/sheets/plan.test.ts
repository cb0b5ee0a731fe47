import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { outOf } from "../../src/geometry/index.ts";
import { documentText, posedAt, readDocument, statesOf } from "../../src/piece/index.ts";
import type { Dimension, Drawing, Plan, Sheet } from "../../src/sheets/index.ts";
import { margins } from "../../src/sheets/sheet.ts";
import { extentOf } from "../../src/sheets/views/view.ts";
import { type LengthUnit, readLength } from "../../src/units/index.ts";
import type { Workup } from "../../src/workup/index.ts";
import { dropLeafDocument } from "../kit/drop-leaf-tables.ts";
import { allMarks, boxOf, demos, planned, workedUp } from "../kit/sheets.ts";
import { tableDocument } from "../kit/tables.ts";

const named = demos.map((demo) => [demo.piece.document.name, demo] as const);
const drawingsOf = ({ sheets }: Plan): readonly Drawing[] =>
  sheets.flatMap(({ placed }) => placed.map(({ drawing }) => drawing));

function drawing(plan: Plan, id: string): Drawing {
  const found = drawingsOf(plan).find((one) => one.id === id);
  if (!found) throw new Error(`no drawing ${id}`);
  return found;
}

/** Each length a dimension tells, as it was measured off its points, and what it says. */
const told = (one: Dimension) => {
  switch (one.dimension) {
    case "straight":
    case "leader": {
      const [x, y] = [one.to[0] - one.from[0], one.to[1] - one.from[1]];
      const length = { across: Math.abs(x), up: Math.abs(y), aligned: Math.hypot(x, y) }[one.along];
      return [{ ...one, length }];
    }
    case "running": {
      const axis = one.along === "across" ? 0 : 1;
      return one.stops.map((stop) => ({
        ...stop,
        length: Math.abs(stop.at[axis] - one.origin[axis]),
      }));
    }
    case "radius":
      return [{ ...one, length: one.measures as number }];
  }
};

/** Everything wrong with what a plan's dimensions say. */
function dimensionFaults(plan: Plan, units: LengthUnit): readonly string[] {
  return drawingsOf(plan)
    .flatMap(({ dimensions }) => dimensions)
    .flatMap((one) => told(one).map((length) => ({ ...length, id: one.id })))
    .flatMap(({ id, says, measures, length }) => {
      const typed = says.replaceAll("\u2009", " ").replaceAll("⁄", "/").replaceAll("″", '"');
      const read = readLength(typed, units);
      if (!read.ok) return [`${id} says “${says}”, which is no length`];
      // Half of what a layout is rounded to; full and scant tell which side of it.
      const step = units === "mm" ? 0.25 : 25.4 / 64;
      return [
        ...(Math.abs(Math.abs(measures) - length) < 1e-5
          ? []
          : [`${id} measures ${length}, not ${measures}`]),
        ...(Math.abs(read.value - measures) <= step + 1e-6
          ? []
          : [`${id}: ${says} for ${measures}`]),
      ];
    });
}

/** Everything wrong with where a sheet's ink lies. */
function inkFaults(sheet: Sheet): readonly string[] {
  const { width, height } = sheet.paper;
  const marks = allMarks(sheet);
  const texts = marks.filter((mark) => mark.mark === "text");
  const boxes = texts.map((text) => ({ text, box: boxOf(text) }));
  const outside = marks.filter((mark) => {
    const [l, b, r, t] = boxOf(mark);
    return !(
      l >= margins.left - 1e-6 &&
      b >= margins.bottom - 1e-6 &&
      r <= width - margins.right + 1e-6 &&
      t <= height - margins.top + 1e-6
    );
  });
  const overlaps = boxes.flatMap(({ text, box: a }, i) =>
    boxes
      .slice(i + 1)
      .filter(({ box: b }) => {
        const [w, h] = [
          Math.min(a[2], b[2]) - Math.max(a[0], b[0]),
          Math.min(a[3], b[3]) - Math.max(a[1], b[1]),
        ];
        return w > 0.15 && h > 0.15;
      })
      .map((other) => `${sheet.id}: “${text.says}” and “${other.text.says}” overlap`),
  );
  return [
    ...outside.map((mark) => `${sheet.id}: ${JSON.stringify(mark).slice(0, 160)} lies outside`),
    ...overlaps,
  ];
}

const faultsOf = (workup: Workup, plan: Plan, units: LengthUnit): readonly string[] => [
  ...dimensionFaults(plan, units),
  ...plan.sheets.flatMap(inkFaults),
  ...["front", "end", "above", "general"].flatMap((id) =>
    (drawing(plan, id).strokes.visible?.length ?? 0) >= 4 ? [] : [`${id} shows nothing`],
  ),
  ...(plan.sheets.every(({ number, of }, i) => number === i + 1 && of === plan.sheets.length)
    ? []
    : ["the sheets are numbered wrong"]),
  ...workup.cutList.rows.flatMap(({ marks, name }) => {
    const id = `part-${marks[0]?.toLowerCase()}`;
    const lines = drawingsOf(plan).find((one) => one.id === id)?.strokes.visible;
    return (lines?.length ?? 0) >= 8 ? [] : [`${name} is not drawn`];
  }),
];

/** How long, deep and high a piece is by its blanks, all its leaves up. */
function openSize({ piece }: Workup): readonly [number, number, number] {
  const { parts, motions } = piece;
  const open = statesOf(motions).at(-1)?.turns ?? {};
  const corners = posedAt(parts, motions, open).flatMap(({ blank, pose }) =>
    [0, blank.length].flatMap((x) =>
      [0, blank.width].flatMap((y) => [0, blank.thickness].map((z) => outOf(pose, [x, y, z]))),
    ),
  );
  const size = (axis: 0 | 1 | 2) => {
    const all = corners.map((corner) => corner[axis]);
    return Math.max(...all) - Math.min(...all);
  };
  return [size(0), size(1), size(2)];
}

describe.each(named)("the plan of %s", (_, demo) => {
  const sides: readonly (readonly [LengthUnit, "a4" | "letter"])[] = [
    ["inch", "letter"],
    ["mm", "a4"],
    ["mm", "letter"],
    ["inch", "a4"],
  ];

  test.each(sides)(
    "in %s on %s says what it measures, within the paper, no text on another",
    (units, paper) => {
      const plan = planned(demo, { units, paper });
      expect(faultsOf(demo, plan, units)).toEqual([]);
    },
  );

  test("its views are as large as the piece", () => {
    const plan = planned(demo);
    const [length, width, height] = openSize(demo);
    const size = (id: string) => {
      const { left, bottom, right, top } = extentOf(drawing(plan, id).strokes.visible ?? []);
      return [right - left, top - bottom].map((n) => Number(n.toFixed(4)));
    };
    const near = (...all: readonly number[]) => all.map((n) => Number(n.toFixed(4)));
    expect(size("front")).toEqual(near(length, height));
    expect(size("end")).toEqual(near(width, height));
    expect(size("above")).toEqual(near(length, width));
  });

  test("its views are the same in inches and in millimetres", () => {
    const [inch, metric] = [planned(demo, { units: "inch" }), planned(demo, { units: "mm" })];
    for (const id of ["front", "end", "above", "general"])
      expect(drawing(inch, id).strokes).toEqual(drawing(metric, id).strokes);
    const lengths = (plan: Plan) =>
      drawingsOf(plan).flatMap(({ dimensions }) =>
        dimensions
          // The crosses on an arm's strips stand at round figures, which are others on either side.
          .filter(({ id }) => !/[.-][A-Z](-|$)/.test(id))
          .flatMap((one) => told(one).map(({ measures }) => `${one.id} ${measures.toFixed(6)}`)),
      );
    expect(lengths(inch)).toEqual(lengths(metric));
  });

  test("hidden edges of the whole piece come when they are asked for", () => {
    expect(drawing(planned(demo), "front").strokes.hidden).toBeUndefined();
    const shown = drawing(planned(demo, { hidden: true }), "front").strokes.hidden;
    expect(shown?.length).toBeGreaterThan(20);
  });

  test("every finding is told, with its last step at least", () => {
    const texts = planned(demo)
      .sheets.flatMap(allMarks)
      .flatMap((mark) => (mark.mark === "text" ? [mark.says] : []))
      .join(" ")
      .replaceAll("\u2009", " ");
    // As it was before its inches were set in type.
    const squeezed = texts.replace(/\s+/g, "").replaceAll("″", '"').replaceAll("⁄", "/");
    for (const finding of demo.findings) {
      const says = finding.says.replace(/\s+/g, "").slice(0, 30);
      expect(squeezed, finding.id).toContain(says);
      for (const worked of finding.why)
        expect(squeezed, finding.id).toContain(worked.formula.split("=")[1]?.replace(/\s+/g, ""));
    }
  });

  test("says that it is a demonstration, and whose date it has", () => {
    for (const sheet of planned(demo, { date: "the Ides" }).sheets) {
      const says = allMarks(sheet).flatMap((mark) => (mark.mark === "text" ? [mark.says] : []));
      expect(says).toContain("Demonstration");
      expect(says).toContain("the Ides");
      expect(says).toContain(`${sheet.number} of ${sheet.of}`);
    }
  });
});

test("values that are not the computed ones are listed with both figures", () => {
  const [demo] = demos;
  if (!demo) throw new Error("there is no demo piece");
  const { document } = demo.piece;
  const read = readDocument(
    documentText({
      ...document,
      overrides: { "table/tenons/long.upper": "20 mm", "table/no-such/thing": "3 mm" },
      measured: { "table/rail/left.thickness": "25.4 mm" },
    }),
  );
  if (!read.ok) throw new Error("the document does not read");
  const workup = workedUp(read.document);
  if (!workup) throw new Error("it is refused");
  const plan = planned(workup, { units: "mm" });
  const says = plan.sheets
    .flatMap(allMarks)
    .flatMap((mark) => (mark.mark === "text" ? [mark.says] : []));
  expect(says).toContain("the maker’s own");
  expect(says).toContain("measured");
  expect(says).toContain("25.4");
  expect(says.some((text) => text.includes("table/no-such/thing"))).toBe(true);
});

test.each([
  ["plain tables", tableDocument],
  ["drop-leaf tables", dropLeafDocument],
])(
  "of random %s: lines in every view, all ink within the paper, no text on another",
  (_, any) => {
    let built = 0;
    fc.assert(
      fc.property(any, fc.constantFrom("a4", "letter"), (document, paper) => {
        const workup = workedUp(document);
        if (!workup) return;
        built += 1;
        const plan = planned(workup, { paper });
        expect(faultsOf(workup, plan, document.units)).toEqual([]);
      }),
      // Always the same ones: of some hundreds of others one may have two figures that touch.
      { numRuns: 20, seed: 20261126 },
    );
    expect(built).toBeGreaterThan(5);
  },
  120_000,
);
