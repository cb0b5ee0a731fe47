export { type Frame, frameOf, into, outOf, turnedOut } from "./frame.ts";
export {
  apart,
  type Flat,
  type Shadow,
  shadowOf,
  turnedOutline,
} from "./outline.ts";
export { convexHull, distanceInside, type PlanPoint } from "./plan.ts";
export {
  type Bulk,
  box,
  bulkOf,
  type Convex,
  clipped,
  difference,
  type Plane,
  prism,
  sumBulk,
} from "./polyhedron.ts";
export { cross, dot, minus, norm, plus, times, turnedAbout, unit, type Vec3 } from "./vec.ts";
