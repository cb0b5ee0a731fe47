import type { CrossSection, Manifold } from "manifold-3d";
import type { Frame } from "../geometry/index.ts";
import type { Key, Part } from "../piece/index.ts";
import type { Scope } from "./kernel.ts";
import { matrixOf, seenFrom } from "./placed.ts";

/**
 * Closed outlines in a frame's x and y: counter-clockwise round wood, clockwise round a hole. The
 * kernel's plane outlines are rounded to about 10⁻⁸ mm.
 */
export type Outlines = readonly (readonly (readonly [number, number])[])[];

export type Section = { readonly key: Key; readonly outlines: Outlines };

type WoodFor = (part: Part) => Manifold;

/**
 * Where a frame's x-y plane cuts posed parts. A face that lies in the plane counts as cut when its
 * wood is on the z side of it.
 */
export const sections = (
  scope: Scope,
  woodFor: WoodFor,
  parts: readonly Part[],
  plane: Frame,
): readonly Section[] =>
  parts.flatMap((part): Section[] => {
    const cut = scope.keep(seen(scope, woodFor, part, plane).slice(0));
    return cut.isEmpty() ? [] : [{ key: part.key, outlines: outlinesOf(scope, cut) }];
  });

/** What a posed part covers, seen along a frame's z. */
export const outline = (scope: Scope, woodFor: WoodFor, part: Part, plane: Frame): Outlines =>
  outlinesOf(scope, scope.keep(seen(scope, woodFor, part, plane).project()));

const seen = ({ keep }: Scope, woodFor: WoodFor, part: Part, plane: Frame): Manifold =>
  keep(woodFor(part).transform(matrixOf(seenFrom(plane, part.pose))));

/** Corners closer to the line between their neighbours are none [mm]. */
const ON_LINE = 1e-6;

/** Without the corners that the mesh's triangles leave along straight sides. */
const outlinesOf = ({ keep }: Scope, cut: CrossSection): Outlines =>
  keep(cut.simplify(ON_LINE)).toPolygons();
