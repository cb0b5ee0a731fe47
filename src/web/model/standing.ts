import type { Box3, Mesh } from "three";
import type { DrawnPart } from "../../workup/index.ts";

/** A part as it stands in the scene. */
export type Standing = {
  readonly part: DrawnPart;
  readonly faces: Mesh;
  /** in the piece, drawn apart or not [mm] */
  readonly box: Box3;
};
