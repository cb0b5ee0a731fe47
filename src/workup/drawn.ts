import type { Frame } from "../geometry/index.ts";
import type { Blank, Key, Part, Piece, Strip } from "../piece/index.ts";
import { shapeKey } from "../piece/index.ts";
import { flatMesh, type Solids } from "../solid/index.ts";

/** A shape as a picture takes it, in part coordinates [mm]; the mirror is applied already. */
export type Shape = {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly indices: Uint16Array | Uint32Array;
  /** both ends, x, y, z each, of every sharp edge */
  readonly edges: Float32Array;
};

/** A part as a picture takes it: which shape, where, and how its end grain runs. */
export type DrawnPart = {
  readonly key: Key;
  readonly mark: string;
  readonly name: string;
  readonly role: Part["role"];
  /** name of its shape among the shapes sent */
  readonly shape: string;
  readonly pose: Frame;
  readonly blank: Blank;
  readonly isMirrored: boolean;
  readonly strips: readonly Strip[];
};

/** What the parts of a piece look like, but their shapes. */
export const drawnParts = ({ parts }: Piece): readonly DrawnPart[] =>
  parts.map((part) => {
    const { key, mark, name, role, pose, blank, isMirrored, strips } = part;
    return { key, mark, name, role, shape: shapeKey(part), pose, blank, isMirrored, strips };
  });

/** A part's shape, ready for a picture. */
export function shapeOf(solids: Solids, part: Part): Shape {
  const solid = solids.of(part);
  return { ...flatMesh(solid), edges: Float32Array.from(solid.edges) };
}
