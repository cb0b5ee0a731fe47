import { frameOf, outOf, type PlanPoint, plus, times, type Vec3 } from "../geometry/index.ts";
import { FIRM_LEAN, LIGHT_LEAN, tippingLoadAt } from "../mechanics/index.ts";
import {
  mirrored,
  type Part,
  type Piece,
  posedAt,
  type State,
  statesOf,
  type Weighing,
} from "../piece/index.ts";
import { type Kg, kg, mm, type N, ratio, STANDARD_GRAVITY } from "../units/index.ts";
import {
  cite,
  derived,
  type Finding,
  given,
  Problem,
  published,
  type Worked,
  work,
} from "../worked/index.ts";
import { told } from "./told.ts";

/** How far in from the top's edge the load stands [mm]. */
const INSET = 50;
const ISO = published(
  "ISO 7172:1988",
  "clause 5: the load acts 50 mm in from the edge",
  "secondary",
);

/** The foot's four corners on the floor, what its tapers have taken off left out. */
function footOf(part: Part): readonly PlanPoint[] {
  const { length, width, thickness } = part.blank;
  const gone = (face: string) =>
    part.features.reduce(
      (sum, f) => (f.feature === "taper" && f.face === face ? sum + f.depth : sum),
      0,
    );
  const [y0, y1] = [gone("lower"), width - gone("upper")];
  const [z0, z1] = [gone("back"), thickness - gone("show")];
  const corners: readonly Vec3[] = [
    [length, y0, z0],
    [length, y1, z0],
    [length, y1, z1],
    [length, y0, z1],
  ];
  return corners.map((corner) => {
    const [x, y] = outOf(part.pose, mirrored(part, corner));
    return { x: mm(x), y: mm(y) };
  });
}

/** The load that tips the piece, in every way that it stands: pressed on an edge or a corner of what lies level. */
export function standsFirm(piece: Piece, weighing: Weighing): readonly Finding[] {
  const feet = piece.parts.filter((part) => part.role === "leg").flatMap(footOf);
  if (feet.length < 3) return [];
  return statesOf(piece.motions).map((state) => inState(piece, weighing, feet, state));
}

function inState(
  piece: Piece,
  weighing: Weighing,
  feet: readonly PlanPoint[],
  state: State,
): Finding {
  const { motions, parts } = piece;
  const isUp = ({ key }: Part) =>
    motions.every(({ carries, key: motion }) => !carries.includes(key) || !state.turns[motion]);
  const boards = parts.filter(
    (part) => part.role === "top" || (part.role === "leaf" && isUp(part)),
  );
  const raised = boards.filter((part) => part.role === "leaf");
  const said: Said = {
    id: motions.length === 0 ? "stands/edge" : `stands/${state.key}`,
    when: motions.length === 0 ? "" : `${capital(state.says)}: `,
    lights: raised.map(({ key }) => key),
    heaviest: Math.max(0, ...raised.map(({ key }) => weighing.parts[key]?.mass.value ?? 0)),
  };
  const centre = centreIn(piece, weighing, state);
  const stance = { feet, mass: weighing.mass, centre };
  try {
    const loads = placesOn(boards).flatMap((place) => tippingLoadAt(stance, place) ?? []);
    return judged(loads.sort((a, b) => a.value - b.value)[0], said);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    const says = "its centre of gravity lies outside its feet, and it falls by itself.";
    return finding("fails", says, undefined, { ...said, severity: 9 });
  }
}

/** Middles of the edges and corners of what lies level, as far in from them as the load stands. */
function placesOn(boards: readonly Part[]): readonly PlanPoint[] {
  const corners = boards.flatMap(({ blank, pose }) =>
    [0, blank.length].flatMap((x) => [0, blank.width].map((y) => outOf(pose, [x, y, 0]))),
  );
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const [west, east] = [Math.min(...xs) + INSET, Math.max(...xs) - INSET];
  const [south, north] = [Math.min(...ys) + INSET, Math.max(...ys) - INSET];
  return [west, (west + east) / 2, east].flatMap((x) =>
    [south, (south + north) / 2, north].map((y) => ({ x: mm(x), y: mm(y) })),
  );
}

/** Where the weight lies when leaves hang and arms are out. */
function centreIn({ motions }: Piece, { parts, mass }: Weighing, { turns }: State): PlanPoint {
  const middles = Object.entries(parts).map(([key, { centre }]) => ({
    key,
    pose: { ...STRAIGHT, origin: centre },
  }));
  const moments = posedAt(middles, motions, turns).map(({ key, pose }) =>
    times(pose.origin, parts[key]?.mass.value ?? 0),
  );
  const [x, y] = moments.reduce(plus);
  return { x: mm(x / mass.value), y: mm(y / mass.value) };
}

const STRAIGHT = frameOf([0, 0, 0], [1, 0, 0], [0, 1, 0]);

type Said = {
  readonly id: string;
  /** which state it speaks of, before the rest */
  readonly when: string;
  readonly lights: readonly string[];
  /** of the raised leaves, the heavier [kg] */
  readonly heaviest: number;
  readonly severity?: number;
};

/** A leaf that is let go of drops with more than its weight: less than this many times it tips too easily. */
const TIMES_LEAF = 1.5;

/** Heavier nobody leans: such a load stands over the feet but for a finger's breadth [kg]. */
const NOBODY = 200;

/** No force that must be borne was seen, and our own measure only sorts. */
function judged(weakest: Worked<N> | undefined, said: Said): Finding {
  if (!weakest)
    return finding("ok", "a load on any edge of the top lies within the feet.", undefined, said);
  const lean = leaning(weakest);
  if (lean.value > NOBODY)
    return finding("ok", "a load on any edge lies all but within the feet.", undefined, said);
  if (weakest.value >= FIRM_LEAN)
    return finding(
      "not-judged",
      "pressed on the edge it stands to a firm lean, by our own reckoning; what a standard asks for was not seen.",
      lean,
      said,
    );
  const severity = FIRM_LEAN / weakest.value;
  if (said.heaviest > 0 && lean.value < TIMES_LEAF * said.heaviest)
    return finding(
      "fails",
      "little more than a leaf’s own weight on its edge tips it: a wider frame, narrower leaves, or more weight low down must hold it.",
      lean,
      { ...said, severity },
    );
  const says =
    weakest.value >= LIGHT_LEAN
      ? "pressed on the edge it tips under less than a firm lean, as tables with raised leaves often do."
      : "a light lean on the edge tips it: less overhang, or more weight low down, would hold it.";
  return finding("watch", says, lean, { ...said, severity });
}

/** A force as the mass of who leans: so a maker can try it with a scale. */
const leaning = (load: Worked<N>): Worked<Kg> =>
  work({
    says: "leaning on the edge with so much tips it",
    unit: "kg",
    formula: "m = F/g",
    inputs: { F: load, g: GRAVITY },
    value: kg(load.value / STANDARD_GRAVITY),
    source: derived("definition"),
    notes: [`the load stands 50 mm in from the edge: ${cite(ISO)}`],
  });

const GRAVITY = given(
  "standard gravity [m/s²]",
  ratio(STANDARD_GRAVITY),
  "1",
  derived("standard gravity, by definition"),
);

const capital = (says: string): string => says.charAt(0).toUpperCase() + says.slice(1);

const finding = (
  verdict: Finding["verdict"],
  says: string,
  worked: Worked | undefined,
  { id, when, lights, severity = 0 }: Said,
): Finding =>
  told({
    ...{ id, group: "Stands firm", verdict, severity, lights },
    says: when === "" ? capital(says) : `${when}${says}`,
    margin: worked,
  });
