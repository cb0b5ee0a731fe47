import {
  figure,
  inches,
  type Mm,
  mm,
  type N,
  newtons,
  type Ratio,
  ratio,
  readTable,
} from "../units/index.ts";
import {
  type Given,
  given,
  type Known,
  known,
  Problem,
  published,
  type Worked,
  work,
} from "../worked/index.ts";
import { cutThreadRows } from "./data/cut-thread.ts";
import { fastenerRows } from "./data/fasteners.ts";
import { lateralRows } from "./data/lateral.ts";
import { rolledThreadRows } from "./data/rolled-thread.ts";
import { handbook } from "./sources.ts";
import type { Species } from "./species.ts";

/** A wood screw as far as wood is concerned. */
export type Screw = {
  readonly name: string;
  /** over the thread, which is the shank of a cut-thread screw [mm] */
  readonly diameter: Given<Mm>;
  /** bottom of the thread [mm] */
  readonly root: Given<Mm> | Worked<Mm>;
  /** over the thread, where it is wider than the shank and would bite the upper piece */
  readonly hasThinBody: boolean;
};

export type Thread = "cut" | "rolled";

const diametersOf = (kind: string) =>
  new Map(
    readTable(fastenerRows)
      .filter((row) => row.kind === kind)
      .map((row) => [row.size ?? "", figure(row, "mm") ?? 0]),
  );
const shanks = diametersOf("screw-shank");
const nails = diametersOf("nail");
const cutRoots = new Map(
  readTable(cutThreadRows).map((row) => [row.number ?? "", figure(row, "root_in") ?? 0]),
);
const rolled = new Map(readTable(rolledThreadRows).map((row) => [row.number ?? "", row]));

/** The screw numbers that can be asked for, as texts. */
export const screwNumbers = (thread: Thread): readonly string[] =>
  thread === "rolled" ? [...rolled.keys()] : [...shanks.keys()];

/**
 * A screw by its number.
 *
 * @param number  `8`, `10`, ...
 * @param thread  cut (traditional, full shank) or rolled (body thinner than the thread)
 * @throws Problem "screw-number"
 */
export function screwNumbered(number: string, thread: Thread): Screw {
  const name = `No. ${number} ${thread === "cut" ? "cut-thread" : "rolled-thread"} screw`;
  if (thread === "rolled") {
    const row = rolled.get(number);
    if (!row) throw unknownNumber(number, thread);
    const source = published(
      "Rolled-thread screws for wood",
      "trade page quoting the industry standard",
      "secondary",
    );
    const size = (column: string, says: string) =>
      given(says, inches(figure(row, column) ?? 0), "mm", source);
    const diameter = size("thread_max_in", `over the thread, ${name}`);
    return { name, diameter, root: rootOf(diameter), hasThinBody: true };
  }
  const shank = shanks.get(number);
  if (shank === undefined) throw unknownNumber(number, thread);
  const diameter = given(`shank, ${name}`, mm(shank), "mm", handbook("Table 8-9"));
  const printed = cutRoots.get(number);
  const root =
    printed === undefined
      ? rootOf(diameter)
      : given(
          `root, ${name}`,
          inches(printed),
          "mm",
          published("Table of wood screws", "public web table", "secondary"),
        );
  return { name, diameter, root, hasThinBody: false };
}

const unknownNumber = (number: string, thread: Thread) =>
  new Problem(
    "screw-number",
    `“${number.slice(0, 20)}”`,
    `No ${thread}-thread screw of this number is in the table.`,
    `Use ${screwNumbers(thread).join(", ")}.`,
  );

/** Where no root is printed: two thirds of the thread. */
const rootOf = (diameter: Given<Mm>): Worked<Mm> =>
  work({
    says: "root, estimated",
    unit: "mm",
    formula: "d = 2/3·D",
    inputs: { D: diameter },
    value: mm((2 / 3) * diameter.value),
    source: handbook("screw proportions", "memory"),
  });

/** Ultimate pull: axial, side grain, mean of tests. */
type Pull = {
  /** specific gravity at 12 % MC, 0 to 1.5 [1] */
  readonly gravity: Known<Ratio>;
  /** shank or nail diameter, above 0 [mm] */
  readonly diameter: Known<Mm>;
  /** thread or nail length in the wood, 0 or more [mm] */
  readonly length: Known<Mm>;
};

function pullInputs(pull: Pull) {
  const G = known(pull.gravity, "specific gravity at 12 % MC", "1");
  const D = known(pull.diameter, "diameter", "mm");
  const L = known(pull.length, "length in the wood", "mm");
  if (!(G.value > 0 && G.value < 1.5 && D.value > 0 && L.value >= 0)) {
    throw new Problem(
      "fastener-range",
      "fastener",
      "Gravity and diameter must be above nought, the length not below.",
      "Give the diameter and the length in the wood.",
    );
  }
  return { G, D, L };
}

/**
 * Pull that draws a wood screw out of side grain: mean of tests, lead hole bored as it should be.
 *
 * @param pull  gravity, shank diameter, threaded length
 * @returns ultimate withdrawal load [N]
 * @throws Problem "fastener-range"
 * @source Wood Handbook, Eq 8-10 (second-hand)
 */
export function screwWithdrawal(pull: Pull): Worked<N> {
  const { G, D, L } = pullInputs(pull);
  return work({
    says: "pull that draws the screw out",
    unit: "N",
    formula: "F = 108.25·G²·D·L",
    inputs: { G, D, L },
    value: newtons(108.25 * G.value ** 2 * D.value * L.value),
    source: handbook("Eq 8-10"),
    notes: ["mean of tests in side grain; never load a screw in end grain"],
  });
}

/**
 * Pull a wood screw may be trusted with, side grain, dry use.
 *
 * @param pull  gravity, shank diameter, threaded length
 * @returns allowable withdrawal load [N]
 * @throws Problem "fastener-range"
 * @source NDS, eq. 12.2-2 (second-hand): 2850·G²·D pounds per inch of thread; 145.0377 psi a N/mm²
 */
export function screwWithdrawalAllowed(pull: Pull): Worked<N> {
  const { G, D, L } = pullInputs(pull);
  return work({
    says: "pull the screw may be trusted with",
    unit: "N",
    formula: "F_a = 2850/145.0377·G²·D·L",
    inputs: { G, D, L },
    value: newtons((2850 / 145.0377) * G.value ** 2 * D.value * L.value),
    source: published(
      "National Design Specification for Wood Construction",
      "eq. 12.2-2",
      "secondary",
    ),
  });
}

/**
 * Pull that draws a common wire nail out of side grain: mean of tests.
 *
 * @param pull  gravity, nail diameter, length in the wood
 * @returns ultimate withdrawal load [N]
 * @throws Problem "fastener-range"
 * @source Wood Handbook, Eq 8-1 (second-hand)
 */
export function nailWithdrawal(pull: Pull): Worked<N> {
  const { G, D, L } = pullInputs(pull);
  return work({
    says: "pull that draws the nail out",
    unit: "N",
    formula: "F = 54.12·G^2.5·D·L",
    inputs: { G, D, L },
    value: newtons(54.12 * G.value ** 2.5 * D.value * L.value),
    source: handbook("Eq 8-1"),
    notes: ["mean of tests in side grain; holding fades as the wood dries and damps"],
  });
}

const lateral = readTable(lateralRows);

/**
 * Sideways load at which a fastener starts to give: about 0.4 mm of slip.
 *
 * @param fastener  wood screw (thread in the wood at least 7 diameters), nail, or lag screw
 * @param species  hardwood and softwood have their own factors
 * @param diameter  above 0 [mm]
 * @returns lateral load [N], or undefined where the table has no factor for so light or dense a wood
 * @source Wood Handbook, Eqs 8-2, 8-13 and 8-15 with Table 8-4 (second-hand)
 */
export function lateralLoad(
  fastener: "screw" | "nail" | "lag",
  species: Species,
  diameter: Known<Mm>,
): Worked<N> | undefined {
  const group = species.isSoftwood ? "softwood" : "hardwood";
  const gravity = Math.round(species.gravity.value * 100) / 100;
  const row = lateral.find(
    (r) =>
      r.fastener === fastener &&
      r.group === group &&
      gravity >= (figure(r, "G_from") ?? 0) &&
      gravity <= (figure(r, "G_to") ?? 0),
  );
  if (!row) return undefined;
  const D = known(diameter, "diameter", "mm");
  const K = given(
    `factor for a ${fastener} in ${group} of G ${row.G_from} to ${row.G_to}`,
    ratio(figure(row, "K") ?? 0),
    "1",
    handbook("Table 8-4"),
  );
  const isScrew = fastener !== "nail";
  const equations = { screw: "Eq 8-13", nail: "Eq 8-2", lag: "Eq 8-15" };
  return work({
    says: "sideways load at which it starts to give",
    unit: "N",
    formula: isScrew ? "F_s = K·D²" : "F_s = K·D^1.5",
    inputs: { K, D },
    value: newtons(K.value * D.value ** (isScrew ? 2 : 1.5)),
    source: handbook(equations[fastener]),
  });
}

/**
 * Lead hole for the thread of a wood screw, for full holding.
 *
 * @param root  bottom of the thread [mm]
 * @param isSoftwood  seven tenths of the root; hardwood nine tenths
 * @returns diameter of the hole [mm]
 * @source Wood Handbook, ch. 8, at Eq 8-10 (second-hand)
 */
export function leadHole(root: Known<Mm>, isSoftwood: boolean): Worked<Mm> {
  const d = known(root, "root of the thread", "mm");
  return work({
    says: `lead hole in ${isSoftwood ? "softwood" : "hardwood"}`,
    unit: "mm",
    formula: isSoftwood ? "b = 0.7·d" : "b = 0.9·d",
    inputs: { d },
    value: mm((isSoftwood ? 0.7 : 0.9) * d.value),
    source: handbook("ch. 8, lead holes for Eq 8-10"),
    notes: ["measure the screw in hand: makers differ, and so do published hole tables"],
  });
}

/**
 * Hole in the upper piece, for the screw to pass without biting, so that it draws the joint tight.
 *
 * @param screw  whose shank, or whose thread where that is the wider, must pass
 * @param isSoftwood  of the upper piece: seven eighths of a full shank will do; else the whole
 * @returns diameter of the hole [mm]
 * @source Wood Handbook, ch. 8, from memory; a thin-bodied screw's thread must pass whole
 */
export function shankHole(screw: Screw, isSoftwood: boolean): Worked<Mm> {
  const D = screw.diameter;
  const isTight = isSoftwood && !screw.hasThinBody;
  return work({
    says: "hole in the upper piece",
    unit: "mm",
    formula: isTight ? "a = 7/8·D" : "a = D",
    inputs: { D },
    value: mm(isTight ? (7 / 8) * D.value : D.value),
    source: handbook("ch. 8, shank holes", "memory"),
  });
}

/**
 * Diameter of a common wire nail.
 *
 * @param size  `6d` to `60d`
 * @throws Problem "nail-size"
 * @source Wood Handbook, Table 8-1 (second-hand)
 */
export function nailSized(size: string): Given<Mm> {
  const diameter = nails.get(size);
  if (diameter === undefined) {
    throw new Problem(
      "nail-size",
      `“${size.slice(0, 20)}”`,
      "No common nail of this size is in the table.",
      `Use ${[...nails.keys()].join(", ")}.`,
    );
  }
  return given(`common nail ${size}`, mm(diameter), "mm", handbook("Table 8-1"));
}
