import type { Manifold } from "manifold-3d";
import type { Frame } from "../geometry/index.ts";
import type { Part } from "../piece/index.ts";
import { type Shaped, shapeKey } from "../piece/index.ts";
import { type Clash, clashes, LEAST_CLASH } from "./interference.ts";
import { type Kernel, type Scope, withKernel } from "./kernel.ts";
import { type Solid, solidFrom } from "./mesh.ts";
import { type Outlines, outline, type Section, sections } from "./section.ts";
import { type SweptClash, sweptClashes } from "./swept.ts";
import { woodOf } from "./wood.ts";

/** The shapes of a piece, kept from one change to the next. Only plain data leaves it. */
export type Solids = {
  /** Equal shapes are one and the same object. */
  readonly of: (part: Shaped) => Solid;
  /** Where posed parts run into one another by at least so much [mm³]. */
  readonly interference: (
    parts: readonly Part[],
    options?: { readonly least?: number },
  ) => readonly Clash[];
  /**
   * Where parts that move first run into parts that stand, each pair once. `moving` has the moving
   * parts at every pose, in the order of their way; the standing ones are posed.
   */
  readonly swept: (
    standing: readonly Part[],
    moving: readonly (readonly Part[])[],
    options?: { readonly least?: number },
  ) => readonly SweptClash[];
  /** Where posed parts are cut by a frame's x-y plane; parts that it misses are left out. */
  readonly sections: (parts: readonly Part[], plane: Frame) => readonly Section[];
  /** A posed part's outline seen along a frame's z, in its x and y. */
  readonly outline: (part: Part, plane: Frame) => Outlines;
  /** How many shapes it holds now, and how many it has built. */
  readonly counts: () => { readonly held: number; readonly built: number };
  /** Lets go of all shapes; solids that were handed out stay good. */
  readonly free: () => void;
};

type Kept = { readonly solid: Solid; readonly wood: Manifold };

/**
 * A store of shapes, which drops the one longest unused when it holds too many.
 *
 * @param most  how many shapes it holds, at least 1 [pieces]
 */
export function createSolids(kernel: Kernel, most = 400): Solids {
  // A Map keeps the order in which things were put in: the first is the longest unused.
  const kept = new Map<string, Kept>();
  let built = 0;

  const drop = (key: string, { wood }: Kept): void => {
    kept.delete(key);
    wood.delete();
  };

  function find(part: Shaped): Kept {
    const key = shapeKey(part);
    const known = kept.get(key);
    kept.delete(key);
    const found = known ?? build(part);
    kept.set(key, found);
    for (const [oldest, shape] of kept) {
      if (kept.size <= most) break;
      drop(oldest, shape);
    }
    return found;
  }

  function build(part: Shaped): Kept {
    const shape = withKernel(kernel, (scope): Kept => {
      const wood = woodOf(scope, part);
      return { solid: solidFrom(scope, wood), wood: scope.handOut(wood) };
    });
    built += 1;
    return shape;
  }

  // Placed at once, within the caller's scope: the next part may push this one's shape out.
  const work = <R>(task: (scope: Scope, wood: (part: Shaped) => Manifold) => R): R =>
    withKernel(kernel, (scope) => task(scope, (part) => find(part).wood));

  return {
    of: (part) => find(part).solid,
    interference: (parts, { least = LEAST_CLASH } = {}) =>
      work((scope, wood) => clashes(scope, wood, parts, least)),
    swept: (standing, moving, { least = LEAST_CLASH } = {}) =>
      work((scope, wood) => sweptClashes(scope, wood, standing, moving, least)),
    sections: (parts, plane) => work((scope, wood) => sections(scope, wood, parts, plane)),
    outline: (part, plane) => work((scope, wood) => outline(scope, wood, part, plane)),
    counts: () => ({ held: kept.size, built }),
    free: () => {
      for (const [key, shape] of kept) drop(key, shape);
    },
  };
}
