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
  const soft = joined(
    standing.filter(({ part }) => part.role !== "button").map(({ box }) => box),
  ).map((box): Footprint => {
    const blur = 30 + 0.09 * Math.max(0, box.min.z);
    return { ...flat(box), blur, dark: SOFT };
  });
  const feet = standing.filter(({ box }) => box.min.z < ON_FLOOR).map(footOf);
  return [...soft, ...feet.map((box): Footprint => ({ ...flat(box), blur: 14, dark: 1 }))];
}

/** Boxes no farther from one another than this cast one shadow, where they lie level [mm]. */
const CLOSE = 3;

/**
 * Leaves that are up lie against the top, all as long as it: so one box, or light would seem to fall
 * through their joints.
 */
const joined = (boxes: readonly Box3[]): readonly Box3[] =>
  boxes.reduce<readonly Box3[]>((all, box) => {
    const beside = all.filter((other) => isLevel(box, other));
    const whole = beside.reduce((sum, other) => sum.union(other), box.clone());
    return [...all.filter((other) => !beside.includes(other)), whole];
  }, []);

const isLevel = (a: Box3, b: Box3): boolean =>
  [a.min.z - b.min.z, a.max.z - b.max.z, a.min.x - b.min.x, a.max.x - b.max.x].every(
    (off) => Math.abs(off) < CLOSE,
  ) && a.clone().expandByScalar(CLOSE).intersectsBox(b);

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
