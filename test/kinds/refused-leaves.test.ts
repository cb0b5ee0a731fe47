import { describe, expect, test } from "vitest";
import { kindNamed, newDocument, pieceOf, Refusal } from "../../src/kinds/index.ts";
import { applyEdit, type Piece, type PieceDocument, posedAt } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { createSolids } from "../../src/solid/index.ts";
import { createWorkup } from "../../src/workup/index.ts";
import { kernel } from "../kit/solids.ts";

type Texts = Readonly<Record<string, string>>;

const document = (answers: Texts, own: Texts = {}, kind = "drop-leaf-table"): PieceDocument => {
  const fresh = newDocument(kindNamed(kind), "Refused", "mm");
  const table = { ...fresh.assemblies.table, ...answers, kind };
  return { ...fresh, assemblies: { table }, overrides: own };
};

/** Codes of its refusals, each mended by its own remedy in turn, until it can be made. */
function mended(refused: PieceDocument): readonly string[] {
  const codes: string[] = [];
  for (let now = refused; codes.length < 12; ) {
    const outcome = createWorkup(demoShop)(now);
    if (outcome.ok) return codes;
    const [first] = outcome.problems;
    if (!(first instanceof Refusal)) throw new Error(`no remedy: ${first?.message}`);
    codes.push(first.code);
    now = applyEdit(now, { says: "mend", changes: [first.mend] }).document;
  }
  return codes;
}

describe("sizes of the maker's own that leave no wood are refused, and one remedy mends each", () => {
  test.each([
    [
      "a leaf planed away over its cove",
      { "table/leaf/front.thickness": "16 mm" },
      "leaf-too-thin",
    ],
    ["a leaf narrower than a plate", { "table/leaf/back.width": "40 mm" }, "leaf-too-narrow"],
    ["a leaf too short for two hinges", { "table/leaf/back.length": "60 mm" }, "leaf-too-short"],
    [
      "a cove far larger than its round-over",
      { "table/leaf-joint.cove": "18 mm" },
      "cove-too-large",
    ],
    ["a top narrower than its frame", { "table/top.width": "340 mm" }, "top-too-small"],
    ["a top shorter than its frame", { "table/top.length": "900 mm" }, "top-too-small"],
  ])("%s", (_, own, code) => {
    expect(mended(document({}, own))).toEqual([code]);
  });

  test("a plain top narrower than its frame", () => {
    const own = { "table/top.width": "300 mm" };
    expect(mended(document({}, own, "plain-table"))).toEqual(["top-too-small"]);
  });

  test("a tail for which there is no room, nor for one short enough", () => {
    const answers = { length: "900 mm", "arm-reach": "210 mm", "corner-blocks": "yes" };
    const codes = mended(document(answers, { "table/arms.tail": "100 mm" }));
    expect(codes[0]).toBe("no-room-for-arms");
    expect(codes.length).toBeLessThan(4);
  });

  test("a thin plate does not lift a pin that stands on its own face", () => {
    const answers = { hinge: "back flap 38", mounting: "on the face" };
    const codes = mended(document(answers, { "table/leaf-joint.plate": "2.5 mm" }));
    expect(codes).toEqual(["pin-outside"]);
  });
});

describe("a hanging leaf", () => {
  const built = (answers: Texts): Piece => {
    const read = pieceOf(document(answers), demoShop);
    if (!read.ok) throw new Error(read.problems.map((p) => p.message).join(" "));
    return read.piece;
  };
  const leafOf = ({ motions }: Piece) => motions.find(({ kind }) => kind === "leaf");
  const solids = createSolids(kernel);
  /** Pairs with wood in one place, the leaf turned by so much. */
  const met = ({ parts, motions }: Piece, turn: number) => {
    const leaf = leafOf({ motions } as Piece);
    return solids.interference(posedAt(parts, motions, { [leaf?.key ?? ""]: turn as never }));
  };

  test("hangs free where the legs stand well behind it", () => {
    const [near, far] = [built({ "side-overhang": "40 mm" }), built({ "side-overhang": "60 mm" })];
    expect(leafOf(near)?.most).toBe(leafOf(far)?.most);
    expect(leafOf(near)?.most).toBeGreaterThan(92);
  });

  test("leans on legs that stand close behind it, and just touches them", () => {
    const piece = built({ "side-overhang": "6 mm" });
    const most = leafOf(piece)?.most ?? Number.NaN;
    expect(most).toBeGreaterThan(90);
    expect(most).toBeLessThan(92);
    expect(met(piece, most)).toEqual([]);
    expect(met(piece, most + 0.05).map(({ a }) => a)).toEqual([
      "table/leg/front-left",
      "table/leg/front-right",
    ]);
  });
});
