import type { Point } from "../drawing.ts";
import type { Sheet } from "../sheet.ts";
import { inks, type Mark, type MarkGroup, type Pen } from "./mark.ts";
import { marksOf } from "./marks-of.ts";

/** The sheets' type, and what may stand in for it. */
const TYPE = "'Source Sans 3', 'Source Sans 3 Variable', 'Source Sans Pro', sans-serif";

/**
 * A sheet as one SVG file: millimetres, three decimals, the same bytes for the same sheet.
 */
export function writeSvg(sheet: Sheet): string {
  const { width, height } = sheet.paper;
  const flat = flatter(height);
  const lines = marksOf(sheet).flatMap((group) => groupLines(group, flat));
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${number(width)}mm" height="${number(height)}mm" viewBox="0 0 ${number(width)} ${number(height)}" font-family="${TYPE}" fill="none" stroke-linecap="round" stroke-linejoin="round">`,
    `<title>${escaped(`${sheet.title.piece}: ${sheet.title.shows}`)}</title>`,
    `<rect id="paper" width="${number(width)}" height="${number(height)}" fill="#ffffff"/>`,
    ...lines,
    "</svg>",
    "",
  ].join("\n");
}

/** Downwards from the upper edge, as SVG counts. */
type Flat = (p: Point) => Point;
const flatter =
  (height: number): Flat =>
  ([x, y]) => [x, height - y];

function groupLines({ id, says, marks }: MarkGroup, flat: Flat): readonly string[] {
  const label = says === undefined ? "" : ` role="img" aria-label="${escaped(says)}"`;
  return [
    `<g id="${escaped(id)}"${label}>`,
    ...marks.map((mark) => `  ${element(mark, flat)}`),
    "</g>",
  ];
}

function element(mark: Mark, flat: Flat): string {
  switch (mark.mark) {
    case "line":
      return `<path d="${path(mark.points.map(flat), mark.isClosed)}"${strokeOf(mark.pen)}/>`;
    case "fill":
      return `<path d="${path(mark.points.map(flat), true)}" fill="${inks[mark.tone]}"/>`;
    case "arc":
      return arc(mark, flat);
    case "text":
      return text(mark, flat);
  }
}

const path = (points: readonly Point[], isClosed: boolean): string =>
  `${points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${number(x)} ${number(y)}`).join(" ")}${isClosed ? " Z" : ""}`;

const strokeOf = ({ width, dash, tone }: Pen): string => {
  // A round cap would close up the gaps.
  const dashes =
    dash.length > 0
      ? ` stroke-dasharray="${dash.map(number).join(" ")}" stroke-linecap="butt"`
      : "";
  return ` stroke="${inks[tone]}" stroke-width="${number(width)}"${dashes}`;
};

function arc(
  { centre, radius, from, to, pen }: Extract<Mark, { mark: "arc" }>,
  flat: Flat,
): string {
  const [cx, cy] = flat(centre);
  const r = number(radius);
  if (Math.abs(to - from) >= 360 - 1e-9)
    return `<circle cx="${number(cx)}" cy="${number(cy)}" r="${r}"${strokeOf(pen)}/>`;
  const at = (angle: number): string => {
    const a = (angle * Math.PI) / 180;
    const [x, y] = flat([centre[0] + radius * Math.cos(a), centre[1] + radius * Math.sin(a)]);
    return `${number(x)} ${number(y)}`;
  };
  const isLong = to - from > 180 ? 1 : 0;
  // Counter-clockwise on paper is so on the screen, where the flag for it is 0.
  return `<path d="M${at(from)} A${r} ${r} 0 ${isLong} 0 ${at(to)}"${strokeOf(pen)}/>`;
}

function text(
  { at, says, size, anchor, turn, isBold, tone }: Extract<Mark, { mark: "text" }>,
  flat: Flat,
): string {
  const [x, y] = flat(at).map(number);
  const turned = turn === 0 ? "" : ` transform="rotate(${number(-turn)} ${x} ${y})"`;
  const weight = isBold ? ' font-weight="600"' : "";
  const anchored = anchor === "start" ? "" : ` text-anchor="${anchor}"`;
  return `<text x="${x}" y="${y}" font-size="${number(size)}"${anchored}${weight} fill="${inks[tone]}"${turned}>${escaped(says)}</text>`;
}

/** Three decimals at most, and no −0. */
const number = (n: number): string => {
  if (!Number.isFinite(n)) throw new Error(`a drawing holds ${n} for a number`);
  return String(Math.round(n * 1000) / 1000 + 0);
};

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** As text and in attributes; what XML cannot hold at all becomes a replacement character. */
const escaped = (says: string): string =>
  says
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "\uFFFD")
    .replace(/[&<>"']/g, (letter) => entities[letter] ?? letter);
