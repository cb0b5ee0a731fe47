import { outOf } from "../geometry/index.ts";
import { type Mm, mm } from "../units/index.ts";
import { type Motion, posedAt, statesOf } from "./motion.ts";
import type { Part } from "./part.ts";

/** How far something reaches along the piece, across it and up [mm]. */
type Size = { readonly length: Mm; readonly width: Mm; readonly height: Mm };

/** The box round all parts, each by its blank. */
function sizeOf(parts: readonly Part[]): Size {
  const corners = parts.flatMap(({ blank: { length, width, thickness }, pose }) =>
    [0, length].flatMap((x) =>
      [0, width].flatMap((y) => [0, thickness].map((z) => outOf(pose, [x, y, z]))),
    ),
  );
  const reach = (i: 0 | 1 | 2) => {
    const places = corners.map((corner) => corner[i]);
    return mm(Math.max(...places) - Math.min(...places));
  };
  return { length: reach(0), width: reach(1), height: reach(2) };
}

/** A piece over all: open, with every leaf up on its arms; and closed, where it has any. */
export function overAll(
  parts: readonly Part[],
  motions: readonly Motion[],
): { readonly open: Size; readonly closed?: Size } {
  const sizes = statesOf(motions).map(({ turns }) => sizeOf(posedAt(parts, motions, turns)));
  const [closed, ...more] = sizes;
  const open = more.at(-1);
  if (!closed) throw new Error("a piece stands in some way");
  return open ? { open, closed } : { open: closed };
}
