import { outOf } from "../geometry/index.ts";
import type { Wood } from "../motion/index.ts";
import { bodiesOfPart, mirrored, type Part } from "../piece/index.ts";

/** What decides where a part may be met from outside; holes and joints only take more of it away. */
const OUTER: ReadonlySet<string> = new Set(["taper", "bevel", "arm-cut"]);

/** A part as convex bodies where it stands in the piece; all of its wood lies within them. */
export function woodOf(part: Part): Wood {
  const features = part.features.filter(({ feature }) => OUTER.has(feature));
  const bodies = bodiesOfPart({ blank: part.blank, features }).map((body) =>
    body.map((face) => face.map((corner) => outOf(part.pose, mirrored(part, corner)))),
  );
  return { key: part.key, bodies };
}
