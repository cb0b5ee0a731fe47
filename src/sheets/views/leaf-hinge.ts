import type { LeafHinge } from "../../shop/index.ts";
import { deg } from "../../units/index.ts";
import type { Point, Stroke } from "../drawing.ts";

/** A hinge in the section: what stays with the top, and what goes with the leaf. */
export type HingeLines = {
  readonly barrel: Stroke;
  readonly short: readonly Stroke[];
  readonly long: readonly Stroke[];
  /** middle lines of each plate's screws */
  readonly screws: { readonly short: readonly Stroke[]; readonly long: readonly Stroke[] };
};

/** How far a screw's middle line runs on past its head and its point [mm]. */
const PAST = 1.5;

/** A leaf's hinge cut across, its leaf level. */
export function hingeLines(hinge: LeafHinge, pin: Point): HingeLines {
  const outer = pin[1] - hinge.pinOverFace;
  return {
    barrel: {
      ...{ shape: "arc", centre: pin, radius: hinge.barrel },
      ...{ from: deg(0), to: deg(360) },
    },
    short: plate(hinge, pin, -1),
    long: plate(hinge, pin, 1),
    screws: { short: screws(hinge, pin, -1, outer), long: screws(hinge, pin, 1, outer) },
  };
}

/** A plate from the barrel to its end. */
function plate(hinge: LeafHinge, pin: Point, way: 1 | -1): readonly Stroke[] {
  const { reach } = way > 0 ? hinge.long : hinge.short;
  const outer = pin[1] - hinge.pinOverFace;
  const inner = outer + hinge.plate;
  const start = (y: number): Point => {
    const off = Math.max(0, hinge.barrel ** 2 - (y - pin[1]) ** 2);
    return [pin[0] + way * Math.sqrt(off), y];
  };
  const end = pin[0] + way * reach;
  return [
    {
      shape: "path",
      isClosed: false,
      points: [start(outer), [end, outer], [end, inner], start(inner)],
    },
  ];
}

function screws(hinge: LeafHinge, pin: Point, way: 1 | -1, outer: number): readonly Stroke[] {
  const { holes } = way > 0 ? hinge.long : hinge.short;
  return [...new Set(holes.map(({ from }) => from as number))].map((from): Stroke => {
    const x = pin[0] + way * from;
    return {
      ...{ shape: "line", from: [x, outer - PAST] },
      to: [x, outer + hinge.screwLength + PAST],
    };
  });
}
