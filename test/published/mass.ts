import { cubicM, kgPerM3, mcPct, pct, printQuantity, ratio } from "../../src/units/index.ts";
import {
  density,
  gravityAt,
  greatestMoisture,
  mass,
  speciesNamed,
  typicalGravityAt,
} from "../../src/wood/index.ts";
import { type Check, exact, series } from "./check.ts";

const AREA = "Density and mass";
const printed = series(AREA, "table 4-6");
const byHand = series(AREA, "chapter 4 by hand");

export const massChecks: readonly Check[] = [
  printed("density of G 0.60 at 12 %", "672", "kg/m³", () => {
    return density(ratio(0.6), mcPct(12)).value;
  }),
  printed("density of G 0.40 at 100 %", "800", "kg/m³", () => {
    return density(ratio(0.4), mcPct(100)).value;
  }),
  printed("density of white ash of our table at 12 %", "672", "kg/m³", () => {
    return density(speciesNamed("ash-white").gravity, mcPct(12)).value;
  }),
  printed("gravity of white ash at 12 %, from 0.55 green, by Eq 4-13", "0.60", "1", () => {
    return typicalGravityAt(ratio(0.55), mcPct(12)).value;
  }),
  printed("G 1.00 dry, as the inch-pound form of Eq 4-14 has it", "62.4", "lb/ft³", () => {
    const text = printQuantity(density(ratio(1), mcPct(0)).value, "kg/m³", "inch");
    return Number(text.replace(" lb/cu ft", ""));
  }),
  byHand("G_b 0.50, dry, by Eq 4-13: 0.50 / 0.8675", "0.576369", "1", () => {
    return typicalGravityAt(ratio(0.5), mcPct(0)).value;
  }),
  byHand("G_b 0.50 at 15 % by Eq 4-13: 0.50 / 0.93375", "0.535475", "1", () => {
    return typicalGravityAt(ratio(0.5), mcPct(15)).value;
  }),
  byHand("G_b 0.50 with S_V 10 %, dry, by Eq 4-11: 0.50 / 0.9", "0.555556", "1", () => {
    return gravityAt(ratio(0.5), pct(10), mcPct(0)).value;
  }),
  byHand("most water at G_b 0.50, by Eq 4-3: 104 / 0.77", "135.0649", "% MC", () => {
    return greatestMoisture(ratio(0.5)).value;
  }),
  series(AREA, "textbook")(
    "mass of 0.02 m³ at 700 kg/m³",
    "14",
    "kg",
    () => mass(cubicM(0.02), kgPerM3(700)).value,
    exact,
  ),
];
