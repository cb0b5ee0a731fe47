import {
  droopOfArm,
  edgeDrop,
  edgeSagUnderPoint,
  edgeSagUnderSpread,
  hingeReaction,
  loadOnSupport,
  loadPerArm,
  secondMoment,
  spreadLoad,
} from "../../src/mechanics/index.ts";
import {
  count,
  type Mm,
  type Mm4,
  type MPa,
  mm,
  mm4,
  mpa,
  type N,
  type NPerMm,
  newtons,
  newtonsPerMm,
  type Row,
  readTable,
} from "../../src/units/index.ts";
import { type Check, series, type Tolerance, within } from "./check.ts";
import * as data from "./data/borne-leaves.ts";

const reference = series("Leaf on its arms", "borne leaf cases");

/** Those cases print five figures and drop noughts at the end: `1` is 1.0000. */
function fiveFigures(printed: string): Tolerance {
  const size = Math.abs(Number(printed));
  return within(size === 0 ? 1e-9 : 0.5 * 10 ** (Math.floor(Math.log10(size)) - 4));
}

/** A check of a row's figure in one of its columns. */
function figureOf(row: Row, says: string, column: string, unit: string, compute: () => number) {
  const printed = row[column] ?? "";
  return reference(says, printed, unit, compute, fiveFigures(printed));
}

const at = (row: Row, column: string) => mm(Number(row[column]));

type Leaf = {
  readonly w: NPerMm;
  readonly P: N;
  readonly W: Mm;
  readonly a: Mm;
  readonly E: MPa;
  readonly I: Mm4;
};
const sagOf = ({ w, P, W, a, E, I }: Leaf) =>
  edgeSagUnderSpread(w, W, a, E, I).value + edgeSagUnderPoint(P, W, a, E, I).value;
const hingeOf = ({ w, P, W, a }: Leaf) => hingeReaction(w, P, W, a).value;
const armOf = ({ w, P, W, a }: Leaf) => loadOnSupport(w, P, W, a).value;

/** No size of it is one, so that a wrong power of any shows. */
const [LOAD, WIDTH, STIFFNESS, MOMENT] = [5, 2, 3, 7];
const WEIGHT = LOAD * WIDTH;
const SAG = (LOAD * WIDTH ** 4) / (STIFFNESS * MOMENT);
const bare = (weights: number, part: number): Leaf => ({
  w: newtonsPerMm(LOAD),
  P: newtons(weights * WEIGHT),
  W: mm(WIDTH),
  a: mm(part * WIDTH),
  E: mpa(STIFFNESS),
  I: mm4(MOMENT),
});

const shareChecks = readTable(data.shares).flatMap((row) => {
  const leaf = bare(Number(row.P), Number(row.part));
  const name = `borne at ${row.part} of its width, ${row.P} weights at its edge`;
  return [
    figureOf(row, `${name}: sag of the edge, of w·W⁴/(E·I)`, "sag", "1", () => sagOf(leaf) / SAG),
    figureOf(row, `${name}: the hinge bears, of w·W`, "hinge", "1", () => hingeOf(leaf) / WEIGHT),
    figureOf(row, `${name}: the arms bear, of w·W`, "arm", "1", () => armOf(leaf) / WEIGHT),
  ];
});

/** Those cases were worked with 9.81 m/s². */
const leafOf = (row: Row, massKg: number): Leaf => ({
  w: spreadLoad(newtons(massKg * 9.81), at(row, "W")).value,
  P: newtons(Number(row.P)),
  W: at(row, "W"),
  a: mm(Number(row.part) * Number(row.W)),
  E: mpa(Number(row.E)),
  I: secondMoment(at(row, "L"), at(row, "t")).value,
});
const nameOf = (row: Row) =>
  `leaf ${row.W} × ${row.L} × ${row.t}, borne at ${row.part}, ${row.P} N at its edge`;

const loadedChecks = readTable(data.loaded).flatMap((row) => {
  const leaf = leafOf(row, Number(row.mass));
  const name = nameOf(row);
  return [
    figureOf(row, `${name}: sag of the edge`, "sag", "mm", () => sagOf(leaf)),
    figureOf(row, `${name}: the hinge bears`, "hinge", "N", () => hingeOf(leaf)),
    figureOf(row, `${name}: the arms bear`, "arm", "N", () => armOf(leaf)),
  ];
});

/** The edge's drop because its arms, held at the rail's face, bend. */
function dropWithArms(row: Row): number {
  const { w, P, W, a } = leafOf(row, 0);
  const each = loadPerArm(loadOnSupport(w, P, W, a), count(Number(row.arms)));
  const free = mm(a + at(row, "face"));
  const section = secondMoment(at(row, "thick"), at(row, "h"));
  return edgeDrop(droopOfArm(each, free, mpa(Number(row.E_arm)), section), W, a).value;
}
const bentChecks = readTable(data.bentArms).flatMap((row) => {
  const name = `${nameOf(row)}, arms ${row.arms}, ${row.h} high`;
  return [
    figureOf(row, `${name}: the leaf bends`, "leaf", "mm", () => sagOf(leafOf(row, 0))),
    figureOf(row, `${name}: the arms bend`, "arm", "mm", () => dropWithArms(row)),
  ];
});

/** Where the support leaves the edge of a leaf under its own weight as high as the hinge. */
function levelPart(): number {
  let [low, high] = [0.5, 0.9];
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (sagOf(bare(0, middle)) > 0) low = middle;
    else high = middle;
  }
  return low;
}
const underEdgeLoad = (part: number) => {
  const { P, W, a, E, I } = bare(1, part);
  return edgeSagUnderPoint(P, W, a, E, I).value;
};

export const borneLeafChecks: readonly Check[] = [
  ...shareChecks,
  ...loadedChecks,
  ...bentChecks,
  reference("own weight alone: edge level when borne at this part", "0.6972", "1", levelPart),
  reference(
    "load at the edge: sag borne at 0.5, over that at 0.7",
    "2.8",
    "1",
    () => underEdgeLoad(0.5) / underEdgeLoad(0.7),
  ),
  reference(
    "load at the edge: sag borne at 0.5, over that at 0.85",
    "11",
    "1",
    () => underEdgeLoad(0.5) / underEdgeLoad(0.85),
  ),
];
