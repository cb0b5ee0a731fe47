import type { Vec3 } from "../geometry/index.ts";
import type { Cut } from "./cut.ts";
import { cutsOfPart } from "./cuts-of.ts";
import type { Part } from "./part.ts";

/** What of a part decides its shape; pose, name and timber do not. */
export type Shaped = Pick<Part, "key" | "blank" | "features" | "isMirrored">;

/** Places are told apart to a millionth of a millimetre. */
const place = (n: number): string => String(Math.round(n * 1e6) / 1e6 + 0);

/** Directions finer, for they act over the length of a board. */
const direction = (n: number): string => String(Math.round(n * 1e9) / 1e9 + 0);

const places = (...all: readonly number[]): string => all.map(place).join(" ");
const directions = (...all: readonly Vec3[]): string => all.flat().map(direction).join(" ");

/** A text that two parts share when they have one shape, whatever features made it. */
export function shapeKey(part: Shaped): string {
  const { length, width, thickness } = part.blank;
  const hand = part.isMirrored ? "mirrored" : "as-drawn";
  // Cuts only take away, so their order is no matter.
  const cuts = cutsOfPart(part).map(cutKey).sort();
  return [places(length, width, thickness), hand, ...cuts].join("; ");
}

function cutKey(cut: Cut): string {
  switch (cut.cut) {
    case "half-space":
      return `half-space ${places(...cut.point)} / ${directions(cut.away)}`;
    case "prism": {
      const { origin, x, y } = cut.frame;
      const outline = cut.outline.map((corner) => places(...corner)).join(", ");
      return `prism ${places(...origin)} / ${directions(x, y)} / ${outline} / ${place(cut.depth)}`;
    }
    case "bore":
      return `bore ${places(...cut.from, cut.radius, cut.endRadius ?? cut.radius, cut.depth)} / ${directions(cut.along)}`;
    case "quarter": {
      const { origin, x, y } = cut.frame;
      const size = places(cut.radius, ...cut.past, cut.depth);
      return `quarter ${cut.leaves} ${places(...origin)} / ${directions(x, y)} / ${size}`;
    }
    case "sweep":
      return `sweep ${places(...cut.from, ...cut.to, cut.radius, cut.depth)} / ${directions(cut.along)}`;
  }
}
