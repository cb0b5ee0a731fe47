import { cross, type Frame, type Vec3 } from "../../geometry/index.ts";

/** Where the piece is looked at from: x to the right, y up the paper, z towards the eye. */
const looking = (right: Vec3, up: Vec3): Frame => ({
  origin: [0, 0, 0],
  x: right,
  y: up,
  z: cross(right, up),
});

/** From the right of the front and from above, far away [°]. */
const GENERAL = { round: 32, above: 24 } as const;

function general(): Frame {
  const [round, above] = [GENERAL.round, GENERAL.above].map((d) => (d * Math.PI) / 180) as [
    number,
    number,
  ];
  const right: Vec3 = [Math.cos(round), Math.sin(round), 0];
  const eye: Vec3 = [
    Math.cos(above) * Math.sin(round),
    -Math.cos(above) * Math.cos(round),
    Math.sin(above),
  ];
  return { origin: [0, 0, 0], x: right, y: cross(eye, right), z: eye };
}

/** The views of a whole piece. Third angle: the plan stands over the front, the right end beside it. */
export const cameras = {
  front: looking([1, 0, 0], [0, 0, 1]),
  end: looking([0, 1, 0], [0, 0, 1]),
  above: looking([1, 0, 0], [0, 1, 0]),
  general: general(),
} as const;

export type ViewName = keyof typeof cameras;

/** What each view is called under it. */
export const viewNames: Readonly<Record<ViewName, string>> = {
  front: "Front",
  end: "Right end",
  above: "From above",
  general: "General view, not to scale",
};
