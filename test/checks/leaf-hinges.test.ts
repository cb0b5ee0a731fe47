import { describe, expect, test } from "vitest";
import { leafJoints } from "../../src/checks/leaf-joints.ts";
import { into, outOf } from "../../src/geometry/index.ts";
import type { Piece } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { mm } from "../../src/units/index.ts";
import type { Finding } from "../../src/worked/index.ts";
import { classic, expectWorked, found, tableOf, withJoints } from "../kit/leaf-tables.ts";

describe("a planted fault is found, with its verdict", () => {
  const square = { joint: "square edges", hinge: "back flap 38" };
  test.each<[says: string, id: string, verdict: Finding["verdict"], piece: () => Piece]>([
    [
      "no bevel and little set-out: the lower edge rubs",
      "leaf/swing",
      "fails",
      () => tableOf({ bevel: "0 mm", "set-out": "0.2 mm" }),
    ],
    ["too little to spare", "leaf/swing", "watch", () => tableOf({ crown: "0.05 mm" })],
    [
      "a lip that no longer covers the round-over's foot",
      "leaf/down",
      "watch",
      () =>
        tableOf(
          { "pin-out": "0 mm" },
          {
            "leaf-joint.pin-height": "1 mm",
            "leaf-joint.fillet": "4.8 mm",
            "leaf-joint.set-out": "2.2 mm",
          },
        ),
    ],
    ["a thin lip", "leaf/lip", "watch", () => tableOf({ "top-thickness": "17.2 mm" })],
    [
      "a leaf planed thin has a thin lip too",
      "leaf/lip/leaf-front",
      "watch",
      () => tableOf({}, { "leaf/front.thickness": "17.5 mm" }),
    ],
    [
      "screws that come out of the face",
      "leaf/screws",
      "fails",
      () =>
        withJoints(classic(), (leaf) => ({
          ...leaf,
          hinge: { ...leaf.hinge, screwLength: mm(20) },
        })),
    ],
    [
      "screws that end just under it",
      "leaf/screws",
      "watch",
      () =>
        withJoints(classic(), (leaf) => ({
          ...leaf,
          hinge: { ...leaf.hinge, screwLength: mm(18) },
        })),
    ],
    [
      "a barrel so thick that its groove breaks through",
      "leaf/groove",
      "fails",
      () =>
        withJoints(classic(), (leaf) => ({ ...leaf, hinge: { ...leaf.hinge, barrel: mm(14) } })),
    ],
    [
      "a barrel that leaves little wood",
      "leaf/groove",
      "watch",
      () =>
        withJoints(classic(), (leaf) => ({ ...leaf, hinge: { ...leaf.hinge, barrel: mm(11) } })),
    ],
    [
      "a long plate whose first screws stand in the cove",
      "leaf/long-plate",
      "fails",
      () => withFirstHole(classic(), 12),
    ],
    [
      "first screws hard by the cove",
      "leaf/long-plate",
      "watch",
      () => withFirstHole(classic(), 14),
    ],
    [
      "cutters too short for the mouldings",
      "leaf/cutters",
      "watch",
      () => tableOf({ cutters: "3/8 in pair", "top-thickness": "24 mm" }),
    ],
    [
      "a hinge past the leaf's end",
      "leaf/hinge-ends",
      "fails",
      () => withJoints(classic(), (leaf) => ({ ...leaf, hinges: [mm(-540), mm(400)] })),
    ],
    [
      "hinges over each other",
      "leaf/hinge-apart",
      "fails",
      () => withJoints(classic(), (leaf) => ({ ...leaf, hinges: [mm(380), mm(400)] })),
    ],
    [
      "plates on the face between top and rail",
      "leaf/hinge-seat",
      "fails",
      () => tableOf({ mounting: "on the face", "side-overhang": "16 mm" }),
    ],
    [
      "square edges with a pin in the wood",
      "leaf/swing",
      "fails",
      () => tableOf({ ...square, hinge: "table hinge 38" }),
    ],
    [
      "square edges without a gap",
      "leaf/swing",
      "watch",
      () => tableOf({ ...square, "set-out": "0 mm" }),
    ],
    [
      "square edges with a pin far under the face",
      "leaf/down",
      "watch",
      () => tableOf(square, { "leaf-joint.pin-height": "-2 mm" }),
    ],
    [
      "a pin so high that the leaf hangs off plumb",
      "leaf/rests",
      "watch",
      () =>
        tableOf(
          { ...square, "set-out": "3 mm", leaf: "100 mm" },
          { "leaf-joint.pin-height": "10.3 mm", "leaf-joint.pin-out": "20 mm" },
        ),
    ],
  ])("%s", (_, id, verdict, piece) => {
    const findings = leafJoints(piece(), demoShop);
    expectWorked(findings);
    expect(findings.find((one) => one.id === id)?.verdict).toBe(verdict);
  });

  test("a hinge over a lead hole of what holds the top", () => {
    const piece = tableOf({});
    const lead = leadsOf(piece)[0];
    if (!lead) throw new Error("nothing holds the top");
    const over = withJoints(piece, (leaf) => {
      const [x, , z] = into(leaf.section, lead);
      const reach = mm(Math.max(leaf.hinge.short.reach, 1 - x));
      const short = { ...leaf.hinge.short, reach };
      return { ...leaf, hinges: [mm(z)], hinge: { ...leaf.hinge, short } };
    });
    const finding = found(over, "leaf/hinge-fastenings");
    expect(finding.verdict).toBe("watch");
    expect(finding.lights.some((key) => key.includes("/fastening/"))).toBe(true);
  });

  test("a hinge on the face in the way of an arm is struck; let in flush over the open arm it is to be minded", () => {
    const over = (mounting: string, aside: number) => {
      const piece = tableOf({ mounting });
      const arm = piece.motions.find(({ key }) => key.includes("arm-front-1"));
      if (!arm) throw new Error("there is no arm");
      return withJoints(piece, (leaf) => {
        const [, , z] = into(leaf.section, arm.axis.at);
        const inward = z > 0 ? -1 : 1;
        return { ...leaf, hinges: [mm(z + inward * aside)] };
      });
    };
    // An arm sweeps a quarter of a circle on its reaching side, and only lies over its pivot.
    expect(found(over("on the face", 100), "leaf/hinge-arms").verdict).toBe("fails");
    expect(found(over("on the face", 100), "leaf/hinge-arms").lights).toContain(
      "table/arm/front-1",
    );
    const behind = over("on the face", -60);
    expect(found(behind, "leaf/hinge-places").verdict).toBe("ok");
    // A short plate that reaches in behind the rail lies in the tail's way.
    const long = withJoints(behind, (leaf) => ({
      ...leaf,
      hinge: { ...leaf.hinge, short: { ...leaf.hinge.short, reach: mm(48) } },
    }));
    expect(found(long, "leaf/hinge-arms").verdict).toBe("fails");
    expect(found(over("let in", 0), "leaf/hinge-arms").verdict).toBe("watch");
    expect(found(over("let in", 100), "leaf/hinge-places").verdict).toBe("ok");
  });
});

test("only screws that find wood hold the joint through the year", () => {
  const year = (piece: Piece) => found(piece, "leaf/year").margin?.value;
  expect(year(withFirstHole(classic(), 8))).toBe(year(classic()));
  expect(year(withFirstHole(classic(), 16))).toBeGreaterThan(year(classic()) ?? 99);
});

const withFirstHole = (piece: Piece, from: number): Piece =>
  withJoints(piece, (leaf) => {
    const holes = [{ from: mm(from), along: mm(0) }, ...leaf.hinge.long.holes];
    return { ...leaf, hinge: { ...leaf.hinge, long: { ...leaf.hinge.long, holes } } };
  });

/** Mouths of the lead holes in the top for what holds it, in the piece. */
const leadsOf = ({ parts }: Piece) => {
  const top = parts.find(({ role }) => role === "top");
  return (top?.features ?? []).flatMap((feature) =>
    feature.feature === "bore" && !feature.key.startsWith("screw-") && top
      ? [outOf(top.pose, feature.from)]
      : [],
  );
};
