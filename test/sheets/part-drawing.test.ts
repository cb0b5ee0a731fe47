import { describe, expect, test } from "vitest";
import type { Feature, Part } from "../../src/piece/index.ts";
import type { Dimension, Drawing } from "../../src/sheets/index.ts";
import { partDrawing } from "../../src/sheets/views/part-drawing.ts";
import { type PartAsked, seenPart } from "../../src/sheets/views/part-seen.ts";
import { solidOf } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { kernel } from "../kit/solids.ts";

function partWith(
  role: Part["role"],
  features: readonly Feature[],
  more: Partial<Part> = {},
): Part {
  return {
    ...{ key: "t/part", mark: "X1", name: "part", role, features, isMirrored: false },
    blank: { length: mm(700), width: mm(60), thickness: mm(50) },
    pose: { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] },
    reference: { face: "show", edge: "lower" },
    ...{ shows: [], sawn: "flat", strips: [] },
    ...more,
  };
}

const leg = partWith("leg", [
  {
    ...{ feature: "mortise", key: "one", face: "upper", depth: mm(35), haunch: undefined },
    ...{ x: [mm(12), mm(80)], across: [mm(34), mm(42)] },
  },
  {
    ...{ feature: "mortise", key: "other", face: "back", depth: mm(30), haunch: undefined },
    ...{ x: [mm(20), mm(75)], across: [mm(9), mm(19)] },
  },
  { feature: "taper", key: "taper", face: "upper", from: mm(120), depth: mm(25) },
]);

function drawn(part: Part, more: Partial<PartAsked> = {}): Drawing {
  const asked: PartAsked = {
    ...{ id: "p", units: "mm", scale: 2, views: ["face", "edge"], detailed: [] },
    ...more,
  };
  return partDrawing(seenPart(part, solidOf(kernel, part)), asked);
}

const told = ({ dimensions }: Drawing) =>
  Object.fromEntries(
    dimensions.map((one: Dimension) => [
      one.id,
      one.dimension === "running" ? one.stops.map(({ says }) => says).join(" ") : one.says,
    ]),
  );

describe("a leg", () => {
  test("is drawn from the sides its mortises open to, and measured from its reference", () => {
    expect(drawn(leg).texts.map(({ says }) => says)).toEqual(["Back", "Upper edge"]);
    expect(told(drawn(leg))).toEqual({
      "p.along-face": "20 75 120 700",
      "p.along-edge": "12 80",
      "p.face-size": "60",
      "p.edge-size": "50",
      "p.face-foot": "35",
      "p.across-face": "9 19",
      // From the show face: what lies 42 mm from the back is 8 mm from it.
      "p.across-edge": "8 16",
    });
  });

  test("every place that is told is one where a line ends", () => {
    const { strokes, dimensions } = drawn(leg);
    const lines = [...(strokes.visible ?? []), ...(strokes.hidden ?? [])];
    const ends = lines.flatMap((one) =>
      one.shape === "line" ? [one.from, one.to] : one.shape === "path" ? one.points : [],
    );
    for (const one of dimensions) {
      const points =
        one.dimension === "running"
          ? [one.origin, ...one.stops.map(({ at }) => at)]
          : one.dimension === "straight"
            ? [one.from, one.to]
            : [];
      const axis = one.dimension !== "radius" && one.along === "up" ? 1 : 0;
      for (const point of points)
        expect(
          ends.some((end) => Math.abs(end[axis] - point[axis]) < 1e-6),
          `${one.id} at ${point}`,
        ).toBe(true);
    }
  });

  test("its joint drawn larger tells what the whole then leaves out", () => {
    const whole = told(drawn(leg, { detailed: ["left"] }));
    expect(Object.keys(whole).filter((id) => id.includes("across"))).toEqual([]);
    const window = { end: "left", from: 0, to: 100 } as const;
    const detail = drawn(leg, { window, views: ["edge"] });
    expect(told(detail)).toEqual({ "p.across-edge": "8 16" });
    for (const stroke of detail.strokes.visible ?? [])
      if (stroke.shape === "line")
        for (const [x] of [stroke.from, stroke.to]) expect(x).toBeLessThanOrEqual(100);
  });

  test("is the same drawing at any scale, but for the distance between its views", () => {
    const at = (scale: number) => told(drawn(leg, { scale }));
    expect(at(1)).toEqual(at(8));
  });
});

test("a rail tells its shoulders, its slots by their middles, and crosses its holes", () => {
  const rail = partWith(
    "rail",
    [
      {
        ...{ feature: "tenon", key: "l", end: "left", length: mm(30), isMitred: false },
        ...{ y: [mm(0), mm(45)], z: [mm(20), mm(30)], haunch: undefined },
      },
      {
        ...{ feature: "screw-slot", key: "s", x: mm(300), z: mm(25), runs: "along" },
        ...{ travel: mm(6), diameter: mm(5), headDiameter: mm(10), headDepth: mm(30) },
      },
      {
        ...{ feature: "bore", key: "b", from: [100, 40, 0], along: [0, 0, 1] },
        ...{ diameter: mm(3), depth: mm(20), isThrough: false },
      },
    ],
    { reference: { face: "show", edge: "upper" } },
  );
  const drawing = drawn(rail);
  expect(drawing.texts.map(({ says }) => says)).toEqual(["Back", "Lower edge"]);
  expect(told(drawing)).toMatchObject({
    "p.along-face": "30 100 700",
    "p.along-edge": "300",
    // From the upper edge: the hole at 40 of 60, the tenon's edge at 45, and its other edge.
    "p.across-face": "15 20 60",
    "p.across-edge": "20 25 30",
  });
  expect(drawing.strokes.centre).toHaveLength(4);
});
