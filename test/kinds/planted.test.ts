import { describe, expect, test } from "vitest";
import { demoPieces, pieceOf } from "../../src/kinds/index.ts";
import type { Feature, Mortise, Part, Piece, Tenon } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { createSolids } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { pieceFaults } from "../kit/piece-faults.ts";
import { kernel } from "../kit/solids.ts";

const sound = (): Piece => {
  const [, document] = demoPieces();
  const read = document && pieceOf(document, demoShop);
  if (!read?.ok) throw new Error("the demo piece is not sound");
  return read.piece;
};

const solids = createSolids(kernel);
const clashes = (piece: Piece) =>
  solids.interference(piece.parts).map(({ a, b }) => [a, b].sort().join(" in "));

/** The piece with one part altered. */
const planted = (key: string, alter: (part: Part) => Part): Piece => {
  const piece = sound();
  return { ...piece, parts: piece.parts.map((p) => (p.key === key ? alter(p) : p)) };
};

/** The same, with one of its features altered. */
const altered = <F extends Feature>(part: string, key: string, alter: (f: F) => F): Piece =>
  planted(part, (p) => ({
    ...p,
    features: p.features.map((f) => (f.key === key ? alter(f as F) : f)),
  }));

const leg = "table/leg/front-left";
const rail = "table/rail/front";

test("the piece they are planted in is sound", () => {
  expect(pieceFaults(sound())).toEqual([]);
  expect(clashes(sound())).toEqual([]);
});

describe("a planted fault is caught", () => {
  test("a mortise moved 1 mm along the leg", () => {
    const piece = altered<Mortise>(leg, "mortise-long", (m) => ({
      ...m,
      x: [mm(m.x[0] + 1), mm(m.x[1] + 1)],
    }));
    expect(pieceFaults(piece).join()).toContain("off its mortise along the leg");
    expect(clashes(piece)).toEqual([`${leg} in ${rail}`]);
  });

  test("a mortise moved 1 mm across the leg", () => {
    const piece = altered<Mortise>(leg, "mortise-long", (m) => ({
      ...m,
      across: [mm(m.across[0] + 1), mm(m.across[1] + 1)],
    }));
    expect(pieceFaults(piece).join()).toContain("at the cheeks");
    expect(clashes(piece)).toContain(`${leg} in ${rail}`);
  });

  test("a mortise 2 mm too shallow", () => {
    const piece = altered<Mortise>(leg, "mortise-long", (m) => ({ ...m, depth: mm(m.depth - 2) }));
    expect(pieceFaults(piece).join()).toContain("differ in depth");
    // Mitred tips run into the open mortise beside them, so the shallow one still lets them pass.
    const haunch = altered<Mortise>(leg, "mortise-long", (m) => ({ ...m, haunch: undefined }));
    expect(clashes(haunch)).toEqual([`${leg} in ${rail}`]);
  });

  test("a tenon too long", () => {
    const piece = planted(rail, (part) => ({
      ...part,
      blank: { ...part.blank, length: mm(part.blank.length + 4) },
      features: part.features.map((f) =>
        f.feature === "tenon" && f.end === "right" ? { ...f, length: mm(f.length + 4) } : f,
      ),
    }));
    expect(pieceFaults(piece).join()).toContain("differ in depth");
    expect(clashes(piece).length).toBeGreaterThan(0);
  });

  test("a tenon 1 mm too wide", () => {
    const piece = altered<Tenon>(rail, "tenon-left", (t) => ({
      ...t,
      y: [mm(t.y[0] - 1), t.y[1]],
    }));
    expect(pieceFaults(piece).join()).toContain("along the leg");
    expect(clashes(piece)).toEqual([`${leg} in ${rail}`]);
  });

  test("a mirrored part that is not mirrored", () => {
    const twin = "table/leg/front-right";
    const piece = planted(twin, (part) => ({ ...part, isMirrored: false }));
    expect(pieceFaults(piece).join()).toContain("is said to be a mirror and is none");
    expect(clashes(piece).filter((c) => c.includes(twin)).length).toBeGreaterThan(0);
  });

  test("a mirror that stands in its twin's place", () => {
    const piece = planted("table/leg/front-right", (part) => ({
      ...part,
      pose: {
        ...part.pose,
        origin: [part.pose.origin[0] + 1, part.pose.origin[1], part.pose.origin[2]],
      },
    }));
    expect(pieceFaults(piece).join()).toContain("is not the mirror of");
  });

  test("a mark, a key, a joint's feature that stands twice or not at all", () => {
    expect(pieceFaults(planted(rail, (p) => ({ ...p, mark: "R2" }))).join()).toContain(
      "stands twice",
    );
    expect(pieceFaults(planted(rail, (p) => ({ ...p, key: "table/rail/back" }))).join()).toContain(
      "stands twice",
    );
    expect(
      pieceFaults(planted(rail, (p) => ({ ...p, features: p.features.slice(1) }))).join(),
    ).toContain("is not there");
  });

  test("a rail that stands in a leg's wood", () => {
    const piece = planted(rail, (p) => ({
      ...p,
      pose: { ...p.pose, origin: [p.pose.origin[0] - 3, p.pose.origin[1], p.pose.origin[2]] },
    }));
    expect(clashes(piece)).toContain(`${leg} in ${rail}`);
  });
});
