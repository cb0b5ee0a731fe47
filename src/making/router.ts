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

const CHART = published(
  "Router speed by cutter diameter",
  "two agreeing router guides",
  "secondary",
);

/** Cutter up to [in], then the highest speed both guides allow, and the lower end of the second. */
const chart = [
  { upTo: 1, rpm: 24000, lower: 22000 },
  { upTo: 2, rpm: 18000, lower: 18000 },
  { upTo: 2.5, rpm: 16000, lower: 12000 },
  { upTo: 3.5, rpm: 12000, lower: 8000 },
] as const;

/** Depth a hand-held router takes in one pass, and the most that is commonly taken. */
const EASY_PASS = given(
  "depth of an easy pass",
  inches(1 / 8),
  "mm",
  published("Router manuals", "depth of one pass, hand-held", "secondary"),
);
const MOST_PASS = given("most that is taken in a pass", inches(1 / 4), "mm", commonPractice);

/**
 * Highest speed for a cutter of a diameter.
 *
 * @param diameter  largest cutting diameter, above 0 to 88.9 [mm]
 * @param end  the highest speed, or the lower end of the range
 * @returns speed [rpm]
 * @throws Problem "cutter-diameter" above 3 1/2 in
 */
export function chartedRouterSpeed(
  diameter: Known<Mm>,
  end: "lower" | "highest" = "highest",
): Given<Rpm> {
  const D = known(diameter, "largest cutting diameter", "mm");
  const row = D.value > 0 ? chart.find((r) => D.value <= inches(r.upTo) + 1e-9) : undefined;
  if (!row) {
    throw new Problem(
      "cutter-diameter",
      "diameter",
      "A cutter of this size is beyond the chart.",
      "Use a cutter up to 88.9 mm (3 1/2 in); above that, the speed printed on the cutter.",
    );
  }
  return end === "highest"
    ? given("highest charted speed for this cutter", rpm(row.rpm), "rpm", CHART)
    : given("lower end of the charted range", rpm(row.lower), "rpm", CHART);
}

/**
 * Speed to set: what the chart allows and the machine can do.
 *
 * @param diameter  largest cutting diameter [mm]
 * @param machineTop  highest speed of the router [rpm]
 * @param end  of the charted range
 * @returns speed not to exceed [rpm]
 * @throws Problem "cutter-diameter"
 */
export function routerSpeed(
  diameter: Known<Mm>,
  machineTop: Known<Rpm>,
  end: "lower" | "highest" = "highest",
): Worked<Rpm> {
  const c = chartedRouterSpeed(diameter, end);
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
 * Depth that one pass may take: the maker's rule, and never more than half the cutter's diameter.
 *
 * @param diameter  largest cutting diameter, above 0 [mm]
 * @param easy  an easy pass, or the most that is commonly dared
 * @returns depth [mm]
 */
export function passLimit(diameter: Known<Mm>, easy: boolean): Worked<Mm> {
  const D = known(diameter, "largest cutting diameter", "mm");
  const r = easy ? EASY_PASS : MOST_PASS;
  return work({
    says: easy ? "depth of an easy pass" : "most in one pass",
    unit: "mm",
    formula: "p = min(r, D/2)",
    inputs: { r, D },
    value: mm(Math.min(r.value, D.value / 2)),
    source: commonPractice,
  });
}

/**
 * Passes to reach a depth.
 *
 * @param depth  in all, above 0 to 200 [mm]
 * @param limit  depth of one pass, above 0 [mm]
 * @returns whole passes [pieces]
 * @throws Problem "cut-depth"
 */
export function routerPasses(depth: Known<Mm>, limit: Known<Mm>): Worked<Count> {
  const T = known(depth, "depth in all", "mm");
  const p = known(limit, "depth of one pass", "mm");
  if (!(T.value > 0 && T.value <= 202 && p.value > 0)) {
    throw new Problem(
      "cut-depth",
      "depth",
      "This depth cannot be routed.",
      "Use above 0 to 200 mm.",
    );
  }
  return work({
    says: "passes",
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
    says: "Work shorter than about 12 in or 300 mm, or narrow, wants a sled or a holder: fingers stay out of reach of the cutter. A climb cut is only ever a skim, and never hand-held with a large cutter.",
    source: commonPractice,
  },
  {
    says: "Never run a cutter over 1 inch in a router whose speed cannot be lowered; over about 1 1/2 inches use a table.",
    source: commonPractice,
  },
  {
    says: "Feed against the cutter's rotation: hand-held, outside edges counter-clockwise and inside edges clockwise; at a table from right to left. End grain first, then long grain.",
    source: published(
      "Hand-held routing directions",
      "a router workshop's pages; the table direction is common practice",
      "secondary",
    ),
  },
  {
    says: "Seat the shank, draw it back about 1/16 inch, tighten, and unplug before you do. Starting pin or fence, push block, eye and ear protection. The router's and the cutter's manuals come first.",
    source: commonPractice,
  },
];
