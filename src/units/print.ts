import { mm, type UnitName } from "./brands.ts";
import {
  KG_PER_POUND,
  LITRES_PER_US_GALLON,
  MPA_PER_PSI,
  NEWTONS_PER_POUND_FORCE,
  SQUARE_M_PER_SQUARE_FOOT,
  STANDARD_GRAVITY,
} from "./dimensions.ts";
import type { LengthUnit } from "./length.ts";
import { decimal, type Purpose, printLength } from "./length-print.ts";

/** `digits` significant figures, without exponents in the range a shop meets. */
function significant(n: number, digits: number): string {
  if (n === 0) return "0";
  const size = Math.abs(n);
  if (size >= 1e9 || size < 1e-6) return n.toExponential(digits - 1);
  const places = Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  return decimal(Number(n.toPrecision(digits)), Math.min(places, 12));
}

/** `f` writes the figures that count: three, or two where a value is known only about. */
type Printer = (value: number, f: (n: number) => string, isCoarse: boolean) => string;

/** Two figures, rounded towards what is safe to buy or to trust where that matters. */
const figures: Partial<Readonly<Record<Purpose, (n: number) => string>>> = {
  about: (n) => significant(n, 2),
  enough: (n) => significant(atTwoFigures(n, Math.ceil), 2),
  safe: (n) => significant(atTwoFigures(n, Math.floor), 2),
};

/** The size cut to two figures one way or the other; a hair of slack keeps what is round as it is. */
function atTwoFigures(n: number, round: (n: number) => number): number {
  if (n === 0) return 0;
  const unit = 10 ** (Math.floor(Math.log10(Math.abs(n))) - 1);
  const hair = round === Math.ceil ? -1e-9 : 1e-9;
  return Math.sign(n) * round(Math.abs(n) / unit + hair) * unit;
}

/** Rounding is chosen here, by quantity; values themselves are never rounded. */
const metric: Readonly<Record<Exclude<UnitName, "mm">, Printer>> = {
  "mm²": (v) => `${significant(v, 4)} mm²`,
  "mm⁴": (v) => `${significant(v, 4)} mm⁴`,
  "m²": (v, f) => `${f(v)} m²`,
  "m³": (v, f) => `${f(v)} m³`,
  l: (v, f) => (Math.abs(v) < 1 ? `${f(v * 1000)} ml` : `${f(v)} l`),
  "m²/l": (v, f) => `${f(v)} m²/l`,
  "bd ft": (v, f, isCoarse) => `${isCoarse ? f(v) : decimal(v, 2)} bd ft`,
  kg: (v, f) => `${f(v)} kg`,
  "kg/m³": (v) => `${decimal(v, 0)} kg/m³`,
  N: (v, f) => `${f(v)} N (${f(v / STANDARD_GRAVITY)} kg)`,
  "N/mm": (v, f) => `${f(v)} N/mm`,
  N·mm: (v, f) => `${f(v / 1000)} N·m`,
  "N/mm²": (v, f) => `${f(v)} N/mm²`,
  "°": (v) => `${decimal(v, 2)}°`,
  "°C": (v) => `${decimal(v, 1)} °C`,
  "% RH": (v) => `${decimal(v, 1)} % RH`,
  "% MC": (v) => `${decimal(v, 1)} % MC`,
  "%": (v, f) => `${f(v)} %`,
  "per % MC": (v) => significant(v, 3),
  "1": (v) => significant(v, 4),
  pieces: (v) => decimal(v, 2),
  rpm: (v) => `${tens(v)} rpm`,
  "m/s": (v, f) => `${f(v)} m/s`,
};

const tens = (v: number) => decimal(Math.floor(v / 10 + 1e-9) * 10, 0);

const imperial: Partial<typeof metric> = {
  "mm²": (v) => `${significant(v / 25.4 ** 2, 4)} sq in`,
  "mm⁴": (v) => `${significant(v / 25.4 ** 4, 4)} in⁴`,
  "m²": (v, f) => `${f(v / SQUARE_M_PER_SQUARE_FOOT)} sq ft`,
  "m³": (v, f) => `${f(v / (25.4 * 12) ** 3 / 1e-9)} cu ft`,
  l: (v, f) => {
    const ounces = (v / LITRES_PER_US_GALLON) * 128;
    return Math.abs(ounces) < 32 ? `${f(ounces)} fl oz` : `${f(ounces / 32)} qt`;
  },
  "m²/l": (v, f) => `${f((v * LITRES_PER_US_GALLON) / SQUARE_M_PER_SQUARE_FOOT)} sq ft/gal`,
  kg: (v, f) => `${f(v / KG_PER_POUND)} lb`,
  "kg/m³": (v) => `${decimal((v / KG_PER_POUND) * (25.4 * 12) ** 3 * 1e-9, 1)} lb/cu ft`,
  N: (v, f) => `${f(v / NEWTONS_PER_POUND_FORCE)} lb`,
  "N/mm": (v, f) => `${f((v * 25.4) / NEWTONS_PER_POUND_FORCE)} lb/in`,
  N·mm: (v, f) => `${f(v / NEWTONS_PER_POUND_FORCE / 25.4)} in-lb`,
  "N/mm²": (v, f) => `${f(v / MPA_PER_PSI)} psi`,
  "°C": (v) => `${decimal(v * 1.8 + 32, 1)} °F`,
  "m/s": (v, f) => `${f((v / (25.4 * 12)) * 60000)} ft/min`,
};

/**
 * Any inside quantity as text in the maker's units, rounded by what it is.
 *
 * @param value  in the inside unit named by `unit`
 * @param unit  the inside unit
 * @param units  inch side or millimetre side
 * @param purpose  for lengths: how finely to round
 */
export function printQuantity(
  value: number,
  unit: UnitName,
  units: LengthUnit,
  purpose: Purpose = "fit",
): string {
  if (unit === "mm") return printLength(mm(value), { units, purpose });
  const printer = (units === "inch" ? imperial[unit] : undefined) ?? metric[unit];
  const coarse = figures[purpose];
  return printer(value, coarse ?? ((n) => significant(n, 3)), coarse !== undefined);
}

/** The number alone in its inside unit, as shown inside a formula: six figures at most. */
export const printFigure = (value: number): string => significant(value, 6);
