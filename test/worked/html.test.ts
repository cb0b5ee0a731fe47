import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mm } from "../../src/units/index.ts";
import { given, printHtml, published, work } from "../../src/worked/index.ts";
import { answer } from "./sample.ts";

/** Well-formed means: every tag closed in its order, and nothing but the five escapes behind an &. */
function wellFormed(html: string): boolean {
  const open: string[] = [];
  for (const [, close, name = ""] of html.matchAll(/<(\/?)([a-z]+)(?: [a-z-]+="[^"<>]*")*>/g)) {
    if (close === "") open.push(name);
    else if (open.pop() !== name) return false;
  }
  const rest = html.replace(/<\/?[a-z]+(?: [a-z-]+="[^"<>]*")*>/g, "");
  return open.length === 0 && !/[<>"']/.test(rest) && !/&(?!(?:amp|lt|gt|quot|#39);)/.test(rest);
}

describe("as HTML", () => {
  test("every step is an item that tells its depth", () => {
    const html = printHtml(answer, "mm");
    expect(wellFormed(html)).toBe(true);
    expect(html.match(/<li data-depth="\d">/g)).toEqual(
      [0, 1, 2, 2].map((d) => `<li data-depth="${d}">`),
    );
    for (const text of ["the answer", "a first note", "A book, p. 7, from memory", "a = L·q"]) {
      expect(html).toContain(text);
    }
  });

  test("a text of any kind stays text", () => {
    const hostile = `<script>alert("1")</script>&amp;<img src=x onerror='y'>`;
    const texts = fc.oneof(
      fc.constant(hostile),
      fc.string({ unit: fc.constantFrom(..."<>&\"'/= ab;#3") }),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const source = published(text, text, "secondary");
        const inner = given(text, mm(1), "mm", source);
        const worked = work({
          says: text,
          unit: "mm",
          formula: `x = ${text}`,
          inputs: { [text]: inner },
          value: mm(1),
          source,
          notes: [text],
        });
        const html = printHtml(worked, "mm");
        expect(wellFormed(html)).toBe(true);
        const names = [...html.matchAll(/<([a-z]+)/g)].map(([, name]) => name);
        expect(new Set(names)).toEqual(new Set(["ol", "li", "p", "i", "b", "span", "cite"]));
      }),
    );
  });

  test("the check for being well-formed can fail", () => {
    for (const bad of ["<p>", "<p><b></p></b>", "a & b", "a < b", 'a "', "<p onclick='x'></p>"]) {
      expect(wellFormed(bad), bad).toBe(false);
    }
    expect(wellFormed('<ol class="a"><li>1 &lt; 2</li></ol>')).toBe(true);
  });
});
