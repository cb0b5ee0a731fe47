export { createSolids, type Solids } from "./cache.ts";
export { CREASE_DEG } from "./edges.ts";
export { CHORD, LEAST_SIDES, sidesFor } from "./fineness.ts";
export { type FlatMesh, flatMesh } from "./flat-mesh.ts";
export { type GlbPart, writeGlb } from "./glb.ts";
export { type Clash, LEAST_CLASH } from "./interference.ts";
export { createKernel, type Kernel } from "./kernel.ts";
export type { Bounds, Solid } from "./mesh.ts";
export type { Outlines, Section } from "./section.ts";

export { solidOf } from "./solid-of.ts";
