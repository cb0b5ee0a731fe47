import type { Manifold } from "manifold-3d";
import { dot, frameOf, unit } from "../geometry/index.ts";
import type { Shaped } from "../piece/index.ts";
import { cutsOfPart, type HalfSpaceCut, type Key } from "../piece/index.ts";
import { Problem } from "../worked/index.ts";
import { cutterOf, type SunkCut } from "./cutter.ts";
import type { Scope } from "./kernel.ts";
import { matrixOf } from "./placed.ts";

/**
 * A part's wood in the kernel: its blank less its cuts, then turned into its mirror if it is one.
 *
 * @throws Problem "nothing-left" when the cuts take all of it
 */
export function woodOf(scope: Scope, part: Shaped): Manifold {
  const { blank } = part;
  const { keep, wasm } = scope;
  const cuts = cutsOfPart(part);
  let wood = keep(wasm.Manifold.cube([blank.length, blank.width, blank.thickness]));
  for (const cut of cuts)
    if (cut.cut === "half-space") wood = sound(keep(trimmed(wood, cut)), part.key);
  const cutters = cuts.flatMap((cut) =>
    cut.cut === "half-space" ? [] : [cutterFor(scope, cut, part.key)],
  );
  // All at once: one after the other the kernel would make a whole mesh for each.
  if (cutters.length > 0)
    wood = sound(keep(wasm.Manifold.difference([wood, ...cutters])), part.key);
  if (wood.isEmpty())
    throw new Problem(
      "nothing-left",
      part.key,
      "its cuts take away all of its wood.",
      "Make the part larger, or what is worked on it smaller.",
    );
  // Faces that several cuts left in one plane become one; only then do the corners within it go.
  wood = keep(keep(wood.asOriginal()).simplify());
  return part.isMirrored ? keep(wood.transform(mirrorAcross(blank.width))) : wood;
}

function trimmed(wood: Manifold, cut: HalfSpaceCut): Manifold {
  const away = unit(cut.away);
  // The kernel keeps the side that its direction points to.
  return wood.trimByPlane([-away[0], -away[1], -away[2]], -dot(away, cut.point));
}

function cutterFor(scope: Scope, cut: SunkCut, key: Key): Manifold {
  try {
    return cutterOf(scope, cut);
  } catch (cause) {
    throw new Error(`${key}: a ${cut.cut} that cannot be cut`, { cause });
  }
}

/** Boolean work is put off by the kernel until someone asks: here, so that the part can be named. */
export function sound(wood: Manifold, key: Key): Manifold {
  const status = wood.status();
  if (status !== "NoError") throw new Error(`${key}: the kernel says ${status}`);
  return wood;
}

/** y counted from the upper edge: a left-handed frame, at which the kernel turns the faces over. */
const mirrorAcross = (width: number) =>
  matrixOf({ ...frameOf([0, width, 0], [1, 0, 0], [0, -1, 0]), z: [0, 0, 1] });
