import { expect } from "vitest";
import { leafJoints } from "../../src/checks/leaf-joints.ts";
import { kindNamed, newDocument, pieceOf } from "../../src/kinds/index.ts";
import type { RuleJoint } from "../../src/motion/index.ts";
import type { LeafJoint, Piece, PieceDocument } from "../../src/piece/index.ts";
import { demoShop, type Shop } from "../../src/shop/index.ts";
import { type Finding, isWorked, wholeChain } from "../../src/worked/index.ts";
import { recompute } from "./evaluate.ts";

export type Texts = Readonly<Record<string, string>>;

export const table = newDocument(kindNamed("drop-leaf-table"), "T", "mm");

/** A drop-leaf table with some answers, and sizes of its leaf joint as they came out. */
export function documentOf(answers: Texts, joint: Texts = {}, more: Partial<PieceDocument> = {}) {
  const { table: plain } = table.assemblies;
  if (!plain) throw new Error("there is no table");
  const own = Object.entries(joint).map(([key, text]) => [`table/${key}`, text]);
  return {
    ...table,
    ...more,
    assemblies: { table: { ...plain, ...answers } },
    overrides: Object.fromEntries(own),
  } as PieceDocument;
}

export function built(document: PieceDocument): Piece {
  const read = pieceOf(document, demoShop);
  if (!read.ok) throw new Error(read.problems.map((p) => p.message).join("; "));
  return read.piece;
}

export const tableOf = (...of: Parameters<typeof documentOf>) => built(documentOf(...of));

/** A piece whose leaf joints are otherwise than any kind would lay them out. */
export const withJoints = (piece: Piece, change: (leaf: LeafJoint) => LeafJoint): Piece => ({
  ...piece,
  joints: piece.joints.map((joint) =>
    joint.kind === "leaf" ? { ...joint, leaf: change(joint.leaf) } : joint,
  ),
});

export function found(piece: Piece, id: string, shop: Shop = demoShop): Finding {
  const finding = leafJoints(piece, shop).find((one) => one.id === id);
  if (!finding) throw new Error(`no finding ${id}`);
  return finding;
}

export const failing = (piece: Piece) =>
  leafJoints(piece, demoShop)
    .filter(({ verdict }) => verdict === "fails")
    .map(({ id }) => id);

/** Every figure's formula comes to its value, and past its limit a finding says how far. */
export function expectWorked(findings: readonly Finding[]): void {
  for (const { id, why, margin, verdict, severity, lights, says } of findings) {
    const chain = [...why, ...(margin ? [margin] : [])].flatMap(wholeChain);
    for (const one of chain) {
      if (isWorked(one))
        expect(recompute(one), `${id}: ${one.formula}`).toMatchObject({ agrees: true });
    }
    if (verdict !== "not-judged") expect(why.length, id).toBeGreaterThan(0);
    if (verdict === "fails" || verdict === "watch") expect(severity, id).toBeGreaterThan(0.99);
    expect(lights.length, id).toBeGreaterThan(0);
    expect(says, id).not.toMatch(/NaN|Infinity|undefined|^$/);
  }
  const ids = findings.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
}

/** The pin on the round-over's centre line but half a millimetre out, 3.2 mm over the underside. */
export const classic = () =>
  tableOf({ "top-thickness": "19.1 mm", "pin-out": "0.5 mm" }, { "leaf-joint.fillet": "3.2 mm" });

/** A section as plain lengths. */
export const shopSection = (joint: RuleJoint): RuleJoint =>
  Object.fromEntries(
    Object.entries(joint).map(([name, size]) => [
      name,
      typeof size === "object" ? size.value : size,
    ]),
  ) as RuleJoint;

/** A table whose leaves are joined so; undefined where its kind refuses that. */
export function tableFor(section: RuleJoint): Piece | undefined {
  const { thickness, radius, cove, setOut, crownGap, pinOut, pinUp, centreHeight, bevel } =
    section as unknown as Readonly<Record<string, number>>;
  if (thickness === undefined || radius === undefined || centreHeight === undefined)
    return undefined;
  const sizes = {
    "top.thickness": thickness,
    "leaf/front.thickness": thickness,
    "leaf/back.thickness": thickness,
    "leaf-joint.radius": radius,
    "leaf-joint.cove": cove,
    "leaf-joint.set-out": setOut,
    "leaf-joint.crown": crownGap,
    "leaf-joint.pin-out": pinOut,
    "leaf-joint.bevel": bevel,
    "leaf-joint.fillet": thickness - radius - centreHeight,
    "leaf-joint.pin-height": centreHeight + (pinUp ?? 0),
  };
  const texts = Object.entries(sizes).map(([key, size]) => [key, `${Number(size).toFixed(9)} mm`]);
  const read = pieceOf(documentOf({}, Object.fromEntries(texts)), demoShop);
  return read.ok ? read.piece : undefined;
}
