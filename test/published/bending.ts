import {
  bendingStress,
  droopOfArm,
  momentUnderPoint,
  momentUnderSpread,
  sagInTheLongRun,
  sagUnderPoint,
  sagUnderSpread,
  secondMoment,
  spreadLoad,
} from "../../src/mechanics/index.ts";
import {
  inches,
  mm,
  mm4,
  mpa,
  newtonMm,
  newtons,
  newtonsPerMm,
  ratio,
  readQuantity,
} from "../../src/units/index.ts";
import { type Check, exact, series, share } from "./check.ts";

const AREA = "Bending";
const textbook = series(AREA, "textbook");
/** Worked examples are kept to four or five figures. */
const WORKED = share(0.005);

const stress = (text: string) => {
  const read = readQuantity(text, "stress", "inch");
  if (!read.ok) throw new Error(read.fault.reason);
  return mpa(read.value);
};
const POUND = 0.45359237 * 9.80665;

/** Shelf: 48 in span, 12 × 1 1/2 in, 1.5 million psi, 5 lb an inch. */
const shelf = () =>
  sagUnderSpread(
    newtonsPerMm((5 * POUND) / 25.4),
    inches(48),
    stress("1.5e6 psi"),
    secondMoment(inches(12), inches(1.5)),
  ).value / 25.4;

/** Top: span 1.2 m, 900 × 22 mm, 12.5 GPa, its own weight at 640 kg/m³ and 300 N. */
const top = () => {
  const own = 640 * 0.9 * 0.022 * 1.2 * 9.81;
  return sagUnderSpread(
    spreadLoad(newtons(own + 300), mm(1200)),
    mm(1200),
    stress("12.5 GPa"),
    secondMoment(mm(900), mm(22)),
  ).value;
};

/** Arm: 22 × 60 mm, 280 mm free, 12.5 GPa, 200 N at its end. */
const armSection = () => secondMoment(mm(22), mm(60));

/** A bar 2 mm long of unit stiffness, so that a wrong power of the length shows. */
const [SPAN, E, I] = [mm(2), mpa(1), mm4(1)];
const chapter9 = series(AREA, "chapter 9");

export const bendingChecks: readonly Check[] = [
  series(AREA, "public shelf")("shelf 48 × 12 × 1 1/2 in, 5 lb/in", "0.068", "in", shelf),
  textbook("the same shelf to one figure more", "0.06827", "in", shelf, WORKED),
  textbook(
    "second moment, 12 × 1 1/2 in",
    "3.375",
    "in⁴",
    () => secondMoment(inches(12), inches(1.5)).value / 25.4 ** 4,
    exact,
  ),
  textbook("table top 900 × 22 mm over 1.2 m", "1.012", "mm", top, WORKED),
  textbook(
    "arm 22 × 60 mm, 200 N at 280 mm: drop",
    "0.2956",
    "mm",
    () => droopOfArm(newtons(200), mm(280), stress("12.5 GPa"), armSection()).value,
    WORKED,
  ),
  textbook(
    "arm 22 × 60 mm, 56 N·m: stress",
    "4.242",
    "N/mm²",
    () => bendingStress(newtonMm(56_000), mm(60), armSection()).value,
    WORKED,
  ),
  chapter9(
    "uniform load, two supports",
    "5/384",
    "1",
    () => sagUnderSpread(newtonsPerMm(1), SPAN, E, I).value / 2 ** 4,
    exact,
  ),
  chapter9(
    "load at mid span, two supports",
    "1/48",
    "1",
    () => sagUnderPoint(newtons(1), SPAN, E, I).value / 2 ** 3,
    exact,
  ),
  chapter9(
    "load at the end of a cantilever",
    "1/3",
    "1",
    () => droopOfArm(newtons(1), SPAN, E, I).value / 2 ** 3,
    exact,
  ),
  textbook(
    "moment of a uniform load, over w·L²",
    "1/8",
    "1",
    () => momentUnderSpread(newtonsPerMm(1), SPAN).value / 2 ** 2,
    exact,
  ),
  textbook(
    "moment of a load at mid span, over F·L",
    "1/4",
    "1",
    () => momentUnderPoint(newtons(1), SPAN).value / 2,
    exact,
  ),
  textbook(
    "stress at the surface of a bar 12 mm deep, M/(b·t²/6)",
    "5",
    "N/mm²",
    () => bendingStress(newtonMm(1200), mm(12), secondMoment(mm(10), mm(12))).value,
    exact,
  ),
  textbook(
    "a sag of 1.5 mm that doubles",
    "3",
    "mm",
    () => sagInTheLongRun(mm(1.5), ratio(2)).value,
    exact,
  ),
];
