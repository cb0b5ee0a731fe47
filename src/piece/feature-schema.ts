import type { Feature } from "./feature.ts";
import { list, oneOf, place, record, type Schema, size, switched, text } from "./schema.ts";

const span = (says: string) => list(says, place("From, and to."), 2);
const vector = (says: string) => list(says, place("Along, across, through."), 3);
const end = oneOf("Which end.", ["left", "right"]);
const longFace = oneOf("Which long face.", ["lower", "upper", "back", "show"]);
const haunch = record("A step beside the tenon.", {
  length: size("How far it reaches."),
  isSloped: switched("Whether it runs out to nothing."),
});

const longEdge = oneOf("Which long edge.", ["lower", "upper"]);
const sunk = {
  x: span("Along the grain."),
  y: span("Across the width."),
  depth: size("From the back."),
};

/** The fields of each feature besides its name and key; an optional one may be left out. */
const fields: Readonly<Record<Feature["feature"], Readonly<Record<string, Schema>>>> = {
  tenon: {
    end,
    length: size("From shoulder to tip."),
    y: span("Across the width."),
    z: span("Through the thickness."),
    haunch,
    isMitred: switched("Whether its tip is mitred."),
  },
  mortise: {
    face: longFace,
    x: span("Along the grain."),
    across: span("Across the face."),
    depth: size("How deep."),
    haunch,
  },
  taper: {
    face: longFace,
    from: place("Where it starts, along the grain."),
    depth: place("How much is gone at the right end."),
  },
  bevel: {
    end,
    run: size("How much shorter the shorter face is."),
    shorter: oneOf("The face that it shortens; the show face where none is named.", [
      "show",
      "back",
    ]),
  },
  rebate: {
    end,
    face: oneOf("Which face.", ["show", "back"]),
    length: size("Along the grain."),
    depth: size("From that face."),
  },
  bore: {
    from: vector("Its mouth."),
    along: vector("Its direction, of length 1."),
    diameter: size("How wide."),
    depth: size("How deep."),
    isThrough: switched("Whether it leaves the wood."),
    sink: record("A countersink.", {
      diameter: size("How wide at the mouth."),
      depth: size("How deep until the hole's own width."),
    }),
  },
  "screw-slot": {
    x: place("Its middle, along the grain."),
    z: place("Its middle, through the thickness."),
    runs: oneOf("The way it is long.", ["along", "through"]),
    travel: place("How far the screw may move."),
    diameter: size("Of the narrow part."),
    headDiameter: size("Of the mouth."),
    headDepth: size("How deep the head is sunk."),
  },
  "round-over": {
    edge: longEdge,
    fillet: size("Depth of the step under the show face."),
    radius: size("Of the quarter round."),
    bevel: place("Taken off the lower corner at the back."),
  },
  cove: {
    edge: longEdge,
    radius: size("Of the hollow."),
    lip: size("Thickness of the lip at its end."),
  },
  "hinge-recess": sunk,
  "knuckle-groove": sunk,
  "arm-cut": {
    show: span("Along the grain at the show face."),
    back: span("Along the grain at the back."),
    depth: size("From the upper edge."),
  },
};

/** Any feature, told apart by its name. */
export const featureSchema: Schema = {
  description: "Something worked on a blank.",
  oneOf: Object.entries(fields).map(([name, own]) =>
    record(
      name,
      { feature: { const: name, description: "What it is." }, key: text("Its key."), ...own },
      ["haunch", "shorter", "sink"],
    ),
  ),
};
