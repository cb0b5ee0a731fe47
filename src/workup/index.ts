export { type DrawnPart, drawnParts, type Shape, shapeOf } from "./drawn.ts";
export { latestOnly } from "./latest.ts";
export { createWorkup, type Workup } from "./work-up.ts";
