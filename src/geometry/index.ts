export { convexHull, distanceInside, type PlanPoint } from "./plan.ts";
