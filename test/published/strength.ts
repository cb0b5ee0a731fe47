import { deg, mcPct, mpa } from "../../src/units/index.ts";
import {
  elasticRatios,
  modulusAlong,
  modulusByShare,
  speciesNamed,
  stiffnessAcross,
  strengthAt,
  strengthAtAngle,
  strengthByTrend,
  turningPoint,
} from "../../src/wood/index.ts";
import { type Check, exact, series, within } from "./check.ts";

const AREA = "Strength and stiffness";

const example = series(AREA, "eq 5-3");
const ash = (moisture: number) =>
  strengthAt(mpa(103), mpa(66), turningPoint("ash-white"), mcPct(moisture)).value * 1000;

const turning = series(AREA, "table 5-13");
/** Every species that the read part of the table names and that is in ours; two of no row. */
const turningPoints: readonly (readonly [key: string, printed: string])[] = [
  ["ash-white", "24"],
  ["birch-yellow", "27"],
  ["chestnut-american", "24"],
  ["douglas-fir-coast", "24"],
  ["douglas-fir-interior-north", "24"],
  ["douglas-fir-interior-west", "24"],
  ["hemlock-western", "28"],
  ["larch-western", "28"],
  ["pine-loblolly", "21"],
  ["pine-longleaf", "21"],
  ["pine-red", "24"],
  ["redwood-old", "21"],
  ["redwood-young", "21"],
  ["spruce-red", "27"],
  ["spruce-sitka", "27"],
  ["oak-white", "25"],
  ["walnut-black", "25"],
];

const hankinson = series(AREA, "eq 8-16 by hand");
const atAngle = (angle: number) => strengthAtAngle(mpa(100), mpa(20), deg(angle)).value;
const textbook = series(AREA, "textbook");

/** Stiffness across the grain as a share of the printed one in bending. */
function across(key: string, sawn: "flat" | "rift" | "quarter"): number {
  const species = speciesNamed(key);
  return stiffnessAcross(species, sawn).value / species.stiffness.value;
}

export const strengthChecks: readonly Check[] = [
  // Printed to the hundred.
  example("white ash, bending strength at 8 %", "119 500", "kPa", () => ash(8), within(50)),
  textbook("white ash at 12 %: the value it starts from", "103 000", "kPa", () => ash(12)),
  textbook("white ash wetter than its turning point: green", "66 000", "kPa", () => ash(40)),
  ...turningPoints.map(([key, printed]) =>
    turning(
      `turning point of ${speciesNamed(key).name.toLowerCase()}`,
      printed,
      "% MC",
      () => turningPoint(key).value,
      exact,
    ),
  ),
  series(AREA, "table 5-3")(
    "modulus along the grain over that in bending: a tenth more",
    "1.10",
    "1",
    () => modulusAlong(mpa(10000)).value / 10000,
  ),
  textbook("a share of 0.080 of 10 000 N/mm²", "800", "N/mm²", () => {
    const ratios = elasticRatios("ash-white");
    if (!ratios?.E_T) throw new Error("white ash has lost its ratios");
    return modulusByShare(mpa(10000), ratios.E_T).value;
  }),
  textbook(
    "black cherry flatsawn, across the grain over in bending: 1.1·0.086",
    "0.0946",
    "1",
    () => across("cherry-black", "flat"),
  ),
  textbook("black cherry quartersawn: 1.1·0.197", "0.2167", "1", () =>
    across("cherry-black", "quarter"),
  ),
  textbook(
    "yellow-poplar rift, rings at 45°, 1.1 times a share of",
    "0.036446",
    "1",
    () => across("yellow-poplar", "rift") / 1.1,
  ),
  hankinson("100 along, 20 across, at 0°: 100", "100", "N/mm²", () => atAngle(0), exact),
  hankinson("100 along, 20 across, at 90°: 20", "20", "N/mm²", () => atAngle(90), exact),
  hankinson("100 along, 20 across, at 30°: 2000 / 40", "50", "N/mm²", () => atAngle(30), exact),
  textbook("the trend of stiffness leaves the value at 12 %", "10 000", "N/mm²", () => {
    return strengthByTrend(mpa(10000), "stiffness", mcPct(12)).value;
  }),
  textbook("the trend of bending strength leaves the value at 12 %", "100", "N/mm²", () => {
    return strengthByTrend(mpa(100), "bending", mcPct(12)).value;
  }),
];
