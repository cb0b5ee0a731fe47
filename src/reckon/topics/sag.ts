import { ask, choice, optionally, timber } from "../../asking/index.ts";
import {
  bendingStress,
  momentUnderPoint,
  momentUnderSpread,
  sagInTheLongRun,
  sagUnderPoint,
  sagUnderSpread,
  secondMoment,
  spreadLoad,
} from "../../mechanics/index.ts";
import { type Mm, type MPa, mm, type Pct, pct, type Ratio } from "../../units/index.ts";
import { handbook, strengthByTrend } from "../../wood/index.ts";
import {
  derived,
  type Finding,
  type Given,
  type Known,
  known,
  published,
  unprovenOf,
  type Worked,
  work,
} from "../../worked/index.ts";
import { STIFFNESS_SPREAD, withInverseSpread } from "../spread.ts";
import { type Result, topic } from "../topic.ts";

const size = { least: 1, most: 10000 };

/** Sag that eyes begin to notice, and what a careful maker stays under: span over these. */
const LIMITS = published(
  "Fine Woodworking, Building Furniture (2007)",
  "p. 25, shelf sag",
  "secondary",
);
const careful = limit(600, "sag to stay under when loaded");
const seen = limit(384, "sag that eyes begin to notice");

function limit(part: number, says: string) {
  return (span: Known<Mm>): Worked<Mm> => {
    const L = known(span, "span", "mm");
    return work({
      says,
      unit: "mm",
      formula: `δ_max = L/${part}`,
      inputs: { L },
      value: mm(L.value / part),
      source: LIMITS,
    });
  };
}

export const sag = topic({
  name: "sag",
  title: "Sag of a shelf or top",
  tells: "how far a board on two supports sinks, today and after years",
  asks: {
    species: timber(),
    span: ask.length("span between supports", { ...size, example: { inch: '36"', mm: "900 mm" } }),
    depth: ask.length("front to back", { ...size, example: { inch: '11"', mm: "280 mm" } }),
    thickness: ask.length("thickness", {
      ...size,
      most: 500,
      example: { inch: '7/8"', mm: "22 mm" },
    }),
    load: ask.load("load in all, own weight included", {
      least: 0.1,
      most: 1e6,
      example: { inch: "60 lb", mm: "30 kg" },
    }),
    where: choice("where the load lies", ["spread", "middle"] as const, "spread"),
    stiffness: optionally(
      ask.stress("stiffness, if you know better than the table", {
        least: 100,
        most: 100000,
        example: { inch: "1.5e6 psi", mm: "12.5 GPa" },
      }),
    ),
    moisture: ask.moisture("moisture content", {
      least: 4,
      most: 20,
      example: "12 %",
      fallback: "12 %",
    }),
    growth: ask.number("growth under a load that stays: 2 means twice the first sag", {
      least: 1,
      most: 6,
      example: "2",
      fallback: "2",
      fallbackSource: handbook("ch. 5: creep may about equal the first deflection"),
    }),
  },
  answer({ species, span, depth, thickness, load, where, stiffness, moisture, growth }) {
    const isDry12 = moisture.value === 12;
    const at = (printed: Given<MPa>, property: "stiffness" | "bending") =>
      isDry12 ? printed : strengthByTrend(printed, property, moisture);
    const E = stiffness ?? at(species.stiffness, "stiffness");
    const I = secondMoment(depth, thickness);
    const isSpread = where === "spread";
    const w = spreadLoad(load, span);
    const first = isSpread ? sagUnderSpread(w, span, E, I) : sagUnderPoint(load, span, E, I);
    const M = isSpread ? momentUnderSpread(w, span) : momentUnderPoint(load, span);
    const years = sagInTheLongRun(first, growth);
    const used = shareOfStrength(
      bendingStress(M, thickness, I),
      at(species.bendingStrength, "bending"),
    );
    const sagResult = (name: string, sag: Worked<Mm>): Result =>
      stiffness
        ? { name, worked: sag, purpose: "about" }
        : withInverseSpread(name, sag, STIFFNESS_SPREAD);
    const results = [sagResult("sag", first), sagResult("after-years", years)];
    return {
      results: [...results, { name: "strength-used", worked: used, purpose: "about" }],
      findings: [
        judgeStrength(used),
        judgeLooks(first, years, span, stiffness ? undefined : STIFFNESS_SPREAD),
      ],
      remarks: [
        ...(years.value > span.value / 10
          ? [
              "The sag is past a tenth of the span: bending sums no longer hold, it is simply far too much.",
            ]
          : []),
        ...(span.value < 14 * thickness.value
          ? ["So short and thick a board sags a little more than this, by shear."]
          : []),
        "Reckoned as a loose board on two supports; held ends, a front lip or a back make it stiffer.",
        ...(stiffness && !isDry12
          ? ["The moisture is used for the strength only: the stiffness is yours."]
          : []),
      ],
    };
  },
});

/** How much of the wood's breaking strength the load uses: a plainer figure than the stress. */
function shareOfStrength(stress: Worked<MPa>, strength: Known<MPa>): Worked<Pct> {
  const f = known(strength, "bending strength", "N/mm²");
  return work({
    says: "of its breaking strength used",
    unit: "%",
    formula: "u = 100·σ/f",
    inputs: { σ: stress, f },
    value: pct((100 * stress.value) / f.value),
    source: derived("definition"),
    notes: ["the strength is the mean of clear specimens under a short load"],
  });
}

/** Share of the short-load strength that a load of ten years breaks at, about. */
const LASTING = 60;
const HALF_OF_IT = 30;

/** What will break must not be built; the strength is the mean of clear wood, a board may have less. */
function judgeStrength(used: Worked<Pct>): Finding {
  const isKnown = unprovenOf(used).length === 0;
  const verdict =
    used.value >= LASTING ? "fails" : used.value >= HALF_OF_IT || !isKnown ? "watch" : "ok";
  const says = {
    fails:
      "It breaks, at once or in time: a load that stays breaks wood at about six tenths of its strength.",
    watch:
      used.value < HALF_OF_IT
        ? "It bears the load, so far as a strength from memory can tell."
        : "More than half of what it bears for years, and boards with knots or slanting grain bear less.",
    ok: "It bears the load.",
  }[verdict];
  return { id: "sag/strength", group: "Strength", verdict, says, why: [used], lights: [] };
}

/** A sag that shows is poor, not unsafe, so it never `fails`; what rests on memory is watched. */
function judgeLooks(
  first: Worked<Mm>,
  years: Worked<Mm>,
  span: Known<Mm>,
  spread: Given<Ratio> | undefined,
): Finding {
  const start = careful(span);
  const notice = seen(span);
  const soft = 1 / (1 - (spread?.value ?? 0));
  const isFine = first.value <= start.value && years.value <= notice.value;
  const isFineSoft = first.value * soft <= start.value && years.value * soft <= notice.value;
  const isKnown = unprovenOf(years).length === 0;
  const says = !isFine
    ? years.value <= notice.value
      ? "More than a careful maker allows when loaded, but hardly noticed."
      : "The eye will see it in time: thicken it, shorten the span, or add a lip."
    : !isFineSoft
      ? "A board of middling stiffness looks straight; a soft one will not."
      : isKnown
        ? "It looks straight, today and after years, a soft board too."
        : "It looks straight, so far as a stiffness from memory can tell.";
  return {
    id: "sag/looks",
    group: "Strength",
    verdict: isFineSoft && isKnown ? "ok" : "watch",
    says,
    why: [first, years, start, notice],
    lights: [],
  };
}
