import type { Piece } from "../piece/index.ts";
import type { Solids } from "../solid/index.ts";
import type { CutList } from "../stock/index.ts";
import type { LengthUnit } from "../units/index.ts";
import type { Finding } from "../worked/index.ts";
import { cutListCsv } from "./cut-list-csv.ts";
import { armPages } from "./pages/arm-pages.ts";
import { cutListPages } from "./pages/cut-list-pages.ts";
import { findingsPages } from "./pages/findings-pages.ts";
import { jointPages } from "./pages/joint-pages.ts";
import { leafJointPages } from "./pages/leaf-joint-pages.ts";
import type { Page, Setting } from "./pages/page.ts";
import { partPages } from "./pages/part-pages.ts";
import { stripDrawing } from "./pages/strip.ts";
import { titlePage } from "./pages/title-page.ts";
import { type PaperName, papers, type Sheet, type Title } from "./sheet.ts";

/** What of a worked-up piece the sheets show. */
export type Planned = {
  readonly piece: Piece;
  readonly cutList: CutList;
  /** worst first */
  readonly findings: readonly Finding[];
};

export type PlanAsked = {
  readonly units: LengthUnit;
  readonly paper: PaperName;
  /** as it is to stand in the strip */
  readonly date: string;
  /** hidden edges of the whole piece too, dashed; left out, not */
  readonly hidden?: boolean;
};

export type Plan = { readonly sheets: readonly Sheet[]; readonly csv: string };

/**
 * The whole set of a piece's sheets, and its cut list for a spreadsheet.
 *
 * @param workup  a piece worked up
 * @param solids  the shapes of its parts
 * @param asked  units, paper, and the date to print; there is no clock in here
 */
export function planOf(workup: Planned, solids: Solids, asked: PlanAsked): Plan {
  const setting: Setting = { paper: papers[asked.paper], units: asked.units };
  const pages: readonly Page[] = [
    titlePage(workup.piece, solids, workup.cutList.mass, asked.hidden ?? false, setting),
    ...leafJointPages(workup.piece, setting),
    ...armPages(workup.piece, setting),
    ...jointPages(workup.piece, workup.cutList, solids, setting),
    ...partPages(workup.piece, workup.cutList, solids, setting),
    ...cutListPages(workup.piece, workup.cutList, setting),
    ...findingsPages(workup.findings, setting),
  ];
  const sheets = pages.map((page, i) => sheetOf(page, i + 1, pages.length, workup.piece, asked));
  return { sheets, csv: cutListCsv(workup.cutList, asked.units) };
}

function sheetOf(page: Page, number: number, of: number, piece: Piece, asked: PlanAsked): Sheet {
  const { document, species } = piece;
  const paper = papers[asked.paper];
  const title: Title = {
    piece: document.name,
    client: document.client,
    shows: page.shows,
    timber: species.name,
    date: asked.date,
    scale: page.scale,
    units: asked.units,
    isDemo: document.demo,
  };
  const strip = stripDrawing(title, paper, number, of);
  return {
    id: page.id,
    paper,
    title,
    number,
    of,
    placed: [{ drawing: strip, at: [0, 0] }, ...page.placed],
  };
}
