import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  bevelNeeded,
  clearanceNeeded,
  coveClearance,
  coveGap,
  firstContact,
  gapAtSwing,
  gapFromAbove,
  lipOverlap,
  lowerEdgeClearance,
  pinClearance,
  pinReach,
  type RuleJoint,
  rubStarts,
  safePinRegion,
  safeRadius,
  sweptJoint,
  swingClearance,
  undersideMargin,
} from "../../src/motion/index.ts";
import { deg, type Mm, mm } from "../../src/units/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { anyJoint, classicJoint, shopJoint } from "../kit/rule-joints.ts";
import { between, isNear } from "../kit/sizes.ts";

const all = { numRuns: 2000 };
/** Two thousand sweeps take a while where many tests run at once. */
const PATIENCE_MS = 60_000;

/** Every length of a joint made so many times as large. */
const scaled = (joint: RuleJoint, by: number): RuleJoint =>
  Object.fromEntries(
    Object.entries(joint).map(([name, value]) => [name, mm(Number(value) * by)]),
  ) as RuleJoint;

describe("the closed form beside a sweep of the two sections that knows no formula", () => {
  test(
    "a joint as shops make it: least clearance alike, and by the first-order gap within a hundredth",
    () => {
      fc.assert(
        fc.property(shopJoint, (joint) => {
          const swept = sweptJoint(joint);
          const exact = swingClearance(joint);
          expect(Math.abs(exact.gap - swept.gap)).toBeLessThan(0.004);
          const formula = Math.min(
            coveClearance(joint).value,
            lowerEdgeClearance(joint).value,
            undersideMargin(joint).value,
          );
          // First order is short by up to what the set-out hides at the crown, g²/2R, never long.
          const hidden = Number(joint.setOut) ** 2 / (2 * Number(joint.radius));
          expect(formula - swept.gap).toBeLessThan(0.002);
          expect(formula - swept.gap).toBeGreaterThan(-0.01 - hidden);
        }),
        all,
      );
    },
    PATIENCE_MS,
  );

  test(
    "any joint: free or bound alike, at the same swing",
    () => {
      let [free, bound] = [0, 0];
      fc.assert(
        fc.property(anyJoint, (joint) => {
          const swept = sweptJoint(joint);
          const first = firstContact(joint);
          const { gap } = swingClearance(joint);
          // A sweep in steps may miss the slightest touch.
          if (Math.abs(gap) < 0.002) return;
          expect(first === undefined).toBe(swept.firstContact === undefined);
          expect(gap < 0).toBe(first !== undefined);
          if (!first || swept.firstContact === undefined) {
            free++;
            expect(Math.abs(gap - swept.gap)).toBeLessThan(0.0035);
            return;
          }
          bound++;
          const near = gapAtSwing(joint, swept.firstContact).gap;
          const isSame = Math.abs(first.swing - swept.firstContact) < 0.05;
          // Where the members graze, a wide range of swings lies within a few thousandths.
          expect(isSame || Math.abs(near) < 0.0035).toBe(true);
        }),
        all,
      );
      expect(Math.min(free, bound)).toBeGreaterThan(100);
    },
    PATIENCE_MS,
  );

  test("the few swings looked at hold the least of all swings", () => {
    fc.assert(
      fc.property(anyJoint, between(0, 90), (joint, swing) => {
        expect(gapAtSwing(joint, deg(swing)).gap).toBeGreaterThanOrEqual(
          swingClearance(joint).gap - 2e-9,
        );
      }),
      all,
    );
  });
});

describe("the first-order gap", () => {
  test("its least is no more than at any pair of angles", () => {
    fc.assert(
      fc.property(anyJoint, between(0, 90), between(0, 1), (joint, psi, part) => {
        const here = coveGap(joint, deg(psi * part), deg(psi)).value;
        expect(coveClearance(joint).value).toBeLessThanOrEqual(here + 2e-9);
      }),
      all,
    );
  });

  test("the shop's example: 0.10 mm, 0.108 by geometry", () => {
    const joint = { ...classicJoint, pinOut: mm(0.5), pinUp: mm(0), bevel: mm(2) };
    expect(coveClearance(joint).value).toBeCloseTo(0.1, 9);
    expect(swingClearance(joint).gap).toBeCloseTo(0.108, 2);
  });

  test("about one centre it uses up what the closed form says, and no clearance is lost inwards and down", () => {
    fc.assert(
      fc.property(between(8, 16), between(0, 1), between(-1, 0), (R, x, y) => {
        expect(clearanceNeeded(mm(R), mm(x), mm(y)).value).toBe(0);
        const up = clearanceNeeded(mm(R), mm(x), mm(-y)).value;
        expect(up).toBeGreaterThanOrEqual(0);
        expect(clearanceNeeded(mm(R), mm(-x), mm(-y)).value).toBeGreaterThanOrEqual(up - 1e-12);
      }),
    );
  });
});

describe("change of size and of one size", () => {
  test("everything twice as large leaves twice the clearance, at the same swing", () => {
    fc.assert(
      fc.property(anyJoint, fc.constantFrom(25.4, 1 / 25.4, 2), (joint, by) => {
        const [one, other] = [joint, scaled(joint, by)].map((j) => swingClearance(j).gap);
        // How deep members overlap is told by one of two faces at an edge; that they do, by both.
        if ((one ?? 0) < 0) expect(other).toBeLessThan(0);
        else expect(Math.abs((other ?? 0) / by - (one ?? 0))).toBeLessThan(1e-7);
        expect(
          isNear(gapFromAbove(scaled(joint, by)).value, by * gapFromAbove(joint).value, 1e-6),
        ).toBe(true);
      }),
    );
  });

  test("a larger set-out or bevel never brings the lower edge nearer", () => {
    fc.assert(
      fc.property(anyJoint, between(0, 1), (joint, more) => {
        const now = lowerEdgeClearance(joint).value;
        const out = { ...joint, setOut: mm(Number(joint.setOut) + more) };
        const cut = { ...joint, bevel: mm(Number(joint.bevel) + more) };
        expect(lowerEdgeClearance(out).value).toBeGreaterThanOrEqual(now - 1e-6);
        expect(lowerEdgeClearance(cut).value).toBeGreaterThanOrEqual(now - 1e-6);
      }),
      all,
    );
  });

  test("the bevel that is needed frees the edge, and a little less does not", () => {
    let needed = 0;
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const [out, down] = [joint.pinOut, joint.pinUp].map((n) => Math.abs(Number(n)));
        const low = { ...joint, pinOut: mm(out ?? 0), pinUp: mm(-(down ?? 0) - 0.5) };
        const u = bevelNeeded(low).value;
        const withBevel = (bevel: number) => lowerEdgeClearance({ ...low, bevel: mm(bevel) }).value;
        expect(withBevel(u)).toBeGreaterThan(-5e-5);
        if (u > 0.01) {
          needed++;
          expect(withBevel(u * 0.9)).toBeLessThan(0);
          expect(rubStarts({ ...low, bevel: mm(u * 0.9) })).toBeDefined();
        }
      }),
    );
    expect(needed).toBeGreaterThan(5);
  });

  test("down, the leaf's gap and overlap move with the pin as they must", () => {
    fc.assert(
      fc.property(anyJoint, between(-1, 1), (joint, by) => {
        const out = { ...joint, pinOut: mm(Number(joint.pinOut) + by) };
        expect(gapFromAbove(out).value - gapFromAbove(joint).value).toBeCloseTo(by, 9);
        expect(lipOverlap(out).value - lipOverlap(joint).value).toBeCloseTo(by, 9);
      }),
    );
  });
});

describe("the classic section", () => {
  test("swings free, with a tenth at the crown and the pin free to stray", () => {
    expect(firstContact(classicJoint)).toBeUndefined();
    expect(swingClearance(classicJoint).gap).toBeGreaterThan(0.09);
    expect(safeRadius(classicJoint).value).toBeGreaterThan(0.2);
    expect(sweptJoint(classicJoint).firstContact).toBeUndefined();
  });

  test("a pin moved 0.8 mm the wrong way binds at the lip's tip, where the sweep finds it", () => {
    for (const wrong of [{ pinOut: mm(-0.4) }, { pinOut: mm(-0.4), pinUp: mm(0.4) }]) {
      const joint = { ...classicJoint, ...wrong };
      const first = firstContact(joint);
      const swept = sweptJoint(joint);
      expect(first?.contact).toBe("tip of the lip");
      expect(first?.swing).toBeGreaterThan(5);
      expect(Math.abs((first?.swing ?? 0) - (swept.firstContact ?? 90))).toBeLessThan(0.05);
      expect(
        Math.hypot((first?.at.x ?? 0) - swept.at.x, (first?.at.y ?? 0) - swept.at.y),
      ).toBeLessThan(0.05);
    }
  });

  test("hinges let in where the fillet was cut for hinges on the face bind; the other way round it gapes", () => {
    const plate = 1.5;
    const letIn = { ...classicJoint, pinUp: mm(plate) };
    expect(firstContact(letIn)?.swing).toBeLessThan(30);
    const onFace = { ...classicJoint, pinUp: mm(-plate) };
    expect(firstContact(onFace)).toBeUndefined();
    expect(gapFromAbove(onFace).value).toBeGreaterThan(1.5);
    expect(lipOverlap(onFace).value).toBeLessThan(-1);
  });
});

describe("where the pin may stand", () => {
  test("within the radius it swings free whichever way; the region's corners lie on its edge", () => {
    fc.assert(
      fc.property(shopJoint, between(0, 360), between(0, 0.999), (joint, way, part) => {
        const r = safeRadius(joint).value;
        const at = (direction: number, distance: number): [Mm, Mm] => [
          mm(Number(joint.pinOut) + distance * Math.cos((direction * Math.PI) / 180)),
          mm(Number(joint.pinUp) + distance * Math.sin((direction * Math.PI) / 180)),
        ];
        expect(pinClearance(joint, ...at(way, r * part))).toBeGreaterThan(-1e-5);
        const reach = pinReach(joint, deg(way));
        expect(reach).toBeGreaterThanOrEqual(r - 1e-6);
        if (reach < 3) expect(pinClearance(joint, ...at(way, reach + 1e-4))).toBeLessThan(0);
      }),
      { numRuns: 60 },
    );
    expect(safePinRegion(classicJoint, 12)).toHaveLength(12);
  });
});

test.each<[string, Partial<RuleJoint>]>([
  ["no fillet left", { thickness: mm(15) }],
  ["no radius", { radius: mm(0) }],
  ["the centre under the wood", { centreHeight: mm(0) }],
  ["a bevel past the pin", { bevel: mm(12.5) }],
  ["no lip", { lipTrim: mm(13) }],
])("%s is refused", (_, wrong) => {
  expect(() => swingClearance({ ...classicJoint, ...wrong })).toThrow(Problem);
});
