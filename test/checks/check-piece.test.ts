import { describe, expect, test } from "vitest";
import { checkPiece } from "../../src/checks/index.ts";
import { answer, demoPieces, markCut, measure, override, pieceOf } from "../../src/kinds/index.ts";
import {
  applyEdit,
  type Edit,
  type Piece,
  type PieceDocument,
  weigh,
} from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import type { Finding } from "../../src/worked/index.ts";

const demo = (): PieceDocument => {
  const [, document] = demoPieces();
  if (!document) throw new Error("there is no demo piece");
  return document;
};
const built = (document: PieceDocument): Piece => {
  const read = pieceOf(document, demoShop);
  if (!read.ok) throw new Error(read.problems.map((p) => p.message).join("; "));
  return read.piece;
};
const edited = (document: PieceDocument, ...edits: readonly Edit[]) =>
  edits.reduce((now, edit) => applyEdit(now, edit).document, document);
const own = (key: string, text: string) => override(demo(), { key, says: key }, text);
const wood = (key: string, text: string) => measure(demo(), { key, says: key }, text);
const ask = (name: string, text: string) => answer(demo(), "table", name, text);

const judged = (document: PieceDocument): readonly Finding[] => {
  const piece = built(document);
  return checkPiece(piece, weigh(piece), demoShop);
};
const found = (document: PieceDocument, id: string): Finding => {
  const finding = judged(document).find((one) => one.id === id);
  if (!finding) throw new Error(`no finding ${id}`);
  return finding;
};

test("the demo pieces have nothing that stops, worst first, and each finding is named once", () => {
  const order = ["fails", "watch", "not-judged", "ok"];
  for (const document of demoPieces()) {
    const findings = judged(document);
    expect(findings.length).toBeGreaterThan(5);
    expect(findings.filter(({ verdict }) => verdict === "fails")).toEqual([]);
    const ranks = findings.map(({ verdict }) => order.indexOf(verdict));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(new Set(findings.map(({ id }) => id)).size).toBe(findings.length);
  }
});

describe("a planted weakness is found, with its verdict and its place", () => {
  const leg = "table/leg/front-left";
  test.each<
    [
      says: string,
      edits: readonly Edit[],
      id: string,
      verdict: Finding["verdict"],
      light: string | undefined,
    ]
  >([
    [
      "a leg measured short: the table rocks",
      [wood(`${leg}.length`, "28 in")],
      "fits/feet",
      "fails",
      leg,
    ],
    [
      "a rail measured short between its shoulders",
      [own("table/rail/front.between", "44 1/2 in")],
      "fits/shoulders",
      "fails",
      "table/rail/front",
    ],
    [
      "a rail measured long between its shoulders",
      [own("table/rail/front.between", "45 1/2 in")],
      "fits/shoulders",
      "fails",
      "table/rail/front",
    ],
    [
      "a top that does not cover the frame",
      [wood("table/top.width", "25 in")],
      "fits/top",
      "watch",
      "table/rail/front",
    ],
    [
      "thin wood outside a mortise",
      [own("table/joint/front-left/long.wall", "5 mm")],
      "mortises/outer-wall",
      "watch",
      leg,
    ],
    [
      "a loose tenon",
      [own("table/joint/front-left/long.thickness", "5 mm")],
      "mortises/slack",
      "watch",
      "table/joint/front-left/long",
    ],
    [
      "a tongue too short to hold in the dry season",
      [own("table/fastening/front-1.tongue", "9 mm")],
      "seasons/top-fastening",
      "watch",
      "table/fastening/front-1",
    ],
    [
      "a button with too small a gap for the damp season",
      [own("table/fastening/front-1.gap", "1 mm"), own("table/fastening/front-1.depth", "16 mm")],
      "seasons/top-fastening",
      "watch",
      "table/fastening/front-1",
    ],
    [
      "a gap so wide that the tongue never reaches",
      [own("table/fastening/front-1.gap", "2 in")],
      "seasons/top-fastening",
      "watch",
      "table/fastening/front-1",
    ],
    [
      "rails too low for knees",
      [ask("rail-width", "6 in")],
      "people/knees",
      "watch",
      "table/rail/front",
    ],
    [
      "a light top-heavy table with a wide overhang",
      [ask("side-overhang", "9 in"), ask("leg", "1 3/4 in")],
      "stands/edge",
      "watch",
      undefined,
    ],
  ])("%s", (_, edits, id, verdict, light) => {
    expect(found(demo(), id === "fits/top" ? "fits/feet" : id).verdict).not.toBe("fails");
    const finding = found(edited(demo(), ...edits), id);
    expect(finding.verdict).toBe(verdict);
    if (light !== undefined) expect(finding.lights).toContain(light);
    expect(finding.why.length).toBeGreaterThan(0);
  });

  test("all legs cut equally short only change the height", () => {
    const names = ["front-left", "front-right", "back-left", "back-right"];
    const short = names.map((name) => wood(`table/leg/${name}.length`, "28 in"));
    expect(found(edited(demo(), ...short), "fits/feet").verdict).toBe("watch");
  });

  test("screws whose slots were made too short", () => {
    const screws = edited(
      demo(),
      ask("fastening", "screws in slots"),
      ask("rail-thickness", "1 1/8 in"),
    );
    expect(found(screws, "seasons/top-fastening").verdict).toBe("ok");
    const short = edited(screws, own("table/fastening/front-1.travel", "1 mm"));
    expect(found(short, "seasons/top-fastening")).toMatchObject({
      verdict: "watch",
      lights: ["table/fastening/front-1"],
    });
  });

  test("a cut part that is only too large can be trimmed; one that is too small cannot", () => {
    const rail = "table/rail/front";
    const cut = edited(demo(), markCut(built(demo()), rail));
    const at = (length: string) => found(edited(cut, ask("length", length)), `cut/${rail}`);
    expect(at("52 in").verdict).toBe("watch");
    expect(at("56 in").verdict).toBe("fails");
    expect(at("56 in").margin?.value).toBeCloseTo(-50.8, 6);
  });

  test("a cut part whose features the design would have otherwise is told, whatever the change", () => {
    const rail = "table/rail/front";
    const cut = edited(demo(), markCut(built(demo()), rail), markCut(built(demo()), leg));
    for (const [name, text, part] of [
      ["fastening", "screws in slots", rail],
      ["corner-blocks", "yes", rail],
      ["setback", "1/16 in", rail],
      ["haunch", "square", leg],
      ["taper-start", "3 in", leg],
      ["foot", "1 1/2 in", leg],
      ["leg-form", "square", leg],
      ["rail-width", "4 1/4 in", leg],
    ] as const) {
      const document = edited(cut, ask(name, text));
      expect(found(document, `cut/${part}`).verdict, name).toBe("fails");
      const shape = (of: PieceDocument) => {
        const found = built(of).parts.find(({ key }) => key === part);
        return JSON.stringify([found?.blank, found?.features]);
      };
      expect(shape(document), name).toBe(shape(cut));
    }
  });
});
