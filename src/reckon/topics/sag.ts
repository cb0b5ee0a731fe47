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
import { type Mm, type MPa, mm, type Pct, pct } from "../../units/index.ts";
import { strengthByTrend } from "../../wood/index.ts";
import {
  derived,
  type Finding,
  type Known,
  known,
  published,
  type Worked,
  work,
} from "../../worked/index.ts";
import { ask, choice, optionally, timber } from "../question.ts";
import { topic } from "../topic.ts";

const size = { least: 1, most: 10000 };

/** Sag that eyes begin to notice, and what a careful maker stays under: span over these. */
const LIMITS = published("Fine Woodworking, Building Furniture (2007)", "p. 25, shelf sag");
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
    growth: ask.number("growth under a load that stays", {
      least: 1,
      most: 6,
      example: "2",
      fallback: "2",
    }),
  },
  answer({ species, span, depth, thickness, load, where, stiffness, moisture, growth }) {
    const isTable = stiffness === undefined;
    const E =
      stiffness ??
      (moisture.value === 12
        ? species.stiffness
        : strengthByTrend(species.stiffness, "stiffness", moisture));
    const I = secondMoment(depth, thickness);
    const isSpread = where === "spread";
    const w = spreadLoad(load, span);
    const first = isSpread ? sagUnderSpread(w, span, E, I) : sagUnderPoint(load, span, E, I);
    const M = isSpread ? momentUnderSpread(w, span) : momentUnderPoint(load, span);
    const lasting = sagInTheLongRun(first, growth);
    return {
      results: [
        { name: "sag", worked: first },
        { name: "after-years", worked: lasting },
        {
          name: "strength-used",
          worked: shareOfStrength(bendingStress(M, thickness, I), species.bendingStrength),
        },
      ],
      findings: [judge(first, lasting, span)],
      remarks: [
        "Reckoned as a loose board on two supports; held ends, a front lip or a back make it stiffer.",
        ...(isTable
          ? ["Stiffness is the mean of clear specimens; a board may be a fifth softer or stiffer."]
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
    notes: [
      "mean of clear specimens under a short load; under a load of ten years about six tenths of it",
    ],
  });
}

/** Looks and years decide; a shelf that sags visibly is poor, not unsafe, so it never `fails`. */
function judge(first: Worked<Mm>, lasting: Worked<Mm>, span: Known<Mm>): Finding {
  const start = careful(span);
  const notice = seen(span);
  const isFine = first.value <= start.value && lasting.value <= notice.value;
  return {
    id: "sag/looks",
    group: "Strength",
    verdict: isFine ? "ok" : "watch",
    says: isFine
      ? "It looks straight, today and after years."
      : lasting.value <= notice.value
        ? "More than a careful maker allows when loaded, but hardly noticed."
        : "The eye will see it in time: thicken it, shorten the span, or add a lip.",
    margin: start,
    why: [first, lasting, start, notice],
    lights: [],
  };
}
