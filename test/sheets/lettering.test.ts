import PDFDocument from "pdfkit";
import { describe, expect, test } from "vitest";
import { drawnLength, setFractions } from "../../src/sheets/figures.ts";
import { shortened, textLength, wrapped } from "../../src/sheets/lettering.ts";
import { mm } from "../../src/units/index.ts";
import { fonts } from "../kit/sheets.ts";

const fontWidth = (says: string, isBold: boolean): number => {
  const bytes = isBold ? fonts.bold : fonts.regular;
  const doc = new PDFDocument({ font: bytes as unknown as string });
  return doc.fontSize(10).widthOfString(says, {});
};

describe("widths of letters", () => {
  const texts = [
    "Measured from the left end, the lower edge and the show face",
    "0123456789 (12 × 34 mm) = 5.6 % ± 7° ≤ 8²",
    "Δ = d·C·max(M₂ − M, M − M₁, 0) “ρ” √ ½ — №",
    "27⁄64″",
    "1\u200911⁄16″ scant",
    "WAVE Tallow, Yew & “Ply”",
    "11\u00a0%\u00a0MC",
  ];

  test.each(texts)("%s is as long as the font sets it", (says) => {
    const real = fontWidth(says, false);
    // The font draws some pairs closer together; laying out may only be a little too generous.
    expect(textLength(says, 10)).toBeGreaterThan(real * 0.999);
    expect(textLength(says, 10)).toBeLessThan(real * 1.06);
  });

  test.each(texts)("%s in bold is no longer than it is taken to be", (says) => {
    const real = fontWidth(says, true);
    expect(textLength(says, 10, true)).toBeGreaterThan(real * 0.99);
    expect(textLength(says, 10, true)).toBeLessThan(real * 1.08);
  });

  test("a letter that is not in the table is taken for a wide one", () => {
    expect(textLength("漢", 10)).toBe(7);
  });
});

describe("breaking lines", () => {
  test("every word is kept, in order, and no line is longer than its room", () => {
    const says =
      "sloped haunch of 29⁄64″, and a-word-that-is-much-too-long-for-any-line-of-this-width";
    const lines = wrapped(says, 3, 30);
    expect(lines.length).toBeGreaterThan(3);
    expect(lines.join("").replaceAll(" ", "")).toBe(says.replaceAll(" ", ""));
    for (const line of lines) expect(textLength(line, 3)).toBeLessThanOrEqual(30);
  });

  test("a whole number is not parted from its fraction", () => {
    expect(wrapped("aaaa 1\u200941⁄64″", 3, textLength("aaaa 1", 3) + 0.1)).toEqual([
      "aaaa",
      "1\u200941⁄64″",
    ]);
  });

  test("what has no room is cut short, and says so", () => {
    expect(shortened("Breakfast table", 3, 100)).toBe("Breakfast table");
    const short = shortened("Breakfast table", 3, 12);
    expect(short.endsWith("…")).toBe(true);
    expect(textLength(short, 3)).toBeLessThanOrEqual(12);
    expect(wrapped("", 3, 10)).toEqual([]);
  });
});

describe("lengths on a drawing", () => {
  test.each([
    [31.75, "inch", "1\u20091⁄4″"],
    [9.525, "inch", "3⁄8″"],
    [50.8, "inch", "2″"],
    [31.6, "mm", "31.5"],
    [-6.35, "inch", "−1⁄4″"],
    [10.2, "inch", "13⁄32″ scant"],
  ] as const)("%s mm in %s is %s", (length, units, says) => {
    expect(drawnLength(mm(length), units, "layout")).toBe(says);
  });

  test("inches in a sentence are set alike, and other strokes are left alone", () => {
    expect(setFractions('a = 1 1/4" or 3/8" full; m/b, 5/4 board')).toBe(
      "a = 1\u20091⁄4″ or 3⁄8″ full; m/b, 5/4 board",
    );
  });
});
