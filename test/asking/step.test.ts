import { describe, expect, test } from "vitest";
import { topicNamed } from "../../src/reckon/index.ts";
import type { LengthUnit } from "../../src/units/index.ts";

type Step = readonly [
  topic: string,
  question: string,
  text: string,
  side: LengthUnit,
  up: string,
  down: string,
];

describe("a step up and a step down keep the unit and the mark that were written", () => {
  test.each<Step>([
    ["sag", "span", "36", "inch", '36 1/16"', '35 15/16"'],
    ["sag", "span", "3 ft", "inch", "3' 1/16\"", "2' 11 15/16\""],
    ["sag", "span", "900 mm", "inch", "901 mm", "899 mm"],
    ["sag", "span", "900.4", "mm", "901", "900"],
    ["lathe-speed", "length", "1,2 m", "mm", "1,21 m", "1,19 m"],
    ["sag", "load", "30 kg", "inch", "31 kg", "29 kg"],
    ["sag", "load", "12,5 kg", "mm", "13 kg", "12 kg"],
    ["sag", "stiffness", "12.5 GPa", "mm", "13 GPa", "12 GPa"],
    ["sag", "stiffness", "1.5e6 psi", "inch", "1.6e6 psi", "1.4e6 psi"],
    ["sag", "growth", "1.5", "mm", "2", "1"],
    ["movement", "from", "7.5 %", "mm", "8 %", "7 %"],
    ["router", "top", "22000 rpm", "mm", "23000 rpm", "21000 rpm"],
    ["board-feet", "pieces", "7", "mm", "8", "6"],
  ])("%s, %s: %s on the %s side", (topic, question, text, side, up, down) => {
    const asked = topicNamed(topic).asks[question];
    expect(asked?.step(text, side, 1)).toBe(up);
    expect(asked?.step(text, side, -1)).toBe(down);
  });

  test("nothing steps out of its range, and words do not step", () => {
    const { pieces } = topicNamed("board-feet").asks;
    expect(pieces?.step("1", "mm", -1)).toBe("1");
    expect(pieces?.step("some", "mm", 1)).toBeUndefined();
    expect(topicNamed("sag").asks.where?.step("spread", "mm", 1)).toBeUndefined();
  });
});
