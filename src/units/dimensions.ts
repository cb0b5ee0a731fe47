/**
 * The units people write, by dimension, each with its size in the inside unit. Exact by
 * definition: inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s², US gallon
 * 231 cubic inches; the rest follows from these.
 */
export const STANDARD_GRAVITY = 9.80665;
export const KG_PER_POUND = 0.45359237;
const POUND_FORCE = KG_PER_POUND * STANDARD_GRAVITY;
const INCH = 25.4;
const FOOT_M = (12 * INCH) / 1000;
export const NEWTONS_PER_POUND_FORCE = POUND_FORCE;
export const MPA_PER_PSI = POUND_FORCE / INCH ** 2;
const CUBIC_M_PER_BOARD_FOOT = (144 * INCH ** 3) / 1e9;
export const LITRES_PER_US_GALLON = (231 * INCH ** 3) / 1e6;
export const SQUARE_M_PER_SQUARE_FOOT = FOOT_M ** 2;

export type UnitRow = {
  /** every way to write it; the first is shown */
  readonly names: readonly string[];
  /** size of one of these in the inside unit */
  readonly size: number;
  /** what this scale reads at the inside unit's zero; only °F has one */
  readonly zero: number;
  readonly metric: boolean;
  /** on which side a number without a unit means this one */
  readonly bare: "inch" | "mm" | "both" | undefined;
};

export type Dimension = {
  readonly says: string;
  readonly examples: readonly string[];
  readonly units: readonly UnitRow[];
};

const row = (
  names: string,
  size: number,
  metric: boolean,
  bare?: UnitRow["bare"],
  zero = 0,
): UnitRow => ({
  names: names.split("|"),
  size,
  zero,
  metric,
  bare,
});

const dimension = (says: string, examples: string, ...units: readonly UnitRow[]): Dimension => ({
  says,
  examples: examples.split("|"),
  units,
});

const percent = (says: string, figure: string, ...more: readonly string[]) =>
  dimension(
    says,
    `${figure} %|${figure}`,
    row(["%", "percent", "per cent", "pct", ...more].join("|"), 1, true, "both"),
  );

export const dimensions = {
  mass: dimension(
    "a mass",
    "40 lb|18 kg",
    row("kg|kgs|kilogram|kilograms", 1, true, "mm"),
    row("g|gram|grams", 0.001, true),
    row("t|tonne|tonnes", 1000, true),
    row("lb|lbs|lb.|lbs.|pound|pounds", KG_PER_POUND, false, "inch"),
    row("oz|oz.|ounce|ounces", KG_PER_POUND / 16, false),
  ),
  load: dimension(
    "a load",
    "60 lb|30 kg|300 N",
    row("N|newton|newtons", 1, true),
    row("kN|kilonewton|kilonewtons", 1000, true),
    row("lb|lbs|lbf|lb.|lbs.|pound|pounds", POUND_FORCE, false, "inch"),
    row("kg|kgs|kgf|kilogram|kilograms", STANDARD_GRAVITY, true, "mm"),
  ),
  temperature: dimension(
    "a temperature",
    "70 F|21 C",
    row("°C|C|degrees C|degC|deg C|º C|ºC|° C|celsius", 1, true, "mm"),
    row("°F|F|degrees F|degF|deg F|º F|ºF|° F|fahrenheit", 5 / 9, false, "inch", 32),
  ),
  humidity: percent("a relative humidity", "45", "% RH", "%RH", "RH", "rh"),
  moisture: percent("a moisture content", "8", "% MC", "%MC", "MC", "mc"),
  share: percent("a percentage", "10"),
  stress: dimension(
    "a pressure or stiffness",
    "1.5e6 psi|12.5 GPa|1.2 N/mm²",
    row("N/mm²|N/mm2|MPa", 1, true, "mm"),
    row("GPa", 1000, true),
    row("kPa", 0.001, true),
    row("bar", 0.1, true),
    row("psi|lb/in²|lb/in2|lbf/in²", MPA_PER_PSI, false, "inch"),
  ),
  area: dimension(
    "an area",
    "20 sq ft|1.9 m²",
    row("m²|m2|sq m|square metres|square meters", 1, true, "mm"),
    row("cm²|cm2|sq cm", 1e-4, true),
    row("mm²|mm2|sq mm", 1e-6, true),
    row("sq ft|ft²|ft2|sq. ft.|square feet", FOOT_M ** 2, false, "inch"),
    row("sq in|in²|in2|square inches", (INCH / 1000) ** 2, false),
  ),
  volume: dimension(
    "a liquid volume",
    "1 qt|0.5 l",
    row("l|L|litre|litres|liter|liters", 1, true, "mm"),
    row("ml|mL|millilitre|milliliter", 0.001, true),
    row("gal|gallon|gallons|US gal", LITRES_PER_US_GALLON, false),
    row("qt|quart|quarts", LITRES_PER_US_GALLON / 4, false, "inch"),
    row("pt|pint|pints", LITRES_PER_US_GALLON / 8, false),
    row("fl oz|fl. oz.", LITRES_PER_US_GALLON / 128, false),
  ),
  timber: dimension(
    "a volume of timber",
    "40 bd ft|0.1 m³",
    row("m³|m3|cubic metres|cubic meters", 1, true, "mm"),
    row("bd ft|bdft|board feet|board foot|bf|BF|fbm", CUBIC_M_PER_BOARD_FOOT, false, "inch"),
    row("cu ft|ft³|ft3|cubic feet", FOOT_M ** 3, false),
  ),
  coverage: dimension(
    "a coverage",
    "400 sq ft/gal|10 m²/l",
    row("m²/l|m2/l|m²/L|m2/L|sq m/l", 1, true, "mm"),
    row("sq ft/gal|sqft/gal|ft²/gal|ft2/gal", FOOT_M ** 2 / LITRES_PER_US_GALLON, false, "inch"),
    row("sq ft/qt|ft²/qt|ft2/qt", (4 * FOOT_M ** 2) / LITRES_PER_US_GALLON, false),
  ),
  speed: dimension(
    "a speed of rotation",
    "18000 rpm|18000",
    row("rpm|r/min|1/min|rev/min", 1, true, "both"),
  ),
  angle: dimension("an angle", "45°|45", row("°|deg|degree|degrees", 1, true, "both")),
  number: dimension("a number", "3|0.5", row("", 1, true, "both")),
} as const satisfies Record<string, Dimension>;

export type DimensionName = keyof typeof dimensions;
