import type { DrawnPart } from "../../workup/index.ts";

type Place = readonly [number, number, number];

/**
 * How far each role goes when a piece is drawn apart: out from the middle in plan and up, in steps.
 * A leg takes the same step each way as its two rails take one way, so tenons leave mortises along
 * their own line; blocks and buttons go less, and so leave the rails that they hold.
 */
const goes: Readonly<Record<DrawnPart["role"], { readonly out: number; readonly up: number }>> = {
  leg: { out: 1, up: 0 },
  rail: { out: 1, up: 0 },
  "corner-block": { out: 0.4, up: 0 },
  button: { out: 0.35, up: 0.5 },
  top: { out: 0, up: 1 },
  leaf: { out: 1, up: 1 },
  arm: { out: 1, up: 0.5 },
};

/** A step is this share of the piece's longer side in plan, but never less than a long tenon shows. */
const STEP_SHARE = 0.1;
const LEAST_STEP = 110;
/** A part nearer to the middle than this share of the way out stays in line with it. */
const IN_LINE = 1 / 3;

/** The middle of a part's blank, in the piece [mm]. */
export function middleOf({ pose, blank }: Pick<DrawnPart, "pose" | "blank">): Place {
  const { origin, x, y, z } = pose;
  const half = [blank.length / 2, blank.width / 2, blank.thickness / 2] as const;
  const at = (i: 0 | 1 | 2) => origin[i] + x[i] * half[0] + y[i] * half[1] + z[i] * half[2];
  return [at(0), at(1), at(2)];
}

/** How far each part moves, by key, when the piece is drawn apart [mm]. */
export function apartOffsets(parts: readonly DrawnPart[]): ReadonlyMap<string, Place> {
  const middles = parts.map(middleOf);
  const spanOf = (i: 0 | 1 | 2) => {
    const places = middles.map((middle) => middle[i]);
    const [low, high] = [Math.min(...places), Math.max(...places)];
    return { middle: (low + high) / 2, half: (high - low) / 2 };
  };
  const [across, away] = [spanOf(0), spanOf(1)];
  const step = Math.max(LEAST_STEP, STEP_SHARE * 2 * Math.max(across.half, away.half));
  const wayOut = (at: number, { middle, half }: ReturnType<typeof spanOf>) =>
    Math.abs(at - middle) > IN_LINE * half ? Math.sign(at - middle) : 0;
  const isAlone = parts.length < 2;
  return new Map(
    parts.map(({ key, role }, i) => {
      const [x, y] = middles[i] as Place;
      const { out, up } = isAlone ? { out: 0, up: 0 } : goes[role];
      return [key, [wayOut(x, across) * out * step, wayOut(y, away) * out * step, up * step]];
    }),
  );
}
