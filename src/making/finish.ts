import {
  type Count,
  type Coverage,
  coverage,
  type Litres,
  litres,
  type Mm,
  type Pct,
  type SquareM,
  squareM,
} from "../units/index.ts";
import {
  type Caution,
  commonPractice,
  derived,
  type Given,
  given,
  type Known,
  known,
  published,
  type Worked,
  work,
} from "../worked/index.ts";

/** Kinds of finish as far as their amount goes. */
export type FinishKind = "varnish" | "water-borne" | "oil" | "hard-wax oil" | "paint";

const MEMORY = published("Finish makers' data sheets", "usual spreading rates", "memory");

/** Square metres one litre covers in a coat, least and most. */
const rates: Readonly<Record<FinishKind, readonly [number, number]>> = {
  varnish: [10, 12],
  "water-borne": [10, 12],
  oil: [8, 12],
  "hard-wax oil": [24, 40],
  paint: [10, 10],
};
export const finishKinds = Object.keys(rates) as readonly FinishKind[];

/**
 * What a litre of finish covers in one coat.
 *
 * @param kind  of finish
 * @param end  least or most of the range
 */
export function spreadingRate(kind: FinishKind, end: "least" | "most"): Given<Coverage> {
  const rate = rates[kind][end === "least" ? 0 : 1];
  return given(`coverage of ${kind}, ${end}`, coverage(rate), "m²/l", MEMORY);
}

/**
 * Surface of a panel: both faces and all four edges.
 *
 * @param length  above 0 [mm]
 * @param width  above 0 [mm]
 * @param thickness  0 or more [mm]
 * @param pieces  how many panels [pieces]
 * @returns surface [m²]
 */
export function panelSurface(
  length: Known<Mm>,
  width: Known<Mm>,
  thickness: Known<Mm>,
  pieces: Known<Count>,
): Worked<SquareM> {
  const L = known(length, "length", "mm");
  const w = known(width, "width", "mm");
  const t = known(thickness, "thickness", "mm");
  const n = known(pieces, "how many", "pieces");
  return work({
    says: "surface, faces and edges",
    unit: "m²",
    formula: "Q = n·2·(L·w + L·t + w·t) / 10⁶",
    inputs: { n, L, w, t },
    value: squareM(
      (n.value * 2 * (L.value * w.value + L.value * t.value + w.value * t.value)) / 1e6,
    ),
    source: derived("geometry"),
  });
}

/**
 * Amount of finish for a surface.
 *
 * @param surface  to cover, 0 or more [m²]
 * @param coats  how many [pieces]
 * @param rate  what a litre covers in one coat, above 0 [m²/l]
 * @param waste  left in brush, pad and tin [%]
 * @returns amount [l]
 */
export function finishAmount(
  surface: Known<SquareM>,
  coats: Known<Count>,
  rate: Known<Coverage>,
  waste: Known<Pct>,
): Worked<Litres> {
  const Q = known(surface, "surface", "m²");
  const n = known(coats, "coats", "pieces");
  const r = known(rate, "coverage of a litre", "m²/l");
  const z = known(waste, "left in brush and tin", "%");
  return work({
    says: "finish for all coats",
    unit: "l",
    formula: "V = (n·Q/r)·(1 + z/100)",
    inputs: { n, Q, r, z },
    value: litres(((n.value * Q.value) / r.value) * (1 + z.value / 100)),
    source: derived("arithmetic"),
  });
}

const OILY_RAGS: Caution = {
  says: "Rags with oil in them heat by themselves and can catch fire within hours: spread them flat in one layer outdoors till hard, or drown them in a lidded metal can. Treat every oily rag so, tung and varnish too.",
  source: published(
    "Self-heating of oily rags",
    "a university workshop's safety page and a finishing column",
    "secondary",
  ),
};

const SOLVENTS: Caution = {
  says: "Solvents: fresh air, no sparks, no pilot flame. Employers keep finishing rags in approved metal cans, emptied daily. The finish maker's sheet and local codes come first.",
  source: published("Washington WAC 296-24-37013(3)", "twin of 29 CFR 1910.107(g)(3)", "secondary"),
};

const WATER: Caution = {
  says: "Fresh air while it dries, and off the skin; some hold solvents or hardeners all the same. The finish maker's sheet comes first.",
  source: commonPractice,
};

const PAINT: Caution = {
  says: "Oil paint: its rags heat by themselves, spread them flat outdoors till hard. Furniture paint must be free of lead; old paint is tested before it is sanded.",
  source: published("16 CFR 1303", "lead in paint, a CPSC page", "secondary"),
};

/** What stands beside an amount of finish: oily rags where there is oil, solvents where there are. */
export function finishCautions(kind: FinishKind): readonly Caution[] {
  switch (kind) {
    case "water-borne":
      return [WATER];
    case "paint":
      return [PAINT, SOLVENTS];
    default:
      return [OILY_RAGS, SOLVENTS];
  }
}
