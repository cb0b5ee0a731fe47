import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { demoPieces } from "../../src/kinds/index.ts";
import type { PieceDocument } from "../../src/piece/index.ts";
import type { PdfFonts, Plan, PlanAsked, Point, Sheet } from "../../src/sheets/index.ts";
import { planOf } from "../../src/sheets/index.ts";
import { textLength } from "../../src/sheets/lettering.ts";
import type { Mark } from "../../src/sheets/writers/mark.ts";
import { marksOf } from "../../src/sheets/writers/marks-of.ts";
import { demoShop } from "../../src/shop/index.ts";
import { createSolids, type Solids } from "../../src/solid/index.ts";
import { createWorkup, type Workup } from "../../src/workup/index.ts";
import { kernel } from "./solids.ts";

/** The shapes that all plans of one test file share. */
export const solids: Solids = createSolids(kernel);

/** A document worked up, or undefined when it is refused. */
export function workedUp(document: PieceDocument): Workup | undefined {
  const outcome = createWorkup(demoShop)(document);
  return outcome.ok ? outcome.workup : undefined;
}

/** The demo pieces worked up. */
export const demos: readonly Workup[] = demoPieces().flatMap((document) => {
  const workup = workedUp(document);
  if (!workup) throw new Error(`the demo piece ${document.name} is refused`);
  return [workup];
});

const asked: PlanAsked = { units: "mm", paper: "a4", date: "2026-03-14" };

/** A worked-up piece's plan, in its own units unless something else is asked. */
export const planned = (workup: Workup, more: Partial<PlanAsked> = {}): Plan =>
  planOf(workup, solids, { ...asked, units: workup.piece.units, ...more });

export const allMarks = (sheet: Sheet): readonly Mark[] =>
  marksOf(sheet).flatMap((group) => group.marks);

type Text = Extract<Mark, { mark: "text" }>;

/** The least upright rectangle round a mark: left, bottom, right, top; a text's by its letters' widths. */
export function boxOf(mark: Mark): readonly [number, number, number, number] {
  const points = mark.mark === "text" ? textCorners(mark) : pointsOf(mark);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

function pointsOf(mark: Exclude<Mark, Text>): readonly Point[] {
  if (mark.mark !== "arc") return mark.points;
  const { centre, radius, from, to } = mark;
  const steps = 4 * Math.ceil(to - from);
  return Array.from({ length: steps + 1 }, (_, i): Point => {
    const angle = ((from + ((to - from) * i) / steps) * Math.PI) / 180;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });
}

function textCorners({ at, says, size, anchor, turn, isBold }: Text): readonly Point[] {
  const wide = textLength(says, size, isBold);
  const start = { start: 0, middle: -wide / 2, end: -wide }[anchor];
  const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return [start, start + wide].flatMap((u) =>
    [-0.2 * size, 0.68 * size].map((v): Point => [at[0] + u * c - v * s, at[1] + u * s + v * c]),
  );
}

const require = createRequire(import.meta.url);
const fontFile = (name: string) =>
  readFileSync(
    join(dirname(require.resolve("@expo-google-fonts/source-sans-3/package.json")), name),
  );

/** The sheets' own type. */
export const fonts: PdfFonts = {
  regular: new Uint8Array(fontFile("400Regular/SourceSans3_400Regular.ttf")),
  bold: new Uint8Array(fontFile("600SemiBold/SourceSans3_600SemiBold.ttf")),
};
