import { outOf } from "../geometry/index.ts";
import type { Wood } from "../motion/index.ts";
import { bodiesOfPart, mirrored, type Part } from "../piece/index.ts";

/** What decides where a part may be met from outside; holes and joints only take more of it away. */
const OUTER: ReadonlySet<string> = new Set(["taper", "bevel", "arm-cut"]);

/** Several checks ask of the same parts: what is dear is worked out once for each. */
const known = new WeakMap<Part, Wood>();

/** A part as convex bodies where it stands in the piece; all of its wood lies within them. */
export function woodOf(part: Part): Wood {
  const before = known.get(part);
  if (before) return before;
  const wood = workedOut(part);
  known.set(part, wood);
  return wood;
}

function workedOut(part: Part): Wood {
  const features = part.features.filter(({ feature }) => OUTER.has(feature));
  const bodies = bodiesOfPart({ blank: part.blank, features }).map((body) =>
    body.map((face) => face.map((corner) => outOf(part.pose, mirrored(part, corner)))),
  );
  return { key: part.key, bodies };
}
