export { type DrawnPart, drawnParts, type Shape, shapeOf } from "./drawn.ts";
export { type Latest, latestOnly } from "./latest.ts";
export { createWorkup, type Outcome, type Workup } from "./work-up.ts";
