import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { blankDrawing } from "../../src/sheets/drawing.ts";
import { type Drawing, papers, type Sheet, writeSvg } from "../../src/sheets/index.ts";
import { lettering } from "../../src/sheets/lettering.ts";
import { writeCsv } from "../../src/sheets/writers/csv.ts";
import { deg, mm } from "../../src/units/index.ts";
import { markupFaults } from "../kit/markup.ts";
import { demos, planned } from "../kit/sheets.ts";

const sheetWith = (drawing: Drawing): Sheet => ({
  id: "one",
  paper: papers.a4,
  number: 1,
  of: 1,
  placed: [{ drawing, at: [20, 50] }],
  title: {
    ...{ piece: '<b>table</b> & "co"', client: "", shows: "a < b", timber: "oak", date: "today" },
    ...{ scale: "1:1", units: "mm", isDemo: false },
  },
});

describe("SVG", () => {
  test.each(demos.map((demo) => [demo.piece.document.name, demo] as const))(
    "every sheet of %s is well formed, has no script and each id once",
    (_, demo) => {
      for (const sheet of planned(demo).sheets) {
        const svg = writeSvg(sheet);
        expect(markupFaults(svg)).toEqual([]);
        expect(svg).not.toMatch(/<script|onload|href|NaN|undefined/);
        const ids = [...svg.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(ids.every((id) => /^[a-z][\w.-]*$/.test(id ?? ""))).toBe(true);
      }
    },
  );

  test("the check itself finds what is not well formed", () => {
    for (const bad of ["<a><b></a></b>", "<a>", "<a b=c/>", "<a>&x</a>", "<a/><b/>", '<a b="<"/>'])
      expect(markupFaults(bad), bad).not.toEqual([]);
    expect(markupFaults('<?xml version="1.0"?><a b="&lt;">x &amp; y<c/></a>')).toEqual([]);
  });

  test("markup in names is text, and what XML cannot hold is replaced", () => {
    const texts = [lettering([0, 0], "<b>leg</b> & 'co' \u0000\uD800")];
    const svg = writeSvg(sheetWith({ ...blankDrawing("d", "x", 1), texts }));
    expect(svg).toContain("&lt;b&gt;leg&lt;/b&gt; &amp; &#39;co&#39; \uFFFD\uFFFD<");
    expect(svg).toContain("&lt;b&gt;table&lt;/b&gt; &amp; &quot;co&quot;: a &lt; b");
    expect(markupFaults(svg)).toEqual([]);
  });

  test("is drawn in millimetres from the upper left corner, at its scale", () => {
    const svg = writeSvg(
      sheetWith({
        ...blankDrawing("d", "lines", 10),
        strokes: {
          visible: [{ shape: "line", from: [0, 0], to: [1234.5678, 100] }],
          hidden: [
            { shape: "arc", centre: [0, 0], radius: mm(100), from: deg(0), to: deg(90) },
            { shape: "arc", centre: [0, 0], radius: mm(50), from: deg(0), to: deg(360) },
          ],
        },
      }),
    );
    expect(svg).toContain('width="297mm" height="210mm" viewBox="0 0 297 210"');
    expect(svg).toContain('d="M20 160 L143.457 150" stroke="#1e2320" stroke-width="0.5"');
    expect(svg).toContain('d="M30 160 A10 10 0 0 0 20 150"');
    expect(svg).toContain('<circle cx="20" cy="160" r="5"');
    expect(svg).toContain('stroke-dasharray="2 1"');
  });

  test("a number that is none is a fault, not a drawing", () => {
    const strokes = { visible: [{ shape: "line", from: [0, 0], to: [Number.NaN, 1] } as const] };
    expect(() => writeSvg(sheetWith({ ...blankDrawing("d", "x", 1), strokes }))).toThrow(/NaN/);
  });
});

describe("CSV", () => {
  const rows = [
    ["mark", 'size 1 1/2"', "a, b"],
    ["two\r\nlines", "", "plain"],
    ["é № ½", " spaced ", "''"],
  ];

  test("reads back as it was, quotes, commas and line ends within cells too", () => {
    expect(parse(writeCsv(rows))).toEqual(rows);
  });

  test("what a spreadsheet would take for a formula is made text; figures stay figures", () => {
    expect(writeCsv([["=1+1", "+2", "-3", "@x", -4]])).toBe("'=1+1,'+2,'-3,'@x,-4\r\n");
  });

  test.each(["inch", "mm"] as const)("the cut list in %s holds every row's sizes", (units) => {
    for (const demo of demos) {
      const [head, ...body] = parse(planned(demo, { units }).csv) as string[][];
      const { rows: listed } = demo.cutList;
      expect(head?.[4]).toBe(`finished length [${units === "inch" ? "in" : "mm"}]`);
      expect(body).toHaveLength(listed.length);
      for (const [i, row] of listed.entries()) {
        const size = Number(body[i]?.[4]) * (units === "inch" ? 25.4 : 1);
        expect(Math.abs(size - row.finished.length)).toBeLessThan(0.006);
        expect(body[i]?.[0]).toBe(row.marks.join(" "));
      }
    }
  });
});
