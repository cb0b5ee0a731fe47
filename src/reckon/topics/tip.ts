import { tippingLoadAt, tippingPush } from "../../mechanics/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import {
  type Caution,
  commonPractice,
  derived,
  type Finding,
  given,
  published,
  type Worked,
} from "../../worked/index.ts";
import { ask } from "../question.ts";
import { topic } from "../topic.ts";

const size = { least: 1, most: 10000 };
const ISO = published("ISO 7172:1988", "clause 5: the load acts 50 mm in from the edge");

/** About the least anybody leans with; not a standard's figure. */
const LIGHT_LEAN_N = 100;
const FIRM_LEAN_N = 200;

export const tip = topic({
  name: "tip",
  title: "Load that tips a table",
  tells: "how hard somebody may lean on an edge or corner before the far feet lift",
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
    }),
  },
  answer(table) {
    const across = table.feet.value / 2;
    const along = table["feet-long"].value / 2;
    const corner = (x: number, y: number) => ({ x: mm(x), y: mm(y) });
    const stance = {
      feet: [
        corner(-across, -along),
        corner(across, -along),
        corner(across, along),
        corner(-across, along),
      ],
      mass: table.mass,
      centre: corner(table.offset.value, 0),
    };
    const reachX = table.top.value / 2 - table.inset.value;
    const reachY = table["top-long"].value / 2 - table.inset.value;
    const places = [
      ["edge", corner(reachX, 0)],
      ["end", corner(0, reachY)],
      ["corner", corner(reachX, reachY)],
    ] as const;
    const loads = places.flatMap(([name, at]) => {
      const worked = tippingLoadAt(stance, at);
      return worked ? [{ name, says: `load on the ${name} that tips it`, worked }] : [];
    });
    const holding = given<Mm>(
      "foot line to centre of gravity",
      mm(across - table.offset.value),
      "mm",
      derived("half the feet, less the offset"),
    );
    const weakest = loads.map((l) => l.worked).sort((a, b) => a.value - b.value)[0];
    return {
      results: [...loads, { name: "push", worked: tippingPush(table.mass, holding, table.height) }],
      findings: [judge(weakest)],
      remarks: [
        ...places
          .filter(([name]) => !loads.some((l) => l.name === name))
          .map(([name]) => `A load on the ${name} lies within the feet: it does not tip there.`),
        "Put the load where the standard does, 50 mm in. A raised leaf counts as the top's width, with its weight in the offset.",
      ],
      cautions: [tipCaution, loadPlace],
    };
  },
});

const tipCaution: Caution = {
  says: "A tipping table falls on the one who leans on it, often a child climbing. Where it stands among children, aim higher, and test the finished piece with a scale; a standard asks for tests, not sums.",
  source: commonPractice,
};

const loadPlace: Caution = {
  says: "The load is taken 50 mm in from the edge, as the stability test for tables places it. The force that test asks for was not seen here.",
  source: ISO,
};

/** A force without a seen requirement is at most watched, unless next to nothing tips it. */
function judge(weakest: Worked | undefined): Finding {
  const value = weakest?.value ?? Number.POSITIVE_INFINITY;
  const says =
    value >= FIRM_LEAN_N
      ? "It stands to more than a firm lean, about 200 N or 20 kg by our own reckoning; the force a standard asks for was not seen."
      : value >= LIGHT_LEAN_N
        ? "Light for its reach: tables with raised leaves are often so."
        : "A light lean tips it: spread the feet, add weight low down, or shorten the overhang.";
  return {
    id: "tip/edge",
    group: "Stands firm",
    verdict: value >= FIRM_LEAN_N ? "not-judged" : "watch",
    says,
    ...(weakest ? { margin: weakest } : {}),
    why: weakest ? [weakest] : [],
    lights: [],
  };
}
