import { ask } from "../../asking/index.ts";
import {
  edgeReach,
  FIRM_LEAN,
  footHolding,
  LIGHT_LEAN,
  tippingLoad,
  tippingPush,
} from "../../mechanics/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import {
  assumed,
  type Caution,
  commonPractice,
  type Finding,
  given,
  Problem,
  published,
  type Worked,
} from "../../worked/index.ts";
import { type Show, topic } from "../topic.ts";

const size = { least: 1, most: 10000 };
const ISO = published(
  "ISO 7172:1988",
  "clause 5: the load acts 50 mm in from the edge",
  "secondary",
);

export const tip = topic({
  name: "tip",
  title: "Load that tips a table",
  tells: "how hard somebody may lean on an edge or end before the far feet lift",
  asks: {
    mass: ask.mass("mass of the table as it stands", {
      least: 0.1,
      most: 2000,
      example: { inch: "50 lb", mm: "23 kg" },
    }),
    feet: ask.length("between the outer edges of the feet, across", {
      ...size,
      example: { inch: '18"', mm: "460 mm" },
    }),
    top: ask.length("width of the top, across", {
      ...size,
      example: { inch: '36"', mm: "900 mm" },
    }),
    "feet-long": ask.length("between the outer edges of the feet, lengthwise", {
      ...size,
      example: { inch: '34"', mm: "860 mm" },
    }),
    "top-long": ask.length("length of the top", {
      ...size,
      example: { inch: '44"', mm: "1120 mm" },
    }),
    height: ask.length("height of the top", { ...size, example: { inch: '29"', mm: "740 mm" } }),
    offset: ask.length("centre of gravity off the middle, towards the edge leaned on", {
      least: 0,
      most: 5000,
      example: "0",
      fallback: "0",
    }),
    inset: ask.length("load in from the edge", {
      least: 0,
      most: 1000,
      example: "50 mm",
      fallback: "50 mm",
      fallbackSource: ISO,
    }),
  },
  answer(table, show) {
    const { mass, offset, inset, height } = table;
    const none = given<Mm>(
      "centre of gravity off the middle",
      mm(0),
      "mm",
      assumed("lengthwise none"),
    );
    const sides = [
      { name: "edge", way: "across", feet: table.feet, top: table.top, off: offset },
      {
        name: "end",
        way: "lengthwise",
        feet: table["feet-long"],
        top: table["top-long"],
        off: none,
      },
    ].map((side) => ({
      ...side,
      holding: footHolding(side.feet, side.off),
      reach: edgeReach(side.top, inset, side.feet),
    }));
    for (const { holding, top } of sides) {
      if (holding.value <= 0) throw fallsByItself();
      if (inset.value > top.value / 2) throw insetTooFar();
    }
    const loads = sides.flatMap(({ name, holding, reach }) =>
      reach.value > 0
        ? [
            {
              name,
              says: `load on the ${name} that tips it`,
              worked: tippingLoad(mass, holding, reach),
              purpose: "safe" as const,
            },
          ]
        : [],
    );
    const pushes = sides
      .map(({ way, holding }) => ({ way, worked: tippingPush(mass, holding, height) }))
      .sort((a, b) => a.worked.value - b.worked.value);
    const push = pushes.slice(0, 1).map(({ way, worked }) => ({
      name: "push",
      says: `level push ${way} that tips it, feet blocked`,
      worked,
      purpose: "safe" as const,
    }));
    const weakest = loads.map((l) => l.worked).sort((a, b) => a.value - b.value)[0];
    return {
      results: [...loads, ...push],
      findings: [judge(weakest, show)],
      remarks: [
        ...sides
          .filter(({ name }) => !loads.some((l) => l.name === name))
          .map(({ name }) => `A load on the ${name} lies within the feet: it does not tip there.`),
        "A corner tips no sooner than the weaker of edge and end. A raised leaf counts as the top's width, with its weight in the offset; a table on one side's gate leg, or on three feet, is another sum.",
      ],
      cautions: [tipCaution, loadPlace],
    };
  },
});

const fallsByItself = () =>
  new Problem(
    "centre-outside-feet",
    "offset",
    "The centre of gravity lies outside the feet: the table falls by itself.",
    "Spread the feet, or lighten what overhangs.",
  );

const insetTooFar = () =>
  new Problem(
    "inset-too-far",
    "inset",
    "The load would lie past the middle of the top.",
    "Give it from the edge leaned on, such as 50 mm or 2 in.",
  );

const tipCaution: Caution = {
  says: "A tipping table falls on the one who leans on it, often a child climbing. Where it stands among children, aim higher, and test the finished piece with a scale; a standard asks for tests, not sums.",
  source: commonPractice,
};

const loadPlace: Caution = {
  says: "The test for tables places its load 50 mm (2 in) in from the edge. The force it asks for was not seen here.",
  source: ISO,
};

/** No force that must be borne was seen, and our own measure only sorts, so it never `fails`. */
function judge(weakest: Worked | undefined, show: Show): Finding {
  const value = weakest?.value ?? Number.POSITIVE_INFINITY;
  const firm = show(FIRM_LEAN, "N");
  const says =
    value >= FIRM_LEAN
      ? `Pressed down, it stands to more than ${firm}, a firm lean by our own reckoning; what a standard asks for was not seen.`
      : value >= LIGHT_LEAN
        ? `Pressed down, it is light for its reach: under ${firm}. Tables with raised leaves often are.`
        : "A light lean tips it: spread the feet, add weight low down, or shorten the overhang.";
  return {
    id: "tip/edge",
    group: "Stands firm",
    verdict: value >= FIRM_LEAN ? "not-judged" : "watch",
    says,
    why: weakest ? [weakest] : [],
    lights: [],
  };
}
