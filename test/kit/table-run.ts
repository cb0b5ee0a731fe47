import { kindNamed, Refusal } from "../../src/kinds/index.ts";
import {
  applyEdit,
  type Bore,
  bulkOfPart,
  type Change,
  documentText,
  type Edit,
  type Part,
  type PieceDocument,
  readDocument,
  shapeKey,
} from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { CHORD, FINE_CHORD, LEAST_CLASH, type Solids, sidesFor } from "../../src/solid/index.ts";
import { printLength, readLength } from "../../src/units/index.ts";
import { isWorked, type Problem, type Worked, wholeChain } from "../../src/worked/index.ts";
import { createWorkup, type Workup } from "../../src/workup/index.ts";
import { recompute } from "./evaluate.ts";
import { cutListFaults, pieceFaults } from "./piece-faults.ts";
import { choicesOf } from "./tables.ts";

/** What came of one random table. */
export type TableVerdict = {
  /** options it had, and `built`, or the codes it was refused with */
  readonly came: readonly string[];
  readonly faults: readonly string[];
};

type Work = ReturnType<typeof createWorkup>;

/** Works a document up and holds the piece to everything that needs no solids. */
export function judgeTable(document: PieceDocument): TableVerdict {
  const work = createWorkup(demoShop);
  const outcome = work(document);
  const came = choicesOf(document);
  const always = [...roundTripFaults(document), ...editFaults(document)];
  if (!outcome.ok) {
    return {
      came: [...came, "refused", ...outcome.problems.map((p) => `refused: ${p.code}`)],
      faults: [...always, ...refusalFaults(document, work)],
    };
  }
  const { workup } = outcome;
  return {
    came: [...came, "built"],
    faults: [
      ...always,
      ...pieceFaults(workup.piece),
      ...cutListFaults(workup.piece, workup.cutList),
      ...chainFaults(workup),
      ...otherSideFaults(document, workup, work),
    ],
  };
}

/** The file says the whole of the document. */
function roundTripFaults(document: PieceDocument): readonly string[] {
  const text = documentText(document);
  const read = readDocument(text);
  if (!read.ok) return read.problems.map((p) => `its own file is not read: ${p.message}`);
  return documentText(read.document) === text ? [] : ["its own file reads otherwise"];
}

/** Edits of every sort, each made and unmade. */
function editFaults(document: PieceDocument): readonly string[] {
  const table = ["assemblies", "table"];
  const edits: readonly Edit[] = [
    { says: "name", changes: [{ at: ["name"], to: "Another" }] },
    { says: "length", changes: [{ at: [...table, "length"], to: "1234.5 mm" }] },
    { says: "default", changes: [{ at: [...table, "leg"] }] },
    {
      says: "both",
      changes: [
        { at: [...table, "leg"], to: "2 in" },
        { at: ["demo"], to: false },
      ],
    },
    { says: "override", changes: [{ at: ["overrides", "table/tenons/long.upper"], to: "18 mm" }] },
    {
      says: "cut",
      changes: [
        {
          at: ["cut", "table/top"],
          to: { length: 1, width: 2, thickness: 3, features: [], values: {} },
        },
      ],
    },
  ];
  const before = documentText(document);
  return edits.flatMap((edit) => {
    const { document: after, inverse } = applyEdit(document, edit);
    const { document: back, inverse: again } = applyEdit(after, inverse);
    const forth = applyEdit(back, again).document;
    return [
      ...(documentText(back) === before
        ? []
        : [`${edit.says}: its inverse does not give the bytes back`]),
      ...(documentText(forth) === documentText(after)
        ? []
        : [`${edit.says}: it cannot be made again`]),
      ...(documentText(document) === before
        ? []
        : [`${edit.says}: it changed the document it was given`]),
    ];
  });
}

/** Every refusal's remedy puts right what it speaks of, and in the end the piece can be made. */
function refusalFaults(document: PieceDocument, work: Work): readonly string[] {
  let now = document;
  for (let step = 0; step < 12; step++) {
    const outcome = work(now);
    if (outcome.ok) return [];
    const [first] = outcome.problems;
    const mend = first && mendOf(first);
    if (!mend) return [`refused without a change that mends it: ${first?.message}`];
    now = applyEdit(now, { says: "mend", changes: [mend] }).document;
    const after = work(now);
    const isStill =
      !after.ok && after.problems.some((p) => p.code === first.code && p.place === first.place);
    if (isStill) return [`${first.message} does not mend it: ${JSON.stringify(mend)}`];
  }
  return ["twelve remedies do not make it a piece"];
}

/** The change a refusal carries, or the one its words offer: a size of no part is taken away. */
function mendOf(problem: Problem): Change | undefined {
  if (problem instanceof Refusal) return problem.mend;
  const [table, key] = problem.place.split(" › ");
  const isOffered = problem.remedy.includes("take it away") && table && key;
  return isOffered ? { at: [table, key] } : undefined;
}

/** Every formula in every chain comes to the figure beside it. */
function chainFaults({ piece, weighing, findings, cutList }: Workup): readonly string[] {
  const worked: readonly Worked[] = [
    ...piece.values.map((v) => v.computed),
    piece.seasons.driest,
    weighing.mass,
    ...Object.values(weighing.parts).map((one) => one.mass),
    ...findings.flatMap((f) => [...f.why, ...(f.margin ? [f.margin] : [])]),
    ...cutList.rows.map((row) => row.boardFeet),
  ];
  const all = new Set(worked.flatMap(wholeChain).filter(isWorked));
  return [...all].flatMap((one) => {
    const { agrees, computed, expected } = recompute(one);
    return agrees ? [] : [`${one.formula} comes to ${computed}, not ${expected}`];
  });
}

/** The same piece asked in the other side's units, as exactly as a text can say it. */
function otherSideFaults(document: PieceDocument, workup: Workup, work: Work): readonly string[] {
  const { units, assemblies, overrides, measured } = document;
  const side = units === "inch" ? "mm" : "inch";
  const over = (text: string): string => {
    const read = readLength(text, units);
    if (!read.ok) return text;
    return side === "mm" ? `${read.value.toFixed(9)} mm` : `${(read.value / 25.4).toFixed(9)} in`;
  };
  const each = (texts: Readonly<Record<string, string>>, isLength: (name: string) => boolean) =>
    Object.fromEntries(
      Object.entries(texts).map(([name, text]) => [name, isLength(name) ? over(text) : text]),
    );
  const texts = assemblies.table ?? { kind: "" };
  const { asks } = kindNamed(texts.kind);
  const other = work({
    ...document,
    units: side,
    assemblies: {
      table: { ...each(texts, (name) => asks[name]?.unit === "mm"), kind: texts.kind },
    },
    overrides: each(overrides, () => true),
    measured: each(measured, () => true),
  });
  if (!other.ok)
    return other.problems.map((p) => `on the ${side} side it is refused: ${p.message}`);
  const sizes = (w: Workup) =>
    w.piece.parts.flatMap((p) => [...Object.values(p.blank), ...p.pose.origin]);
  const there = sizes(other.workup);
  const isSame = sizes(workup).every((n, i) => Math.abs(n - (there[i] ?? Number.NaN)) < 1e-5);
  return isSame
    ? []
    : [
        `on the ${side} side (${printLength(workup.piece.parts[0]?.blank.length ?? (0 as never), { units: side })}) its sizes differ`,
      ];
}

/** What solids show: sound ones, as heavy as the closed form says, and none in another's place. */
export function solidFaults(workup: Workup, solids: Solids): readonly string[] {
  const clashes = solids.interference(workup.piece.parts, { least: LEAST_CLASH });
  return [
    ...shapeFaults(workup, solids),
    ...clashes.map(({ a, b, volume }) => `${a} and ${b} share ${volume.toFixed(3)} mm³`),
  ];
}

/** What the solids of its parts show, each by itself: sound, in its blank, and as heavy as reckoned. */
export function shapeFaults({ piece }: Workup, solids: Solids): readonly string[] {
  const shapes = new Map(piece.parts.map((part) => [shapeKey(part), part]));
  return [...shapes.values()].flatMap((part) => {
    const solid = solids.of(part);
    const bulk = bulkOfPart(part);
    const spare = roundSpare(part) + 1e-9 * bulk.volume;
    const sizes = [part.blank.length, part.blank.width, part.blank.thickness];
    const isIn = ([0, 1, 2] as const).every(
      (i) => solid.bounds.from[i] > -1e-6 && solid.bounds.to[i] < (sizes[i] ?? 0) + 1e-6,
    );
    const off = solid.volume - bulk.volume;
    return [
      ...(solid.bodies === 1 ? [] : [`${part.key} falls into ${solid.bodies} bodies`]),
      ...(isIn ? [] : [`${part.key} stands out of its blank`]),
      ...(off > -mouldingSpare(part) - 1e-9 * bulk.volume - 1e-6 && off < spare + 1e-6
        ? []
        : [`${part.key}: ${solid.volume} mm³ as a mesh, ${bulk.volume} by closed form`]),
    ];
  });
}

/** How much less a mesh's flats cut away than round holes would, all told [mm³]. */
const roundSpare = ({ features, blank }: Part): number =>
  features.reduce((sum, f) => {
    if (f.feature === "bore") return sum + short(f.diameter) * f.depth + sinkSpare(f.sink);
    if (f.feature !== "screw-slot") return sum;
    return (
      sum + short(f.diameter) * (blank.width - f.headDepth) + short(f.headDiameter) * f.headDepth
    );
  }, 0);

/**
 * A cone is the hull of two rims with flats of their own. Each reaches as far as its circle less a
 * chord's height, whichever way one looks, and so does every section between: a ring of that height
 * is the most that is left standing.
 */
const sinkSpare = (sink: Bore["sink"]): number =>
  sink ? Math.PI * sink.diameter * CHORD * sink.depth : 0;

/**
 * How much more a mesh's flats cut away of mouldings than rounds would [mm³]: beside the whole arc
 * less than a strip as high as a fine chord. A flat with its ends on the circle leaves two thirds of
 * such a strip between, one that stands on it with its middle a third.
 */
const mouldingSpare = ({ features, blank }: Part): number =>
  features.reduce(
    (sum, f) =>
      f.feature === "round-over" || f.feature === "cove"
        ? sum + FINE_CHORD * (Math.PI / 2) * f.radius * blank.length
        : sum,
    0,
  );

/** Area between a circle and the flats that stand for it. */
function short(diameter: number): number {
  const r = diameter / 2;
  const n = sidesFor(r);
  return Math.PI * r ** 2 - (n / 2) * Math.sin((2 * Math.PI) / n) * r ** 2;
}
