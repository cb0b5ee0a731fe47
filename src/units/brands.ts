/**
 * Branded numbers: a millimetre cannot be handed over where a newton is wanted.
 * This file is the only one that casts; everything else mints through these functions.
 */
declare const unit: unique symbol;
type Unit<U extends string> = number & { readonly [unit]: U };

/** Length in millimetres. */
export type Mm = Unit<"mm">;
/** Area in square millimetres. */
export type SquareMm = Unit<"mm²">;
/** Area in square metres, for finishes. */
export type SquareM = Unit<"m²">;
/** Volume in cubic metres, for timber. */
export type CubicM = Unit<"m³">;
/** Volume in litres, for liquids. */
export type Litres = Unit<"l">;
/** Board feet: 144 cubic inches. */
export type BoardFeet = Unit<"bd ft">;
/** Surface covered by one litre [m²/l]. */
export type Coverage = Unit<"m²/l">;
/** Mass in kilograms. */
export type Kg = Unit<"kg">;
/** Density in kilograms per cubic metre. */
export type KgPerM3 = Unit<"kg/m³">;
/** Force in newtons. */
export type N = Unit<"N">;
/** Spread load in newtons per millimetre. */
export type NPerMm = Unit<"N/mm">;
/** Bending moment in newton millimetres. */
export type NMm = Unit<"N·mm">;
/** Second moment of area in mm⁴. */
export type Mm4 = Unit<"mm⁴">;
/** Stress, pressure or modulus in N/mm². */
export type MPa = Unit<"N/mm²">;
/** Angle in degrees. */
export type Deg = Unit<"°">;
/** Temperature in degrees Celsius. */
export type Celsius = Unit<"°C">;
/** Relative humidity in per cent. */
export type RhPct = Unit<"% RH">;
/** Moisture content in per cent of oven-dry mass; also a difference in points. */
export type McPct = Unit<"% MC">;
/** A share of something, in per cent. */
export type Pct = Unit<"%">;
/** Fractional change per one point of moisture. */
export type PerPct = Unit<"per % MC">;
/** A number without a unit: specific gravity, a ratio, a factor. */
export type Ratio = Unit<"1">;
/** Whole things: clamps, boards, passes. */
export type Count = Unit<"pieces">;
/** Revolutions per minute. */
export type Rpm = Unit<"rpm">;
/** Speed in metres per second. */
export type MPerS = Unit<"m/s">;

/** Every inside unit by its name, and the brand that carries it. */
export type UnitName =
  | "mm"
  | "mm²"
  | "mm⁴"
  | "m²"
  | "m³"
  | "l"
  | "m²/l"
  | "bd ft"
  | "kg"
  | "kg/m³"
  | "N"
  | "N/mm"
  | "N·mm"
  | "N/mm²"
  | "°"
  | "°C"
  | "% RH"
  | "% MC"
  | "%"
  | "per % MC"
  | "1"
  | "pieces"
  | "rpm"
  | "m/s";

function finite(n: number): number {
  if (!Number.isFinite(n)) throw new Error(`a quantity must be a finite number, not ${n}`);
  return n;
}

const minted =
  <B extends number>() =>
  (n: number): B =>
    finite(n) as B;

export const mm = minted<Mm>();
export const squareMm = minted<SquareMm>();
export const squareM = minted<SquareM>();
export const cubicM = minted<CubicM>();
export const litres = minted<Litres>();
export const boardFeet = minted<BoardFeet>();
export const coverage = minted<Coverage>();
export const kg = minted<Kg>();
export const kgPerM3 = minted<KgPerM3>();
export const newtons = minted<N>();
export const newtonsPerMm = minted<NPerMm>();
export const newtonMm = minted<NMm>();
export const mm4 = minted<Mm4>();
export const mpa = minted<MPa>();
export const deg = minted<Deg>();
export const celsius = minted<Celsius>();
export const rhPct = minted<RhPct>();
export const mcPct = minted<McPct>();
export const pct = minted<Pct>();
export const perPct = minted<PerPct>();
export const ratio = minted<Ratio>();
export const count = minted<Count>();
export const rpm = minted<Rpm>();
export const metresPerSecond = minted<MPerS>();

/** Inches to millimetres: exact by the international inch of 1959. */
export const MM_PER_INCH = 25.4;
/**
 * Inches as millimetres.
 *
 * @param n  any length [in]
 */
export const inches = (n: number): Mm => mm(n * MM_PER_INCH);
