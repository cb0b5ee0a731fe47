import type { Frame, Vec3 } from "../../geometry/index.ts";
import type { Face, Feature, Part } from "../../piece/index.ts";

/** From which sides a part is drawn: a face, and beside it an edge. */
export type PartLook = {
  readonly face: "show" | "back";
  readonly edge: "lower" | "upper";
  /** the edge is drawn where it lies in the view of the face: below it or above it */
  readonly isEdgeBelow: boolean;
  readonly faceView: Frame;
  readonly edgeView: Frame;
};

/** The long face that a feature is worked from; undefined when it is worked from an end. */
function mouthOf(feature: Feature): Exclude<Face, "left" | "right"> | undefined {
  switch (feature.feature) {
    case "mortise":
      return feature.face;
    case "screw-slot":
      return "lower";
    case "rebate":
      return feature.face;
    case "bore": {
      const [, y, z] = feature.along;
      if (Math.abs(z) >= Math.abs(y)) return z > 0 ? "back" : "show";
      return y > 0 ? "lower" : "upper";
    }
    case "hinge-recess":
    case "knuckle-groove":
      return "back";
    case "arm-cut":
      return "upper";
    default:
      return undefined;
  }
}

/** The sides that show most of what is worked on a part; its reference where that is all one. */
export function lookOf({ features, reference, blank }: Part): PartLook {
  const mouths = features.map(mouthOf);
  const count = (face: Face) => mouths.filter((one) => one === face).length;
  const prefers = (face: Face) => reference.face === face || reference.edge === face;
  const face =
    count("back") > count("show") || (count("back") === count("show") && reference.face === "back")
      ? "back"
      : "show";
  const isUpper =
    count("upper") > count("lower") || (count("upper") === count("lower") && prefers("upper"));
  const edge = isUpper ? "upper" : "lower";
  const isShow = face === "show";
  const isEdgeBelow = isShow === (edge === "lower");
  const { width, thickness } = blank;
  const x: Vec3 = [1, 0, 0];
  const looksDown = edge === "lower";
  return {
    face,
    edge,
    isEdgeBelow,
    faceView: isShow
      ? { origin: [0, 0, 0], x, y: [0, 1, 0], z: [0, 0, 1] }
      : { origin: [0, width, 0], x, y: [0, -1, 0], z: [0, 0, -1] },
    edgeView: looksDown
      ? { origin: [0, 0, 0], x, y: [0, 0, 1], z: [0, -1, 0] }
      : { origin: [0, 0, thickness], x, y: [0, 0, -1], z: [0, 1, 0] },
  };
}
