import { mm } from "../units/index.ts";
import {
  commonPractice,
  derived,
  type Finding,
  given,
  known,
  type Worked,
  work,
} from "../worked/index.ts";
import type { Alike } from "./leaf-alike.ts";
import { told } from "./told.ts";

/** The pin may stand this much above or below its centre and still be set by eye; our own measure. */
const OFF = given("most that the pin stands off its height", mm(0.3), "mm", commonPractice);
/** Off by the plate's thickness, within this share of it, the hinge lies the other way than the fillet was cut for. */
const SHARE = 0.25;

/** Whether the hinges lie the way that the fillet was cut for. */
export function leafMounting({ leaf, section, id, lights, show }: Alike): readonly Finding[] {
  if (!section || typeof section.pinUp !== "object" || !("formula" in section.pinUp)) return [];
  const up: Worked = section.pinUp;
  const by = Math.abs(up.value);
  const { plate } = leaf.hinge;
  const isPlate = plate > 0 && Math.abs(by - plate) <= SHARE * plate;
  const isOnFace = leaf.mounting === "on the face";
  const low = `The pin stands ${show(by)} lower than the round-over’s centre`;
  const high = `The pin stands ${show(by)} higher than the round-over’s centre`;
  const says =
    by <= OFF.value
      ? "The pin lies at the height that the fillet was cut for."
      : up.value < 0
        ? isPlate && isOnFace
          ? `${low}, about the thickness of a plate: the hinges are laid on the face, and the fillet was cut for plates let in flush. Let the plates in, or cut round-over and cove deeper by ${show(by)}.`
          : `${low}: the joint opens when the leaf goes down. Let the hinges in deeper, or cut round-over and cove deeper by ${show(by)}.`
        : isPlate && !isOnFace
          ? `${high}, about the thickness of a plate: the plates are let in flush, and the fillet was cut for hinges laid on the face. Lay them on the face, or cut round-over and cove shallower by ${show(by)}.`
          : `${high}: that uses up clearance as the leaf goes down. Let the hinges in less, or cut round-over and cove shallower by ${show(by)}.`;
  const p = known(plate, "thickness of the plates", "mm");
  const beyond = isPlate
    ? [
        work({
          says: "pin off its height, against the thickness of a plate",
          unit: "1",
          formula: "r = √(d_y²)/p",
          inputs: { d_y: up, p },
          value: by / plate,
          source: derived("definition"),
        }),
      ]
    : [];
  const isOff = by > OFF.value;
  const margin = work({
    says: "room left of what the pin may stand off its height",
    unit: "mm",
    formula: "a = m − √(d_y²)",
    inputs: { m: OFF, d_y: up },
    value: mm(OFF.value - by),
    source: derived("arithmetic"),
  });
  return [
    told({
      ...{ id: id("mounting"), group: "Joinery", verdict: isOff ? "watch" : "ok", says, lights },
      severity: isOff ? by / OFF.value : 0,
      margin,
      why: [margin, ...beyond],
    }),
  ];
}
