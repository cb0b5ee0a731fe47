import {
  type Celsius,
  type McPct,
  mcPct,
  type Ratio,
  type RhPct,
  ratio,
  rhPct,
} from "../units/index.ts";
import { derived, type Known, known, Problem, type Worked, work } from "../worked/index.ts";
import { handbook } from "./sources.ts";

const EQ = handbook("Eq 4-5");
const DAMP = "above 90 % RH a point of humidity moves the answer by a point or more";

/** The four constants of the sorption equation at a temperature, °C form. */
function sorption(temperature: Known<Celsius>) {
  const T = known(temperature, "temperature", "°C");
  const t = T.value;
  const constant = (says: string, formula: string, value: number): Worked<Ratio> =>
    work({ says, unit: "1", formula, inputs: { T }, value: ratio(value), source: EQ });
  return {
    T,
    W: constant(
      "sorption constant W",
      "W = 349 + 1.29·T + 0.0135·T²",
      349 + 1.29 * t + 0.0135 * t ** 2,
    ),
    K: constant(
      "sorption constant K",
      "K = 0.805 + 0.000736·T − 0.00000273·T²",
      0.805 + 0.000736 * t - 0.00000273 * t ** 2,
    ),
    K1: constant(
      "sorption constant K₁",
      "K₁ = 6.27 − 0.00938·T − 0.000303·T²",
      6.27 - 0.00938 * t - 0.000303 * t ** 2,
    ),
    K2: constant(
      "sorption constant K₂",
      "K₂ = 1.91 + 0.0407·T − 0.000293·T²",
      1.91 + 0.0407 * t - 0.000293 * t ** 2,
    ),
  };
}

/** Table 4-2, which the equation fits, runs from 30 to 210 °F; a little cold is let through with a note. */
function checkTemperature(t: number): readonly string[] {
  if (t < -20 || t > 99) {
    throw new Problem(
      "temperature-range",
      "temperature",
      `${t} °C is outside the range of the equation.`,
      "Use −20 to 99 °C (−4 to 210 °F).",
    );
  }
  return t < -1.2
    ? ["below 30 °F the handbook's table has no cells; the equation is stretched"]
    : [];
}

/**
 * Moisture content that wood settles at in air of a steady temperature and humidity.
 *
 * @param temperature  of the air, −20 to 99 [°C]
 * @param humidity  relative humidity, 0 to under 100 [% RH]
 * @returns moisture content [% MC], noted above 90 % RH where it is very sensitive
 * @throws Problem "temperature-range", "humidity-range"
 * @source Wood Handbook, Eq 4-5, °C form (second-hand); fits Table 4-2 to its printed digit
 */
export function equilibriumMoisture(
  temperature: Known<Celsius>,
  humidity: Known<RhPct>,
): Worked<McPct> {
  const { T, W, K, K1, K2 } = sorption(temperature);
  const notes = [...checkTemperature(T.value)];
  const RH = known(humidity, "relative humidity", "% RH");
  if (RH.value < 0 || RH.value >= 100) {
    throw new Problem(
      "humidity-range",
      "relative humidity",
      `${RH.value} % cannot be worked.`,
      "Use 0 to under 100 %.",
    );
  }
  if (RH.value > 90) notes.push(DAMP);
  const h = work({
    says: "relative humidity as a share",
    unit: "1",
    formula: "h = RH / 100",
    inputs: { RH },
    value: ratio(RH.value / 100),
    source: derived("arithmetic"),
  });
  const x = K.value * h.value;
  const a = K1.value * x;
  const b = K1.value * K2.value * x ** 2;
  return work({
    says: "moisture content the wood settles at",
    unit: "% MC",
    formula:
      "EMC = (1800 / W)·(K·h / (1 − K·h) + (K₁·K·h + 2·K₁·K₂·K²·h²) / (1 + K₁·K·h + K₁·K₂·K²·h²))",
    inputs: { h, W, K, "K₁": K1, "K₂": K2 },
    value: mcPct((1800 / W.value) * (x / (1 - x) + (a + 2 * b) / (1 + a + b))),
    source: EQ,
    notes,
  });
}

/**
 * Relative humidity in which wood of a given moisture content stays as it is: the equation above
 * turned round. Cleared of fractions it is a cubic in K·h, solved by halving.
 *
 * @param temperature  of the air, −20 to 99 [°C]
 * @param moisture  of the wood, 0 to 24 [% MC]
 * @returns relative humidity [% RH]
 * @throws Problem "temperature-range", "moisture-range"
 * @source Wood Handbook, Eq 4-5, °C form (second-hand), solved for h
 */
export function humidityFor(temperature: Known<Celsius>, moisture: Known<McPct>): Worked<RhPct> {
  const { T, W, K, K1, K2 } = sorption(temperature);
  const notes = [...checkTemperature(T.value)];
  const M = known(moisture, "moisture content of the wood", "% MC");
  const ceiling = equilibriumMoisture(T, rhPct(99)).value;
  if (M.value < 0 || M.value > ceiling) {
    throw new Problem(
      "moisture-range",
      "moisture content",
      `${M.value} % is not held by any air at this temperature.`,
      `Use 0 to ${ceiling.toFixed(1)} %.`,
    );
  }
  const m = work({
    says: "moisture content scaled",
    unit: "1",
    formula: "m = W·M / 1800",
    inputs: { W, M },
    value: ratio((W.value * M.value) / 1800),
    source: derived("arithmetic"),
  });
  const p = K1.value;
  const q = K1.value * K2.value;
  const cubic = (x: number) =>
    q * (1 - m.value) * x ** 3 +
    (m.value * (q - p) - 2 * q) * x ** 2 +
    (m.value * (p - 1) - (1 + p)) * x +
    m.value;
  const x = work({
    says: "K·h, solved by halving",
    unit: "1",
    symbol: "x",
    formula: "K₁·K₂·(1 − m)·x³ + (m·(K₁·K₂ − K₁) − 2·K₁·K₂)·x² + (m·(K₁ − 1) − (1 + K₁))·x + m = 0",
    inputs: { m, "K₁": K1, "K₂": K2 },
    value: ratio(halve(cubic, 0, K.value)),
    source: derived("Eq 4-5 cleared of its fractions"),
  });
  const humidity = (100 * x.value) / K.value;
  if (humidity > 90) notes.push(DAMP);
  return work({
    says: "humidity that keeps the wood there",
    unit: "% RH",
    formula: "RH = 100·x / K",
    inputs: { x, K },
    value: rhPct(humidity),
    source: EQ,
    notes,
  });
}

/** Where a function that falls from `from` to `to` crosses nought. */
function halve(f: (x: number) => number, from: number, to: number): number {
  let low = from;
  let high = to;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (f(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
