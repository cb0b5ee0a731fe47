export { createSolids, type Solids } from "./cache.ts";
export { CREASE_DEG } from "./edges.ts";
export { CHORD, FINE_CHORD, LEAST_SIDES, sidesFor } from "./fineness.ts";
export { flatMesh } from "./flat-mesh.ts";
export { type GlbPart, writeGlb } from "./glb.ts";
export { LEAST_CLASH } from "./interference.ts";
export { createKernel, type Kernel } from "./kernel.ts";
export type { Solid } from "./mesh.ts";
export type { Outlines } from "./section.ts";

export { solidOf } from "./solid-of.ts";
