import type { Mm, UnitName } from "./brands.ts";
import {
  CUBIC_M_PER_BOARD_FOOT,
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
  return decimal(n, Math.min(places, 12));
}

type Printer = (value: number) => string;

/** Rounding is chosen here, by quantity; values themselves are never rounded. */
const metric: Readonly<Record<Exclude<UnitName, "mm">, Printer>> = {
  "mm²": (v) => `${significant(v, 4)} mm²`,
  "mm⁴": (v) => `${significant(v, 4)} mm⁴`,
  "m²": (v) => `${significant(v, 3)} m²`,
  "m³": (v) => `${significant(v, 3)} m³`,
  l: (v) => (Math.abs(v) < 1 ? `${decimal(v * 1000, 0)} ml` : `${significant(v, 3)} l`),
  "m²/l": (v) => `${significant(v, 3)} m²/l`,
  "bd ft": (v) => `${decimal(v, 2)} bd ft`,
  kg: (v) => `${significant(v, 3)} kg`,
  "kg/m³": (v) => `${decimal(v, 0)} kg/m³`,
  N: (v) => `${significant(v, 3)} N (${significant(v / STANDARD_GRAVITY, 3)} kg)`,
  "N/mm": (v) => `${significant(v, 3)} N/mm`,
  N·mm: (v) => `${significant(v / 1000, 3)} N·m`,
  "N/mm²": (v) => `${significant(v, 3)} N/mm²`,
  "°": (v) => `${decimal(v, 2)}°`,
  "°C": (v) => `${decimal(v, 1)} °C`,
  "% RH": (v) => `${decimal(v, 1)} % RH`,
  "% MC": (v) => `${decimal(v, 1)} % MC`,
  "%": (v) => `${significant(v, 3)} %`,
  "per % MC": (v) => significant(v, 3),
  "1": (v) => significant(v, 4),
  pieces: (v) => decimal(v, 2),
  rpm: (v) => `${tens(v)} rpm`,
  "m/s": (v) => `${significant(v, 3)} m/s`,
};

const tens = (v: number) => decimal(Math.floor(v / 10 + 1e-9) * 10, 0);

const imperial: Partial<typeof metric> = {
  "mm²": (v) => `${significant(v / 25.4 ** 2, 4)} sq in`,
  "mm⁴": (v) => `${significant(v / 25.4 ** 4, 4)} in⁴`,
  "m²": (v) => `${significant(v / SQUARE_M_PER_SQUARE_FOOT, 3)} sq ft`,
  "m³": (v) => `${significant(v / CUBIC_M_PER_BOARD_FOOT, 3)} bd ft`,
  l: (v) => {
    const ounces = (v / LITRES_PER_US_GALLON) * 128;
    return Math.abs(ounces) < 32
      ? `${significant(ounces, 3)} fl oz`
      : `${significant(ounces / 32, 3)} qt`;
  },
  "m²/l": (v) =>
    `${significant((v * LITRES_PER_US_GALLON) / SQUARE_M_PER_SQUARE_FOOT, 3)} sq ft/gal`,
  kg: (v) => `${significant(v / KG_PER_POUND, 3)} lb`,
  "kg/m³": (v) => `${decimal((v / KG_PER_POUND) * (25.4 * 12) ** 3 * 1e-9, 1)} lb/cu ft`,
  N: (v) => `${significant(v / NEWTONS_PER_POUND_FORCE, 3)} lb`,
  "N/mm": (v) => `${significant((v * 25.4) / NEWTONS_PER_POUND_FORCE, 3)} lb/in`,
  N·mm: (v) => `${significant(v / NEWTONS_PER_POUND_FORCE / 25.4, 3)} in-lb`,
  "N/mm²": (v) => `${significant(v / MPA_PER_PSI, 3)} psi`,
  "°C": (v) => `${decimal(v * 1.8 + 32, 1)} °F`,
  "m/s": (v) => `${significant((v / (25.4 * 12)) * 60000, 3)} ft/min`,
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
  if (unit === "mm") return printLength(value as Mm, { units, purpose });
  const printer = (units === "inch" ? imperial[unit] : undefined) ?? metric[unit];
  return printer(value);
}

/** The number alone in its inside unit, as shown inside a formula: six figures at most. */
export const printFigure = (value: number): string => significant(value, 6);
