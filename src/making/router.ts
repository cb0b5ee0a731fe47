import {
  type Count,
  count,
  inches,
  type Mm,
  type MPerS,
  metresPerSecond,
  mm,
  type Rpm,
  rpm,
} from "../units/index.ts";
import {
  type Caution,
  commonPractice,
  derived,
  type Given,
  given,
  type Known,
  known,
  Problem,
  published,
  type Worked,
  work,
} from "../worked/index.ts";

const CHART = published("Router speed by cutter diameter", "two agreeing router guides");

/** Cutter up to [in], then the highest speed both guides allow. */
const chart = [
  { upTo: 1, rpm: 24000 },
  { upTo: 2, rpm: 18000 },
  { upTo: 2.5, rpm: 16000 },
  { upTo: 3.5, rpm: 12000 },
] as const;

/** Depth a hand-held router takes in one pass, and the most that is commonly taken. */
const EASY_PASS = given(
  "depth of an easy pass",
  inches(1 / 8),
  "mm",
  published("Router manuals", "depth of one pass, hand-held"),
);
const MOST_PASS = given("most that is taken in a pass", inches(1 / 4), "mm", commonPractice);

/**
 * Highest speed for a cutter of a diameter.
 *
 * @param diameter  largest cutting diameter, above 0 to 88.9 [mm]
 * @returns speed [rpm]
 * @throws Problem "cutter-diameter" above 3 1/2 in
 */
export function chartedRouterSpeed(diameter: Known<Mm>): Given<Rpm> {
  const D = known(diameter, "largest cutting diameter", "mm");
  const row = D.value > 0 ? chart.find((r) => D.value <= inches(r.upTo) + 1e-9) : undefined;
  if (!row) {
    throw new Problem(
      "cutter-diameter",
      "cutter diameter",
      `${D.value.toFixed(1)} mm is beyond the chart.`,
      "Use a cutter up to 88.9 mm (3 1/2 in); above that, the speed printed on the cutter.",
    );
  }
  return given("highest charted speed for this cutter", rpm(row.rpm), "rpm", CHART);
}

/**
 * Speed to set: what the chart allows and the machine can do.
 *
 * @param diameter  largest cutting diameter [mm]
 * @param machineTop  highest speed of the router [rpm]
 * @returns speed not to exceed [rpm]
 * @throws Problem "cutter-diameter"
 */
export function routerSpeed(diameter: Known<Mm>, machineTop: Known<Rpm>): Worked<Rpm> {
  const c = chartedRouterSpeed(diameter);
  const m = known(machineTop, "highest speed of the router", "rpm");
  return work({
    says: "set no faster than",
    unit: "rpm",
    formula: "n = min(c, m)",
    inputs: { c, m },
    value: rpm(Math.min(c.value, m.value)),
    source: derived("the lower of the two"),
    notes: ["a speed printed on the cutter goes before this"],
  });
}

/**
 * Speed of the cutting edge.
 *
 * @param diameter  largest cutting diameter [mm]
 * @param speed  of the spindle [rpm]
 * @returns rim speed [m/s]
 */
export function rimSpeed(diameter: Known<Mm>, speed: Known<Rpm>): Worked<MPerS> {
  const D = known(diameter, "largest cutting diameter", "mm");
  const n = known(speed, "speed of the spindle", "rpm");
  return work({
    says: "speed of the edge",
    unit: "m/s",
    formula: "v = π·D·n / 60000",
    inputs: { D, n },
    value: metresPerSecond((Math.PI * D.value * n.value) / 60000),
    source: derived("kinematics"),
  });
}

/**
 * Passes to reach a depth.
 *
 * @param depth  in all, above 0 [mm]
 * @param easy  easy passes, or as few as are commonly dared
 * @returns whole passes [pieces]
 * @throws Problem "cut-depth"
 */
export function routerPasses(depth: Known<Mm>, easy: boolean): Worked<Count> {
  const T = known(depth, "depth in all", "mm");
  if (!(T.value > 0 && T.value <= 200)) {
    throw new Problem(
      "cut-depth",
      "depth of cut",
      `${T.value.toFixed(1)} mm cannot be routed.`,
      "Use above 0 to 200 mm.",
    );
  }
  const p = easy ? EASY_PASS : MOST_PASS;
  return work({
    says: easy ? "easy passes" : "fewest passes",
    unit: "pieces",
    formula: "N = ceil(T/p − 10⁻⁹)",
    inputs: { T, p },
    value: count(Math.ceil(T.value / p.value - 1e-9)),
    source: derived("arithmetic"),
  });
}

/**
 * Depth of each of a number of equal passes.
 *
 * @param depth  in all [mm]
 * @param passes  how many, 1 or more [pieces]
 * @returns depth of each [mm]
 */
export function depthOfPass(depth: Known<Mm>, passes: Known<Count>): Worked<Mm> {
  const T = known(depth, "depth in all", "mm");
  const N = known(passes, "passes", "pieces");
  return work({
    says: "depth of each pass",
    unit: "mm",
    formula: "p = T/N",
    inputs: { T, N },
    value: mm(T.value / N.value),
    source: derived("arithmetic"),
  });
}

export const routerCautions: readonly Caution[] = [
  {
    says: "Never run a cutter over 1 inch in a router whose speed cannot be lowered; over about 1 1/2 inches use a table.",
    source: commonPractice,
  },
  {
    says: "Feed against the cutter's rotation: hand-held, outside edges counter-clockwise and inside edges clockwise; at a table from right to left. End grain first, then long grain.",
    source: published(
      "Hand-held routing directions",
      "a router workshop's pages; the table direction is common practice",
    ),
  },
  {
    says: "Seat the shank, draw it back about 1/16 inch, tighten, and unplug before you do. Starting pin or fence, push block, eye and ear protection. The router's and the cutter's manuals come first.",
    source: commonPractice,
  },
];
