import { expect, test } from "vitest";
import { reckon, topicNamed } from "../../src/reckon/index.ts";

type Texts = Readonly<Record<string, string>>;

function answerOf(name: string, texts: Texts) {
  const outcome = reckon(topicNamed(name), texts, "mm", (n) => n);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const { findings, results } = outcome.answer;
  return {
    verdicts: Object.fromEntries(findings.map((f) => [f.id, f.verdict])),
    says: Object.fromEntries(findings.map((f) => [f.id, f.says])),
    value: (result: string) => results.find((r) => r.name === result)?.worked.value,
  };
}

const classic = { thickness: "19", radius: "12.7", hinge: "3.2", species: "cherry" };
const joint = (texts: Texts = {}) => answerOf("leaf-joint", { ...classic, ...texts });

test("the classic section is sound: nothing fails, and it swings free", () => {
  for (const texts of [{}, { fillet: "3.2" }]) {
    const { verdicts, value } = joint(texts);
    expect(verdicts["leaf-joint/swing"]).toBe("ok");
    expect(verdicts["leaf-joint/down"]).toBe("ok");
    expect(verdicts["leaf-joint/hinge"]).toBe("ok");
    expect(Object.values(verdicts)).not.toContain("fails");
    expect(value("clearance")).toBeGreaterThan(0.05);
  }
});

test("both ways of mounting a hinge are right when the fillet follows", () => {
  for (const mounting of ["let in", "on the face"]) {
    const { verdicts, value } = joint({ mounting });
    expect(verdicts["leaf-joint/swing"]).toBe("ok");
    expect(verdicts["leaf-joint/hinge"]).toBe("ok");
    expect(value("gap-down")).toBeCloseTo(0.5, 9);
  }
});

test("a pin 0.8 mm the wrong way binds, and is told where", () => {
  const { verdicts, says } = joint({ "pin-out": "-0.4" });
  expect(verdicts["leaf-joint/swing"]).toBe("fails");
  expect(says["leaf-joint/swing"]).toContain("tip of the lip");
  expect(verdicts["leaf-joint/year"]).toBe("not-judged");
});

test("plates on the face where the fillet was cut for plates let in leave a gap; the other way binds", () => {
  const onFace = joint({ fillet: "3.2", mounting: "on the face" });
  expect(onFace.verdicts["leaf-joint/down"]).toBe("watch");
  expect(onFace.value("gap-down")).toBeGreaterThan(1.5);
  const letIn = joint({ fillet: "4.6", mounting: "let in" });
  expect(letIn.verdicts["leaf-joint/swing"]).toBe("fails");
});

test("a square edge with the pin high rubs at the lower edge, and a bevel of the size told frees it", () => {
  const high = { thickness: "22", radius: "9.5", hinge: "6.3" };
  const square = joint({ ...high, bevel: "0" });
  expect(square.verdicts["leaf-joint/swing"]).toBe("fails");
  expect(square.says["leaf-joint/swing"]).toContain("lower edge of the top");
  const bevel = (square.value("bevel-needed") ?? 0) + 0.05;
  expect(joint({ ...high, bevel: bevel.toFixed(3) }).verdicts["leaf-joint/swing"]).toBe("ok");
});

test("a dry fitting is only watched: seasons never fail a joint", () => {
  for (const to of ["8 %", "11 %", "20 %"]) {
    expect(joint({ to }).verdicts["leaf-joint/year"]).toBe("watch");
  }
});

test("what does not go into the wood is refused by name", () => {
  const outcome = reckon(topicNamed("leaf-joint"), { ...classic, thickness: "14" }, "mm", (n) => n);
  expect(outcome.ok ? [] : outcome.problems.map((p) => p.code)).toEqual(["rule-joint-section"]);
});

const arm = (texts: Texts = {}) =>
  answerOf("swing-arm", {
    leaf: "300",
    reach: "250",
    tail: "125",
    thickness: "22",
    height: "50",
    ...texts,
  });

test("an arm turns where its cut is wide enough, and not in one thinner than it needs", () => {
  expect(arm().verdicts["swing-arm/turns"]).toBe("ok");
  expect(arm({ kerf: "0.3" }).verdicts["swing-arm/turns"]).toBe("fails");
  expect(arm({ kerf: "0.6" }).verdicts["swing-arm/turns"]).toBe("watch");
  expect(arm({ kerf: "0.3", angle: "20" }).verdicts["swing-arm/turns"]).toBe("ok");
});

test("a short arm, a loose pivot and a wide cut at angled ends are watched, never failed", () => {
  expect(arm({ reach: "150" }).verdicts["swing-arm/reach"]).toBe("watch");
  const loose = arm({ hole: "9", "tail-gap": "3" });
  expect(loose.verdicts["swing-arm/droop"]).toBe("watch");
  const step = arm({ angle: "20", kerf: "3" });
  expect(step.verdicts["swing-arm/line"]).toBe("watch");
  expect(step.value("out-of-line")).toBeGreaterThan(5);
});
