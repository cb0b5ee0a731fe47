import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Frame, frameOf, type Vec3 } from "../../src/geometry/index.ts";
import type { Point, Stroke } from "../../src/sheets/index.ts";
import { cameras } from "../../src/sheets/views/camera.ts";
import { coverOf, hiddenBy } from "../../src/sheets/views/cover.ts";
import { gridOf } from "../../src/sheets/views/grid.ts";
import { linesOf as cutLines } from "../../src/sheets/views/hidden-lines.ts";
import type { Body } from "../../src/sheets/views/scene.ts";
import { viewOf } from "../../src/sheets/views/view.ts";
import { type Solid, solidOf } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { kernel } from "../kit/solids.ts";

type Box = { readonly from: Vec3; readonly size: Vec3 };

const solidFor = ([length, width, thickness]: Vec3): Solid =>
  solidOf(kernel, {
    key: "box",
    blank: { length: mm(length), width: mm(width), thickness: mm(thickness) },
    features: [],
    isMirrored: false,
  });

const boxBody = ({ from, size }: Box): Body => ({
  solid: solidFor(size),
  pose: frameOf(from, [1, 0, 0], [0, 1, 0]),
});

/** Straight strokes as text, each from its lower end, in order. */
const linesOf = (strokes: readonly Stroke[]): readonly string[] =>
  strokes
    .map((stroke) => {
      if (stroke.shape !== "line") throw new Error(`a ${stroke.shape} among straight lines`);
      const ends = [stroke.from, stroke.to].map((p) => p.map((n) => Number(n.toFixed(4)) + 0));
      return ends
        .sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0) || (a[1] ?? 0) - (b[1] ?? 0))
        .map((p) => p.join(" "))
        .join(" → ");
    })
    .sort();

const front = (...boxes: readonly Box[]) => viewOf(boxes.map(boxBody), cameras.front);

describe("hidden lines of boxes seen from the front", () => {
  const near: Box = { from: [0, 0, 0], size: [100, 10, 60] };

  test("one box is four lines", () => {
    const { visible, hidden } = front(near);
    expect(linesOf(visible)).toEqual([
      "0 0 → 0 60",
      "0 0 → 100 0",
      "0 60 → 100 60",
      "100 0 → 100 60",
    ]);
    expect(hidden).toEqual([]);
  });

  test("a wider, lower one behind it is cut exactly at its sides", () => {
    const { visible, hidden } = front(near, { from: [-50, 40, 20], size: [220, 10, 30] });
    expect(linesOf(visible)).toEqual(
      [
        ["0 0 → 0 60", "0 0 → 100 0", "0 60 → 100 60", "100 0 → 100 60"],
        ["-50 20 → -50 50", "-50 20 → 0 20", "-50 50 → 0 50"],
        ["100 20 → 170 20", "100 50 → 170 50", "170 20 → 170 50"],
      ]
        .flat()
        .sort(),
    );
    expect(linesOf(hidden)).toEqual(["0 20 → 100 20", "0 50 → 100 50"]);
  });

  test("the same one before it hides instead", () => {
    const { hidden } = front(near, { from: [-50, -40, 20], size: [220, 10, 30] });
    expect(linesOf(hidden)).toEqual(["0 20 → 0 50", "100 20 → 100 50"]);
  });

  test("an equal one behind it adds no line at all", () => {
    expect(front(near, { ...near, from: [0, 30, 0] })).toEqual(front(near));
  });

  test("faces in one plane do not hide each other's edges, and a shared line is drawn once", () => {
    const { visible, hidden } = front(near, { ...near, from: [100, 0, 0] });
    expect(linesOf(visible)).toEqual([
      "0 0 → 0 60",
      "0 0 → 200 0",
      "0 60 → 200 60",
      "100 0 → 100 60",
      "200 0 → 200 60",
    ]);
    expect(hidden).toEqual([]);
  });

  test("in the general view a box shows nine edges and hides three", () => {
    const { visible, hidden } = viewOf([boxBody(near)], cameras.general);
    expect([visible.length, hidden.length]).toEqual([9, 3]);
  });
});

describe("a round hole", () => {
  const body = (): Body => ({
    solid: solidOf(kernel, {
      key: "holed",
      blank: { length: mm(100), width: mm(60), thickness: mm(20) },
      features: [
        {
          ...{ feature: "bore", key: "hole", from: [40, 30, 0], along: [0, 0, 1] },
          ...{ diameter: mm(20), depth: mm(20), isThrough: true },
        },
      ],
      isMirrored: false,
    }),
    pose: frameOf([0, 0, 0], [1, 0, 0], [0, 1, 0]),
  });

  test("seen along its middle line is one closed path", () => {
    const { visible, hidden } = viewOf([body()], cameras.above);
    const round = visible.filter((stroke) => stroke.shape === "path");
    expect(round).toHaveLength(1);
    expect(round[0]?.shape === "path" && round[0].isClosed).toBe(true);
    expect(hidden).toEqual([]);
  });

  test("seen across shows its two sides, hidden, as far apart as it is wide", () => {
    const { hidden } = viewOf([body()], cameras.front);
    expect(linesOf(hidden)).toEqual(["30 0 → 30 20", "50 0 → 50 20"]);
  });
});

describe("a face of two triangles", () => {
  /** A square from 0 to 100 at height 10, parted along its diagonal. */
  const square = Float64Array.from(
    [
      [0, 0, 10, 100, 0, 10, 100, 100, 10],
      [0, 0, 10, 100, 100, 10, 0, 100, 10],
    ].flat(),
  );
  const behind = (...edge: readonly number[]) =>
    cutLines({ triangles: square, edges: Float64Array.from(edge) });

  test("hides an edge that runs exactly along the line between them", () => {
    const { visible, hidden } = behind(-50, -50, 0, 150, 150, 0);
    expect(linesOf(hidden)).toEqual(["0 0 → 100 100"]);
    expect(linesOf(visible)).toEqual(["-50 -50 → 0 0", "100 100 → 150 150"]);
  });

  test("hides an edge that dives under it from where it goes under", () => {
    const { visible, hidden } = behind(20, 50, 20, 80, 50, -10);
    expect(linesOf(hidden)).toEqual(["40.0002 50 → 80 50"]);
    expect(linesOf(visible)).toEqual(["20 50 → 40.0002 50"]);
  });

  test("hides nothing that lies on it or before it", () => {
    expect(behind(10, 20, 10, 90, 70, 10).hidden).toEqual([]);
    expect(behind(10, 20, 11, 90, 70, 30).hidden).toEqual([]);
  });
});

describe("the grid", () => {
  // Evenly spread, as doubles of fast-check are not.
  const near = (least: number, most: number) =>
    fc.integer({ min: least * 7, max: most * 7 }).map((n) => n / 7);
  const triangle = fc
    .tuple(near(0, 300), near(0, 200), near(2, 25), near(2, 25), near(-20, 20))
    .map(([x, y, w, h, z]) => [x, y, z, x + w, y, z, x, y + h, z]);
  const end = fc.tuple(near(-30, 330), near(-30, 230));

  test("leaves out no face that hides some of an edge, and names each once", () => {
    fc.assert(
      fc.property(
        fc.array(triangle, { minLength: 1, maxLength: 150 }),
        fc.array(fc.tuple(end, end), { minLength: 1, maxLength: 8 }),
        (triangles, edges) => {
          const cover = coverOf(Float64Array.from(triangles.flat()));
          const grid = gridOf(cover);
          for (const [a, b] of edges) {
            const edge = [...a, -50, ...b, -50] as const;
            const found = grid.near(edge);
            expect(new Set(found).size).toBe(found.length);
            for (let face = 0; face < cover.count; face++)
              if (hiddenBy(cover, face, edge)) expect(found).toContain(face);
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  test("hands out few of many", () => {
    const squares = Array.from({ length: 400 }, (_, i) => [10 * (i % 20), 10 * Math.floor(i / 20)]);
    const all = squares.flatMap(([x = 0, y = 0]) => [x, y, 0, x + 9, y, 0, x, y + 9, 0]);
    const found = gridOf(coverOf(Float64Array.from(all))).near([5, 5, -1, 195, 195, -1]);
    expect(found.length).toBeLessThan(200);
  });
});

/** Whether something stands between a point and the eye: each box by its three slabs, no triangles. */
function isBehind(boxes: readonly Box[], p: Vec3, eye: Vec3): boolean {
  return boxes.some(({ from, size }) => {
    let near = 1e-4;
    let far = Number.POSITIVE_INFINITY;
    for (const axis of [0, 1, 2] as const) {
      const a = (from[axis] - p[axis]) / eye[axis];
      const b = (from[axis] + size[axis] - p[axis]) / eye[axis];
      near = Math.max(near, Math.min(a, b));
      far = Math.min(far, Math.max(a, b));
    }
    return far - near > 1e-3;
  });
}

const edgesOf = ({ from, size }: Box): readonly (readonly [Vec3, Vec3])[] =>
  ([0, 1, 2] as const).flatMap((axis) =>
    [0, 1].flatMap((i) =>
      [0, 1].map((j): readonly [Vec3, Vec3] => {
        const corner: [number, number, number] = [...from];
        const [u, v] = [(axis + 1) % 3, (axis + 2) % 3] as [0 | 1 | 2, 0 | 1 | 2];
        corner[u] += i * size[u];
        corner[v] += j * size[v];
        const end: [number, number, number] = [...corner];
        end[axis] += size[axis];
        return [corner, end];
      }),
    ),
  );

const seen = (camera: Frame, p: Vec3): Point => {
  const on = (axis: Vec3) => axis[0] * p[0] + axis[1] * p[1] + axis[2] * p[2];
  return [on(camera.x), on(camera.y)];
};

function distance([x, y]: Point, stroke: Stroke): number {
  if (stroke.shape === "arc") return Number.POSITIVE_INFINITY;
  const points = stroke.shape === "line" ? [stroke.from, stroke.to] : stroke.points;
  const ends =
    stroke.shape === "path" && stroke.isClosed ? [...points, ...points.slice(0, 1)] : points;
  return Math.min(
    ...ends.slice(1).map(([bx, by], i) => {
      const [ax, ay] = ends[i] ?? [0, 0];
      const size = (bx - ax) ** 2 + (by - ay) ** 2;
      const t = Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / size));
      return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
    }),
  );
}

const whole = (min: number, max: number) => fc.integer({ min, max });
const someBox: fc.Arbitrary<Box> = fc.record({
  from: fc.tuple(whole(-60, 60), whole(-60, 60), whole(-60, 60)),
  size: fc.tuple(whole(8, 70), whole(8, 70), whole(8, 70)),
});

test("by a second method: what no box stands before is on a visible line, what one does is not", () => {
  const camera = cameras.general;
  fc.assert(
    fc.property(fc.array(someBox, { minLength: 1, maxLength: 4 }), (boxes) => {
      const { visible } = viewOf(boxes.map(boxBody), camera);
      const near = (p: Point) => Math.min(...visible.map((stroke) => distance(p, stroke)));
      const samples = boxes
        .flatMap(edgesOf)
        .flatMap(([a, b]) =>
          [0.137, 0.411, 0.523, 0.879].map(
            (t): Vec3 => [
              a[0] + t * (b[0] - a[0]),
              a[1] + t * (b[1] - a[1]),
              a[2] + t * (b[2] - a[2]),
            ],
          ),
        );
      for (const p of samples) {
        const isHidden = isBehind(boxes, p, camera.z);
        if (!isHidden) expect(near(seen(camera, p)), `${p} is not drawn`).toBeLessThan(1e-3);
        else if (!visibleElsewhere(boxes, p, camera))
          expect(near(seen(camera, p)), `${p} is drawn`).toBeGreaterThan(1e-3);
      }
    }),
    { numRuns: 60 },
  );
});

/** Whether some other box's edge that is seen runs through the same place of the view. */
function visibleElsewhere(boxes: readonly Box[], p: Vec3, camera: Frame): boolean {
  const at = seen(camera, p);
  return boxes.flatMap(edgesOf).some(([a, b]) => {
    const stroke: Stroke = { shape: "line", from: seen(camera, a), to: seen(camera, b) };
    return distance(at, stroke) < 0.01 && !isSame(a, b, p);
  });
}

/** Whether a point of space lies on an edge. */
function isSame(a: Vec3, b: Vec3, p: Vec3): boolean {
  const along = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
  const size = along[0] ** 2 + along[1] ** 2 + along[2] ** 2;
  const t = (along[0] * (p[0] - a[0]) + along[1] * (p[1] - a[1]) + along[2] * (p[2] - a[2])) / size;
  return ([0, 1, 2] as const).every((i) => Math.abs(a[i] + t * along[i] - p[i]) < 1e-6);
}
