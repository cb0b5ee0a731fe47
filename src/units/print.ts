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

/** `d` is how many figures count: three, or two where a value is known only about. */
type Printer = (value: number, d: number) => string;

/** Rounding is chosen here, by quantity; values themselves are never rounded. */
const metric: Readonly<Record<Exclude<UnitName, "mm">, Printer>> = {
  "mm²": (v) => `${significant(v, 4)} mm²`,
  "mm⁴": (v) => `${significant(v, 4)} mm⁴`,
  "m²": (v, d) => `${significant(v, d)} m²`,
  "m³": (v, d) => `${significant(v, d)} m³`,
  l: (v, d) => (Math.abs(v) < 1 ? `${significant(v * 1000, d)} ml` : `${significant(v, d)} l`),
  "m²/l": (v, d) => `${significant(v, d)} m²/l`,
  "bd ft": (v) => `${decimal(v, 2)} bd ft`,
  kg: (v, d) => `${significant(v, d)} kg`,
  "kg/m³": (v) => `${decimal(v, 0)} kg/m³`,
  N: (v, d) => `${significant(v, d)} N (${significant(v / STANDARD_GRAVITY, d)} kg)`,
  "N/mm": (v, d) => `${significant(v, d)} N/mm`,
  N·mm: (v, d) => `${significant(v / 1000, d)} N·m`,
  "N/mm²": (v, d) => `${significant(v, d)} N/mm²`,
  "°": (v) => `${decimal(v, 2)}°`,
  "°C": (v) => `${decimal(v, 1)} °C`,
  "% RH": (v) => `${decimal(v, 1)} % RH`,
  "% MC": (v) => `${decimal(v, 1)} % MC`,
  "%": (v, d) => `${significant(v, d)} %`,
  "per % MC": (v) => significant(v, 3),
  "1": (v) => significant(v, 4),
  pieces: (v) => decimal(v, 2),
  rpm: (v) => `${tens(v)} rpm`,
  "m/s": (v, d) => `${significant(v, d)} m/s`,
};

const tens = (v: number) => decimal(Math.floor(v / 10 + 1e-9) * 10, 0);

const imperial: Partial<typeof metric> = {
  "mm²": (v) => `${significant(v / 25.4 ** 2, 4)} sq in`,
  "mm⁴": (v) => `${significant(v / 25.4 ** 4, 4)} in⁴`,
  "m²": (v, d) => `${significant(v / SQUARE_M_PER_SQUARE_FOOT, d)} sq ft`,
  "m³": (v, d) => `${significant(v / (25.4 * 12) ** 3 / 1e-9, d)} cu ft`,
  l: (v, d) => {
    const ounces = (v / LITRES_PER_US_GALLON) * 128;
    return Math.abs(ounces) < 32
      ? `${significant(ounces, d)} fl oz`
      : `${significant(ounces / 32, d)} qt`;
  },
  "m²/l": (v, d) =>
    `${significant((v * LITRES_PER_US_GALLON) / SQUARE_M_PER_SQUARE_FOOT, d)} sq ft/gal`,
  kg: (v, d) => `${significant(v / KG_PER_POUND, d)} lb`,
  "kg/m³": (v) => `${decimal((v / KG_PER_POUND) * (25.4 * 12) ** 3 * 1e-9, 1)} lb/cu ft`,
  N: (v, d) => `${significant(v / NEWTONS_PER_POUND_FORCE, d)} lb`,
  "N/mm": (v, d) => `${significant((v * 25.4) / NEWTONS_PER_POUND_FORCE, d)} lb/in`,
  N·mm: (v, d) => `${significant(v / NEWTONS_PER_POUND_FORCE / 25.4, d)} in-lb`,
  "N/mm²": (v, d) => `${significant(v / MPA_PER_PSI, d)} psi`,
  "°C": (v) => `${decimal(v * 1.8 + 32, 1)} °F`,
  "m/s": (v, d) => `${significant((v / (25.4 * 12)) * 60000, d)} ft/min`,
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
  return printer(value, purpose === "about" ? 2 : 3);
}

/** The number alone in its inside unit, as shown inside a formula: six figures at most. */
export const printFigure = (value: number): string => significant(value, 6);
