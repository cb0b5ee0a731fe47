import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { leafJoints } from "../../src/checks/leaf-joints.ts";
import { demoPieces, pieceOf } from "../../src/kinds/index.ts";
import { type RuleJoint, sectionOf, sweptJoint } from "../../src/motion/index.ts";
import type { Piece } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { mm } from "../../src/units/index.ts";
import {
  built,
  classic,
  documentOf,
  expectWorked,
  failing,
  found,
  shopSection,
  type Texts,
  table,
  tableFor,
  tableOf,
} from "../kit/leaf-tables.ts";
import { anyJoint, shopJoint } from "../kit/rule-joints.ts";
import { sweptSquare } from "../kit/square-sweep.ts";

const sectionIn = (piece: Piece): RuleJoint => {
  const [leaf] = piece.joints.flatMap((joint) => (joint.kind === "leaf" ? [joint.leaf] : []));
  const section = leaf && sectionOf(leaf);
  if (!section) throw new Error("there is no rule joint");
  return section;
};

describe("the classic section", () => {
  test("is sound: nothing fails, and the leaf swings free", () => {
    const piece = classic();
    expect(failing(piece)).toEqual([]);
    const swing = found(piece, "leaf/swing");
    expect(swing.verdict).toBe("ok");
    // 0.108 mm by geometry, as a working shop says.
    expect(swing.margin?.value).toBeCloseTo(0.108, 2);
    expect(swing.lights).toEqual(
      expect.arrayContaining(["table/leaf/front", "table/leaf/back", "table/top"]),
    );
    for (const name of ["down", "mounting", "groove", "screws", "long-plate", "lip", "cutters"])
      expect(found(piece, `leaf/${name}`).verdict, name).toBe("ok");
    expect(found(piece, "leaf/hinge-places").verdict).toBe("ok");
  });

  test("a pin 0.8 mm the wrong way binds, where and when the independent sweep finds it", () => {
    for (const wrong of [
      { "leaf-joint.pin-out": "-0.4 mm" },
      { "leaf-joint.pin-height": "4 mm" },
      { "leaf-joint.pin-out": "-0.4 mm", "leaf-joint.pin-height": "4 mm" },
    ] as readonly Texts[]) {
      const piece = tableOf(
        { "top-thickness": "19.1 mm" },
        { "leaf-joint.fillet": "3.2 mm", ...wrong },
      );
      const swing = found(piece, "leaf/swing");
      expect(swing.verdict).toBe("fails");
      expect(swing.margin?.value).toBeLessThan(0);
      const swept = sweptJoint(sectionIn(piece));
      const begins = swing.why.find(({ says }) => says.startsWith("binds with"));
      expect(Math.abs((begins?.value ?? 90) - (swept.firstContact ?? -90))).toBeLessThan(1);
      expect(swing.says).toContain(`binds ${begins?.value.toFixed(0)}° down, at the `);
      // The place in words is the place of the sweep: by the lip near the crown, or by the foot.
      const isHigh = swept.at.y > 6;
      expect(swing.says).toMatch(
        isHigh ? /at the tip of the lip/ : /at the foot of the round-over/,
      );
      for (const name of ["down", "rests", "year", "pin", "errors"])
        expect(found(piece, `leaf/${name}`).verdict, name).toBe("not-judged");
    }
  });

  test("where the first order is on the other side of nought, the section itself decides, and it is said", () => {
    const off = { ...shopSection(sectionIn(classic())), crownGap: mm(-0.004), pinOut: mm(0.004) };
    const piece = tableFor(off);
    const swing = piece && found(piece, "leaf/swing");
    expect(swing?.margin?.value).toBeGreaterThan(0);
    expect(swing?.verdict).toBe("watch");
    expect(swing?.margin?.notes.join()).toMatch(/would seem to bind/);
  });
});

test("a leaf that cannot even close is told so: a proud lip, a cove smaller than its round-over", () => {
  const proud = found(tableOf({}, { "leaf-joint.crown": "-0.3 mm" }), "leaf/swing");
  expect(proud.verdict).toBe("fails");
  expect(proud.says).toMatch(/does not come up level.*tip of the lip.*thin the lip/);
  const small = found(tableOf({}, { "leaf-joint.cove": "12 mm" }), "leaf/swing");
  expect(small.verdict).toBe("fails");
  expect(small.says).toMatch(/does not come up level.*set the leaf out further/);
});

describe("random sections", () => {
  test("the leaf is told to swing just when the sweep of both outlines finds no contact", () => {
    let [free, bound] = [0, 0];
    const judge = (joint: RuleJoint) => {
      const piece = tableFor(joint);
      if (!piece) return;
      const swept = sweptJoint(joint);
      if (Math.abs(swept.gap) < 0.01) return;
      const findings = leafJoints(piece, demoShop);
      expectWorked(findings);
      const swing = findings.find(({ id }) => id === "leaf/swing");
      expect(swing?.verdict !== "fails").toBe(swept.firstContact === undefined);
      swept.firstContact === undefined ? free++ : bound++;
    };
    fc.assert(fc.property(fc.oneof(anyJoint, shopJoint), judge), { numRuns: 200 });
    expect(Math.min(free, bound)).toBeGreaterThan(20);
  }, 60_000);

  test("square edges likewise, by a sweep of two plain outlines", () => {
    const size = (least: number, most: number) =>
      fc.integer({ min: 0, max: 1000 }).map((n) => least + ((most - least) * n) / 1000);
    let [free, bound] = [0, 0];
    const judge = (sizes: Parameters<typeof sweptSquare>[0]) => {
      const texts = {
        "top.thickness": sizes.thickness,
        "leaf-joint.set-out": sizes.setOut,
        "leaf-joint.pin-out": sizes.pinOut,
        "leaf-joint.pin-height": sizes.pinHeight,
      };
      const own = Object.entries(texts).map(([key, n]) => [key, `${n.toFixed(6)} mm`]);
      const answers = { joint: "square edges", hinge: "back flap 38" };
      const read = pieceOf(documentOf(answers, Object.fromEntries(own)), demoShop);
      if (!read.ok) return;
      const { deepest, first } = sweptSquare(sizes);
      if (Math.abs(deepest) < 0.01) return;
      const findings = leafJoints(read.piece, demoShop);
      expectWorked(findings);
      const swing = findings.find(({ id }) => id === "leaf/swing");
      expect(swing?.verdict !== "fails").toBe(first === undefined);
      first === undefined ? free++ : bound++;
    };
    const square = fc.record({
      thickness: size(17, 26),
      setOut: size(0, 2),
      pinOut: size(-1, 3),
      pinHeight: size(-3, 5),
    });
    fc.assert(fc.property(square, judge), { numRuns: 200 });
    expect(Math.min(free, bound)).toBeGreaterThan(20);
  }, 60_000);
});

describe("hinges that lie the other way than the fillet was cut for", () => {
  test("laid on the face where it was cut for plates let in: named, with what to do; nothing fails", () => {
    const piece = tableOf({ mounting: "on the face" }, { "leaf-joint.fillet": "3.1 mm" });
    const mounting = found(piece, "leaf/mounting");
    expect(mounting.verdict).toBe("watch");
    expect(mounting.says).toMatch(
      /laid on the face.*cut for plates let in flush.*Let the plates in/,
    );
    expect(mounting.says).toContain("1.5 mm");
    expect(found(piece, "leaf/swing").verdict).toBe("ok");
    const down = found(piece, "leaf/down");
    expect(down.verdict).toBe("watch");
    // 0.1 crown gap, 0.4 out, 1.5 low.
    expect(down.margin?.value).toBeCloseTo(1.2 - 2, 6);
  });

  test("let in where it was cut for hinges on the face: named, and the leaf binds", () => {
    const piece = tableOf({}, { "leaf-joint.fillet": "4.6 mm" });
    expect(found(piece, "leaf/mounting").says).toMatch(
      /let in flush.*cut for hinges laid on the face/,
    );
    expect(found(piece, "leaf/swing").verdict).toBe("fails");
  });

  test("either mounting is right when its fillet is", () => {
    for (const mounting of ["let in", "on the face"]) {
      const piece = tableOf({ mounting });
      expect(found(piece, "leaf/mounting").verdict).toBe("ok");
      expect(found(piece, "leaf/down").verdict).toBe("ok");
    }
  });
});

describe("the year and the shop", () => {
  const oak = (made: string) =>
    tableOf(
      { "rail-thickness": "24 mm" },
      {},
      { timber: "white oak", home: { ...table.home, dampest: "72 %", made } },
    );

  test("fitted dry it rubs in the damp season, fitted damp it does not; at most to be minded", () => {
    const dry = found(oak("7 %"), "leaf/year");
    expect(dry.verdict).toBe("watch");
    expect(dry.says).toMatch(/Fitted at 7 % MC.*swings free up to .*goes to/);
    expect(found(oak("13 %"), "leaf/year").verdict).toBe("ok");
    expect(dry.severity).toBeGreaterThan(1);
  });

  test("quartersawn edges move less", () => {
    const flat = found(tableOf({ sawn: "flat" }), "leaf/year").margin?.value;
    const quarter = found(tableOf({ sawn: "quarter" }), "leaf/year").margin?.value;
    expect(quarter).toBeGreaterThan(flat ?? Number.POSITIVE_INFINITY);
  });

  test("a shop that strays further is told so, and which error matters most", () => {
    const loose = { ...demoShop, pinError: mm(0.5), isDemo: false };
    expect(found(classic(), "leaf/pin", loose).verdict).toBe("watch");
    const errors = found(classic(), "leaf/errors", loose);
    expect(errors.verdict).toBe("watch");
    expect(errors.says).toMatch(/Most depends on (the pin’s height|how far out the pin stands)/);
    const exact = { ...demoShop, pinError: mm(0.02), thicknessError: mm(0.01), isDemo: false };
    expect(found(classic(), "leaf/errors", exact).verdict).toBe("ok");
    expect(found(classic(), "leaf/errors").verdict).toBe("not-judged");
  });
});

test("leaves alike are judged once, others each by their own name", () => {
  const alike = leafJoints(tableOf({}), demoShop).map(({ id }) => id);
  expect(alike.filter((id) => id.startsWith("leaf/swing"))).toEqual(["leaf/swing"]);
  const apart = leafJoints(tableOf({}, { "leaf/front.width": "250 mm" }), demoShop);
  expectWorked(apart);
  expect(apart.filter(({ id }) => id.startsWith("leaf/swing")).map(({ id }) => id)).toEqual([
    "leaf/swing/leaf-front",
    "leaf/swing/leaf-back",
  ]);
});

test("a demo piece's leaves have nothing that stops, and its figures recompute", () => {
  const hinged = demoPieces()
    .map(built)
    .filter(({ joints }) => joints.some(({ kind }) => kind === "leaf"));
  expect(hinged.length).toBeGreaterThan(0);
  for (const piece of hinged) {
    expectWorked(leafJoints(piece, demoShop));
    expect(failing(piece)).toEqual([]);
  }
  const [plain] = demoPieces().map(built);
  expect(plain && leafJoints(plain, demoShop)).toEqual([]);
});
