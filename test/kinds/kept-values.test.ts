import { describe, expect, test } from "vitest";
import { checkPiece } from "../../src/checks/index.ts";
import {
  answer,
  demoPieces,
  markCut,
  measure,
  override,
  pieceOf,
  turnTo,
  unmarkCut,
} from "../../src/kinds/index.ts";
import {
  applyEdit,
  documentText,
  type Edit,
  type Mortise,
  type Piece,
  type PieceDocument,
  weigh,
} from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { mm } from "../../src/units/index.ts";
import { pieceFaults } from "../kit/piece-faults.ts";

const document = (): PieceDocument => {
  const [, demo] = demoPieces();
  if (!demo) throw new Error("there is no demo piece");
  return demo;
};
const built = (doc: PieceDocument): Piece => {
  const read = pieceOf(doc, demoShop);
  if (!read.ok) throw new Error(read.problems.map((p) => p.message).join("; "));
  return read.piece;
};
const edited = (doc: PieceDocument, ...edits: readonly Edit[]) =>
  edits.reduce((now, edit) => applyEdit(now, edit).document, doc);
const valueAt = (piece: Piece, key: string) => {
  const value = piece.values.find((v) => v.key === key);
  if (!value) throw new Error(`no value ${key}`);
  return value;
};
const partAt = (piece: Piece, key: string) => {
  const part = piece.parts.find((p) => p.key === key);
  if (!part) throw new Error(`no part ${key}`);
  return part;
};

describe("a value of the maker's own", () => {
  const key = "table/tenons/long.length";
  test("stands in place of the computed one, in all joints it speaks of, and can be taken back", () => {
    const before = document();
    const own = edited(before, override(before, valueAt(built(before), key), "1 in"));
    const piece = built(own);
    expect(valueAt(piece, key)).toMatchObject({ stands: "override", inForce: 25.4 });
    expect(valueAt(piece, key).computed.value).not.toBe(25.4);
    expect(valueAt(piece, "table/joint/back-right/long.length").inForce).toBe(25.4);
    expect(pieceFaults(piece)).toEqual([]);
    const back = edited(own, override(own, valueAt(piece, key)));
    expect(documentText(back)).toBe(documentText(before));
  });
});

describe("a measured value", () => {
  test("moves everything after it", () => {
    const before = document();
    const key = "table/rail/front.thickness";
    const doc = edited(before, measure(before, valueAt(built(before), key), "20 mm"));
    const [was, is] = [built(before), built(doc)];
    expect(partAt(is, "table/rail/front").blank.thickness).toBe(20);
    expect(partAt(is, "table/rail/back").blank.thickness).toBe(
      partAt(was, "table/rail/back").blank.thickness,
    );
    const wall = "table/joint/front-left/long.wall";
    expect(valueAt(is, wall).inForce).toBeCloseTo(
      valueAt(was, wall).inForce - (22.225 - 20) / 2,
      9,
    );
    expect(pieceFaults(is)).toEqual([]);
  });
});

describe("what is cut", () => {
  const leg = "table/leg/front-left";
  test("keeps its sizes and its mortises whatever the design does, and what fits it follows the wood", () => {
    const before = document();
    const cut = edited(before, markCut(built(before), leg));
    expect(built(cut).parts).toEqual(built(before).parts);
    const changed = edited(
      cut,
      answer(cut, "table", "rail-thickness", "1 in"),
      answer(cut, "table", "leg", "2 1/4 in"),
    );
    const [was, is] = [built(before), built(changed)];
    expect(partAt(is, leg).blank.width).toBeCloseTo(partAt(was, leg).blank.width, 6);
    const mortise = (piece: Piece) =>
      partAt(piece, leg).features.find((f): f is Mortise => f.key === "mortise-long");
    expect(mortise(is)?.across[0]).toBeCloseTo(mortise(was)?.across[0] ?? 0, 6);
    expect(mortise(is)?.depth).toBeCloseTo(mortise(was)?.depth ?? 0, 6);
    // The rail is not cut yet: its tenon is made to the mortise that is.
    expect(pieceFaults(is).filter((fault) => fault.includes("front-left/long"))).toEqual([]);
    const other = partAt(is, "table/leg/back-right");
    expect(other.blank.width).toBeCloseTo(57.15, 6);
  });

  test("is told where the design asks otherwise now, and follows it again once taken out", () => {
    const before = document();
    const cut = edited(before, markCut(built(before), leg));
    expect(
      checkPiece(built(cut), weigh(built(cut)), demoShop).filter((f) => f.verdict === "fails"),
    ).toEqual([]);
    const changed = edited(cut, answer(cut, "table", "height", "31 in"));
    const piece = built(changed);
    const [first] = checkPiece(piece, weigh(piece), demoShop);
    expect(first).toMatchObject({ verdict: "fails", id: `cut/${leg}`, lights: [leg] });
    const anew = edited(changed, unmarkCut(piece, leg));
    expect(
      checkPiece(built(anew), weigh(built(anew)), demoShop).some((f) => f.verdict === "fails"),
    ).toBe(false);
  });
});

test("entries whose key names nothing any more are kept and shown", () => {
  const doc: PieceDocument = {
    ...document(),
    overrides: { "table/fastening/front-99.tongue": "20 mm" },
    cut: {
      "table/shelf": {
        length: mm(1000),
        width: mm(200),
        thickness: mm(20),
        features: [],
        values: {},
      },
    },
  };
  const piece = built(doc);
  expect(piece.strays.map((s) => s.key)).toEqual([
    "table/fastening/front-99.tongue",
    "table/shelf",
  ]);
  expect(
    checkPiece(piece, weigh(piece), demoShop).filter((f) => f.id.startsWith("stray/")),
  ).toHaveLength(2);
});

test("turning a piece to the other side changes no size of it, and turns back to the byte", () => {
  const bare: PieceDocument = {
    ...document(),
    assemblies: { table: { kind: "plain-table", length: "54", leg: "2", height: "29.25" } },
    overrides: { "table/tenons/long.upper": "0.75" },
  };
  const turned = edited(bare, turnTo(bare, "mm"));
  expect(turned.assemblies.table).toMatchObject({ length: "54 in", leg: "2 in" });
  expect(turned.overrides).toEqual({ "table/tenons/long.upper": "0.75 in" });
  expect(built(turned).parts).toEqual(built(bare).parts);
  const { inverse } = applyEdit(bare, turnTo(bare, "mm"));
  expect(documentText(edited(turned, inverse))).toBe(documentText(bare));
});
