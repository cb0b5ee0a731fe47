import { bendingChecks } from "./bending.ts";
import { boardChecks } from "./boards.ts";
import { borneLeafChecks } from "./borne-leaves.ts";
import type { Check } from "./check.ts";
import { cupChecks } from "./cup.ts";
import { emcChecks } from "./emc.ts";
import { fastenerChecks } from "./fasteners.ts";
import { jointChecks } from "./joints.ts";
import { leafChecks } from "./leaf.ts";
import { leafArmChecks } from "./leaf-arms.ts";
import { pinPlaceChecks } from "./leaf-pins.ts";
import { makingChecks } from "./making.ts";
import { massChecks } from "./mass.ts";
import { movementChecks } from "./movement.ts";
import { octagonChecks } from "./octagon.ts";
import { strengthChecks } from "./strength.ts";
import { tippingChecks } from "./tipping.ts";
import { unitChecks } from "./units.ts";

/** Every published value our functions can express, by area. */
export const allChecks: readonly Check[] = [
  ...unitChecks,
  ...emcChecks,
  ...movementChecks,
  ...cupChecks,
  ...massChecks,
  ...strengthChecks,
  ...fastenerChecks,
  ...boardChecks,
  ...bendingChecks,
  ...tippingChecks,
  ...makingChecks,
  ...octagonChecks,
  ...jointChecks,
  ...leafChecks,
  ...pinPlaceChecks,
  ...leafArmChecks,
  ...borneLeafChecks,
];
