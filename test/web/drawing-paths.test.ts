import { describe, expect, test } from "vitest";
import type { Mark, Pen } from "../../src/sheets/index.ts";
import { pathsFor } from "../../src/web/controls/drawing-paths.ts";

const thin: Pen = { width: 0.18, dash: [], tone: "ink" };
const dashed: Pen = { width: 0.18, dash: [2, 1], tone: "ink" };
const line = (pen: Pen, ...points: readonly (readonly [number, number])[]): Mark => ({
  mark: "line",
  points,
  isClosed: false,
  pen,
});

describe("marks as paths of a page", () => {
  test("lines of one pen are one path, downwards from the paper’s upper edge", () => {
    const marks = [
      line(thin, [0, 0], [10, 0]),
      line(dashed, [0, 5], [10, 5.00049]),
      line(thin, [20, 30], [20, 40]),
    ];
    const { strokes, fills, texts } = pathsFor(marks, 100);
    expect(strokes).toEqual([
      { pen: thin, d: "M0 100L10 100M20 70L20 60" },
      { pen: dashed, d: "M0 95L10 95" },
    ]);
    expect([fills, texts]).toEqual([[], []]);
  });

  test("closed lines end where they began; what is filled too, a path a tone", () => {
    const points = [
      [0, 0],
      [1, 0],
      [0, 1],
    ] as const;
    const { strokes, fills } = pathsFor(
      [
        { mark: "line", points, isClosed: true, pen: thin },
        { mark: "fill", points, tone: "ink" },
        { mark: "fill", points, tone: "ink" },
        { mark: "fill", points, tone: "crayon" },
      ],
      10,
    );
    expect(strokes[0]?.d).toBe("M0 10L1 10L0 9Z");
    expect(fills).toEqual([
      { tone: "ink", d: "M0 10L1 10L0 9ZM0 10L1 10L0 9Z" },
      { tone: "crayon", d: "M0 10L1 10L0 9Z" },
    ]);
  });

  test("an arc goes counter-clockwise, a whole circle too", () => {
    const arc = (from: number, to: number): Mark => ({
      mark: "arc",
      centre: [50, 50],
      radius: 10,
      from,
      to,
      pen: thin,
    });
    expect(pathsFor([arc(0, 180)], 100).strokes[0]?.d).toBe(
      "M60 50A10 10 0 0 0 50 40A10 10 0 0 0 40 50",
    );
    expect(pathsFor([arc(0, 360)], 100).strokes[0]?.d).toBe(
      "M60 50A10 10 0 0 0 40 50A10 10 0 0 0 60 50",
    );
  });
});
