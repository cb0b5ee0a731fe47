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
  bevel: { end, run: size("How much shorter the show face is.") },
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
};

/** Any feature, told apart by its name. */
export const featureSchema: Schema = {
  description: "Something worked on a blank.",
  oneOf: Object.entries(fields).map(([name, own]) =>
    record(
      name,
      { feature: { const: name, description: "What it is." }, key: text("Its key."), ...own },
      ["haunch"],
    ),
  ),
};
