import {
  clampCoverage,
  clampForce,
  clampsByFan,
  clampsByForce,
  depthOfPass,
  finishAmount,
  gluePressure,
  latheSpeed,
  panelSurface,
  rimSpeed,
  routerSpeed,
  slenderness,
  speedByDiameter,
} from "../../src/making/index.ts";
import {
  count,
  coverage,
  inches,
  mm,
  mpa,
  newtons,
  pct,
  type Rpm,
  ratio,
  rpm,
  squareM,
} from "../../src/units/index.ts";
import { type Check, exact, series } from "./check.ts";

const AREA = "Machines, clamps, finish";
const textbook = series(AREA, "textbook");

const rim = (diameterIn: number, speed: number) => rimSpeed(inches(diameterIn), rpm(speed)).value;
const feetPerMinute = (metresPerSecond: number) => (metresPerSecond * 60) / 0.3048;
const milesPerHour = (metresPerSecond: number) => (metresPerSecond * 3600) / 1609.344;

const rims = [
  textbook("rim, 3 in at 24 000 rpm", "18 849.6", "ft/min", () => feetPerMinute(rim(3, 24000))),
  textbook("rim, 3 in at 24 000 rpm, in m/s", "95.76", "m/s", () => rim(3, 24000)),
  textbook("rim, 3 in at 24 000 rpm, in mph", "214.2", "mph", () => milesPerHour(rim(3, 24000))),
  textbook("rim, 3 in at 10 000 rpm", "7854.0", "ft/min", () => feetPerMinute(rim(3, 10000))),
  textbook("rim, 3 in at 10 000 rpm, in m/s", "39.90", "m/s", () => rim(3, 10000)),
  textbook("rim, 3 in at 10 000 rpm, in mph", "89.25", "mph", () => milesPerHour(rim(3, 10000))),
  textbook("rim, 1/4 in at 24 000 rpm", "1570.8", "ft/min", () => feetPerMinute(rim(0.25, 24000))),
  textbook("rim, 1/4 in at 24 000 rpm, in mph", "17.85", "mph", () => {
    return milesPerHour(rim(0.25, 24000));
  }),
  textbook("rim, 2 1/2 in at 9000 rpm", "5890.5", "ft/min", () => feetPerMinute(rim(2.5, 9000))),
  textbook("rim, 2 1/2 in at 9000 rpm, in mph", "66.94", "mph", () => {
    return milesPerHour(rim(2.5, 9000));
  }),
  textbook("rim at inches × rpm = 9000", "2356", "ft/min", () => feetPerMinute(rim(3, 3000))),
];

/** Arithmetic of the turners' rule, whose 6000 and 9000 are nobody's standard. */
const byRule = (diameterIn: number, product: 6000 | 9000): Rpm =>
  speedByDiameter(inches(diameterIn), product).value;
const lathe = [
  textbook("inches × rpm 6000, 3 in", "2000", "rpm", () => byRule(3, 6000), exact),
  textbook("inches × rpm 9000, 3 in", "3000", "rpm", () => byRule(3, 9000), exact),
  textbook("inches × rpm 9000, 6 in", "1500", "rpm", () => byRule(6, 9000), exact),
  textbook("inches × rpm 6000, 2 1/2 in", "2400", "rpm", () => byRule(2.5, 6000), exact),
  textbook("inches × rpm 9000, 2 1/2 in", "3600", "rpm", () => byRule(2.5, 9000), exact),
  textbook(
    "roughing 12 in: the rule is below the chart",
    "500",
    "rpm",
    () => latheSpeed(inches(12), "roughing", ratio(3)).value,
    exact,
  ),
  textbook(
    "sanding 15 in: the rule is below the chart",
    "600",
    "rpm",
    () => latheSpeed(inches(15), "sanding", ratio(3)).value,
    exact,
  ),
  textbook("700 mm of 28 mm", "25", "1", () => slenderness(mm(700), mm(28)).value, exact),
];

const shop = [
  textbook(
    "a router that cannot turn faster than 9000 rpm",
    "9000",
    "rpm",
    () => routerSpeed(inches(1), rpm(9000)).value,
    exact,
  ),
  textbook("18 mm in three passes", "6", "mm", () => depthOfPass(mm(18), count(3)).value, exact),
  textbook(
    "a 45° fan through 50 and 25 mm from a head of 20 mm",
    "170",
    "mm",
    () => clampCoverage(mm(50), mm(25), mm(20)).value,
    exact,
  ),
  textbook("fans of 170 mm over 1 m", "6", "1", () => clampsByFan(mm(1000), mm(170)).value, exact),
  textbook(
    "1 N/mm² on 20 × 1000 mm",
    "20 000",
    "N",
    () => clampForce(mpa(1), mm(20), mm(1000)).value,
    exact,
  ),
  textbook(
    "20 kN by clamps of 3 kN",
    "7",
    "1",
    () => clampsByForce(newtons(20_000), newtons(3000)).value,
    exact,
  ),
  series(AREA, "chapter 10")(
    "least glue pressure on light woods: 100 psi",
    "0.68948",
    "N/mm²",
    () => gluePressure("softwood", "least").value,
  ),
  textbook(
    "panel of 1000 × 500 × 20 mm, all six faces",
    "1.06",
    "m²",
    () => panelSurface(mm(1000), mm(500), mm(20), count(1)).value,
    exact,
  ),
  textbook(
    "10 m² twice at 8 m² a litre, a tenth wasted",
    "2.75",
    "l",
    () => finishAmount(squareM(10), count(2), coverage(8), pct(10)).value,
    exact,
  ),
];

export const makingChecks: readonly Check[] = [...rims, ...lathe, ...shop];
