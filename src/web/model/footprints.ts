import { Box3, Vector3 } from "three";
import type { Footprint } from "./shadow.ts";
import type { Standing } from "./standing.ts";

/** Lower than this above the floor a part stands on it [mm]. */
const ON_FLOOR = 5;
/** How dark the soft shadow is, of the close one’s darkness [0 to 1]. */
const SOFT = 0.3;
/** The close shadow shows so far round a foot [mm]. */
const ROUND_FOOT = 12;

/** A soft shadow of everything, softer from higher up, and a dark one close about the feet. */
export function footprintsOf(standing: readonly Standing[]): readonly Footprint[] {
  const soft = standing
    .filter(({ part }) => part.role !== "button")
    .map(({ box }): Footprint => {
      const blur = 30 + 0.09 * Math.max(0, box.min.z);
      return { ...flat(box), blur, dark: SOFT };
    });
  const feet = standing.filter(({ box }) => box.min.z < ON_FLOOR).map(footOf);
  return [...soft, ...feet.map((box): Footprint => ({ ...flat(box), blur: 14, dark: 1 }))];
}

const flat = ({ min, max }: Box3) => ({ x: [min.x, max.x], y: [min.y, max.y] }) as const;

/** The box of what touches the floor. */
function footOf({ faces }: Standing): Box3 {
  const foot = new Box3();
  const at = new Vector3();
  const places = faces.geometry.getAttribute("position");
  for (let i = 0; i < places.count; i++) {
    at.fromBufferAttribute(places, i).applyMatrix4(faces.matrix);
    if (at.z < ON_FLOOR) foot.expandByPoint(at);
  }
  return foot.expandByScalar(ROUND_FOOT);
}
