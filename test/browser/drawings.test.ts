import fc from "fast-check";
import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { onSide, type Question } from "../../src/asking/index.ts";
import { reckon, type Topic, topics } from "../../src/reckon/index.ts";
import { TopicDrawing } from "../../src/web/sums/drawings/index.tsx";
import { PLATE_HEIGHT, PlateSizing, plateFor } from "../../src/web/sums/drawings/plate.tsx";
import type { Given } from "../../src/worked/index.ts";

/** Units as the readers want them; what is not here is read by its own name. */
const written: Readonly<Record<string, string>> = { "1": "", pieces: "", "°C": "C", "°": "" };

/** A quantity from a fiftieth of a question's example to fifty times it. */
function quantities(question: Question<unknown>): fc.Arbitrary<string> {
  const read = question.read(onSide(question.example, "mm"), "mm", false);
  if (!read.ok) throw new Error(`the example of ${question.says} cannot be read`);
  const { value, unit } = read.value as Given;
  const write = (times: number) =>
    unit === "pieces" ? String(Math.ceil(value * times)) : (value * times).toFixed(4);
  return fc
    .double({ min: -1.7, max: 1.7, noNaN: true })
    .map((power) => `${write(10 ** power)} ${written[unit] ?? unit}`);
}

type Texts = Record<string, string | undefined>;

const textsOf = (topic: Topic): fc.Arbitrary<Texts> =>
  fc.record(
    Object.fromEntries(
      Object.entries(topic.asks).map(([name, q]): [string, fc.Arbitrary<string | undefined>] => {
        if (q.kind === "choice") return [name, fc.constantFrom(...q.choices)];
        if (q.kind === "species") return [name, fc.constantFrom("white oak", "redwood")];
        return [name, q.optional ? fc.option(quantities(q), { nil: undefined }) : quantities(q)];
      }),
    ),
  );

const plates = [plateFor(344, 220, 13), plateFor(820, 342, 15)];

test.each(topics.map((topic) => [topic.name, topic] as const))(
  "the drawing of %s holds whatever can be reckoned: figures only, lettering on the plate",
  (name, topic) => {
    let drawn = 0;
    const hold = (texts: Texts) => {
      const good = reckon(topic, texts, "inch", (n) => n);
      if (!good.ok) return;
      drawn++;
      const drawing = createElement(TopicDrawing, {
        topic: name,
        good,
        units: "inch",
        touched: undefined,
      });
      for (const size of plates) {
        const markup = renderToStaticMarkup(createElement(PlateSizing, { value: size }, drawing));
        expect(markup).not.toMatch(/NaN|Infinity|undefined/);
        const places = [...markup.matchAll(/<text x="([^"]+)" y="([^"]+)"/g)];
        expect(places.length).toBeGreaterThan(0);
        for (const [, x, y] of places) {
          expect(Number(x)).toBeGreaterThanOrEqual(0);
          expect(Number(x)).toBeLessThanOrEqual(size.width);
          expect(Number(y)).toBeGreaterThan(0);
          expect(Number(y)).toBeLessThanOrEqual(PLATE_HEIGHT);
        }
      }
    };
    fc.assert(fc.property(textsOf(topic), hold), { numRuns: 500 });
    // Chance must have found answers, or nothing was tried.
    expect(drawn).toBeGreaterThan(0);
  },
);
