import type { Feature, Part } from "../../piece/index.ts";

/** Which of a part's two views a place is measured in. */
type ViewOf = "face" | "edge";

/** A place along the grain, from the left end [mm], and the view that shows it. */
export type Along = { readonly view: ViewOf; readonly x: number };

/** A place across the part, in part coordinates, and where along the grain it is found [mm]. */
export type Across = { readonly view: ViewOf; readonly place: number; readonly x: number };

/** The view that shows the faces square to z, or to y. */
const viewFor = (face: string): ViewOf => (face === "show" || face === "back" ? "face" : "edge");
/** The view in which a slope off a face is seen from the side. */
const sideOf = (face: string): ViewOf => (viewFor(face) === "face" ? "edge" : "face");

/**
 * Whether a hole lies where a hinge does: its plates say where it is bored, and so no dimension does.
 */
export function isUnderHinge(feature: Feature, { features }: Pick<Part, "features">): boolean {
  if (feature.feature !== "bore") return false;
  const [x, y] = feature.from;
  const isIn = ([from, to]: readonly [number, number], at: number) => at > from && at < to;
  return features.some((one) => one.feature === "hinge-recess" && isIn(one.x, x) && isIn(one.y, y));
}

/** Where along the grain something starts or ends. */
export function alongOf(feature: Feature, part: Part): readonly Along[] {
  const { length } = part.blank;
  if (isUnderHinge(feature, part)) return [];
  switch (feature.feature) {
    case "tenon":
      return [
        { view: "face", x: feature.end === "left" ? feature.length : length - feature.length },
      ];
    case "mortise":
      return feature.x.map((x) => ({ view: viewFor(feature.face), x }));
    case "taper":
      return [{ view: sideOf(feature.face), x: feature.from }];
    case "bevel":
      return [{ view: "edge", x: feature.end === "left" ? feature.run : length - feature.run }];
    case "rebate":
      return [
        { view: "edge", x: feature.end === "left" ? feature.length : length - feature.length },
      ];
    case "bore":
      return [{ view: Math.abs(feature.along[1]) > 0.5 ? "edge" : "face", x: feature.from[0] }];
    case "screw-slot":
      return [{ view: "edge", x: feature.x }];
    case "hinge-recess":
    case "knuckle-groove":
      return feature.x.map((x) => ({ view: "face", x }));
    case "arm-cut":
      return [...feature.show, ...feature.back].map((x) => ({ view: "edge", x }));
    case "round-over":
    case "cove":
      return [];
  }
}

/** Where across the part something starts or ends: in y in the face's view, in z in the edge's. */
export function acrossOf(feature: Feature, part: Part): readonly Across[] {
  const { blank } = part;
  const { length, thickness } = blank;
  if (isUnderHinge(feature, part)) return [];
  switch (feature.feature) {
    case "tenon": {
      const x = feature.end === "left" ? 0 : length;
      return [
        ...feature.y.map((place): Across => ({ view: "face", place, x })),
        ...feature.z.map((place): Across => ({ view: "edge", place, x })),
      ];
    }
    case "mortise":
      return feature.across.map((place) => ({
        ...{ view: viewFor(feature.face), place, x: feature.x[0] },
      }));
    case "rebate":
      return [
        {
          view: "edge",
          place: feature.face === "back" ? feature.depth : thickness - feature.depth,
          x: feature.end === "left" ? 0 : length,
        },
      ];
    case "bore": {
      const [x, y, z] = feature.from;
      const isEdge = Math.abs(feature.along[1]) > 0.5;
      return [{ view: isEdge ? "edge" : "face", place: isEdge ? z : y, x }];
    }
    case "screw-slot":
      return [{ view: "edge", place: feature.z, x: feature.x }];
    case "hinge-recess":
    case "knuckle-groove":
      return feature.y.map((place) => ({ view: "face", place, x: feature.x[0] }));
    case "arm-cut":
      return [{ view: "face", place: blank.width - feature.depth, x: feature.show[0] }];
    case "taper":
    case "bevel":
    case "round-over":
    case "cove":
      return [];
  }
}

/** How far an end's joint reaches along the grain; 0 where there is none [mm]. */
export function jointReach({ features, blank }: Part, end: "left" | "right"): number {
  const reach = features.map((feature) => {
    if (feature.feature === "tenon") return feature.end === end ? feature.length : 0;
    // A mortise that begins nearer to the end than it is long belongs to that end's joint.
    if (feature.feature !== "mortise") return 0;
    const [from, to] =
      end === "left" ? feature.x : [blank.length - feature.x[1], blank.length - feature.x[0]];
    return from < to - from ? to : 0;
  });
  return Math.max(0, ...reach);
}

/** The middle of a hole seen from its mouth, in the view's x and the part's y or z, and half its size [mm]. */
type Centre = {
  readonly x: number;
  readonly place: number;
  readonly across: number;
  readonly up: number;
};

/** Holes that are seen as circles or slots in a view. */
export const centresOf = (part: Part, view: ViewOf): readonly Centre[] =>
  part.features.flatMap((feature): readonly Centre[] => {
    if (isUnderHinge(feature, part)) return [];
    if (feature.feature === "screw-slot" && view === "edge") {
      const { x, z, runs, travel, headDiameter } = feature;
      const [short, long] = [headDiameter / 2, (headDiameter + travel) / 2];
      const isAlong = runs === "along";
      return [{ x, place: z, across: isAlong ? long : short, up: isAlong ? short : long }];
    }
    if (feature.feature !== "bore") return [];
    const [x, y, z] = feature.from;
    const isEdge = Math.abs(feature.along[1]) > 0.5;
    if (isEdge !== (view === "edge")) return [];
    const half = feature.diameter / 2;
    return [{ x, place: isEdge ? z : y, across: half, up: half }];
  });
