import { type Frame, outOf } from "../../geometry/index.ts";
import type { Part, Piece } from "../../piece/index.ts";
import type { Solids } from "../../solid/index.ts";
import { deg, mm } from "../../units/index.ts";
import {
  blankDrawing,
  type Drawing,
  type Hatch,
  type Lettering,
  type Point,
  type Stroke,
} from "../drawing.ts";
import { lettering, sizes } from "../lettering.ts";
import { clippedOutline, isOnSide } from "./clip-area.ts";
import { type Extent, extentOf } from "./view.ts";

/** How much of what meets a leg is shown round it [mm]. */
const ROUND = 45;
/** Between the lines of a hatch on paper [mm]. */
const GAP = mm(1.6);

/**
 * A leg cut level through the middle of its mortises, seen from above, with what is in them;
 * undefined when it has none.
 *
 * @param scale  how many millimetres one on paper stands for [1]
 */
export function jointSection(
  { parts }: Piece,
  leg: Part,
  solids: Solids,
  scale: number,
): Drawing | undefined {
  const level = levelOf(leg);
  if (level === undefined) return undefined;
  const plane: Frame = { origin: [0, 0, level], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };
  const cut = solids.sections(parts, plane);
  const own = cut.find(({ key }) => key === leg.key);
  if (!own) return undefined;
  const area = roundedOut(own.outlines.flat());
  const shown = cut.flatMap(({ key, outlines }) => {
    const part = parts.find((one) => one.key === key);
    const kept = outlines.map((one) => clippedOutline(one, area)).filter((one) => one.length > 2);
    return part && kept.length > 0 ? [{ part, outlines: kept }] : [];
  });
  const id = `section-${leg.mark.toLowerCase()}`;
  return {
    ...blankDrawing(id, `${leg.name} cut level through its joints, seen from above`, scale),
    strokes: { visible: shown.flatMap(({ outlines }) => sidesOf(outlines, area)) },
    hatches: shown.map(({ part, outlines }) => hatchOf(part, outlines)),
    texts: shown.map(({ part, outlines }) => markOf(part, outlines.flat(), area)),
  };
}

/** Height above the floor at which all mortises of a leg are cut, if there is one. */
function levelOf({ features, pose }: Part): number | undefined {
  const spans = features.flatMap((f) => (f.feature === "mortise" ? [f.x] : []));
  if (spans.length === 0) return undefined;
  const from = Math.max(...spans.map(([a]) => a));
  const to = Math.min(...spans.map(([, b]) => b));
  return from < to ? outOf(pose, [(from + to) / 2, 0, 0])[2] : undefined;
}

function roundedOut(points: readonly Point[]): Extent {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    left: Math.min(...xs) - ROUND,
    bottom: Math.min(...ys) - ROUND,
    right: Math.max(...xs) + ROUND,
    top: Math.max(...ys) + ROUND,
  };
}

/** Each outline's sides, but those where it was only cut off. */
const sidesOf = (outlines: readonly (readonly Point[])[], area: Extent): readonly Stroke[] =>
  outlines.flatMap((outline) =>
    outline.flatMap((from, i): readonly Stroke[] => {
      const to = outline[(i + 1) % outline.length] ?? from;
      return isOnSide(from, to, area) ? [] : [{ shape: "line", from, to }];
    }),
  );

/** Legs one way, and rails the other; the two that meet in a leg differ in slope. */
function hatchOf({ role, pose }: Part, outlines: readonly (readonly Point[])[]): Hatch {
  const isAcross = Math.abs(pose.x[0]) > Math.abs(pose.x[1]);
  const angle = role === "leg" ? 45 : isAcross ? 120 : 150;
  return { outlines, angle: deg(angle), gap: GAP };
}

/** A part's mark outside the wood: a leg's at its outer corner, another's where it is cut off. */
function markOf({ role, mark }: Part, points: readonly Point[], area: Extent): Lettering {
  const write = (at: Point, shift: Point, anchor: Lettering["anchor"]) =>
    lettering(at, mark, { size: sizes.figure, isBold: true, anchor, shift });
  const box = extentOf([{ shape: "path", points, isClosed: true }]);
  const [x, y] = [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const [dx, dy] = [x - (area.left + area.right) / 2, y - (area.bottom + area.top) / 2];
  const isRight = dx > 0;
  const isUp = dy > 0;
  if (role === "leg") return write([box.left, box.bottom], [-1.5, -3.5], "end");
  return Math.abs(dx) > Math.abs(dy)
    ? write(
        [isRight ? area.right : area.left, y],
        [isRight ? 2 : -2, -1.1],
        isRight ? "start" : "end",
      )
    : write([x, isUp ? area.top : area.bottom], [0, isUp ? 2 : -4.2], "middle");
}
