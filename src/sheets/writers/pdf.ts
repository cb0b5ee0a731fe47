import type { Point } from "../drawing.ts";
import type { Paper, Sheet } from "../sheet.ts";
import { inks, type Mark, type Pen } from "./mark.ts";
import { marksOf } from "./marks-of.ts";

/** Two weights of one family, as TrueType files; WOFF2 cannot be set. */
export type PdfFonts = { readonly regular: Uint8Array; readonly bold: Uint8Array };

export type PdfAsked = {
  readonly fonts: PdfFonts;
  /** when it is said to be made: kept out of here, so that the same sheets give the same file */
  readonly made: Date;
};

const POINTS_PER_MM = 72 / 25.4;

/**
 * Sheets as one PDF, a page each at true size, its fonts embedded; viewers are asked not to scale it.
 *
 * @throws Error when a font cannot be read
 */
export async function writePdf(sheets: readonly Sheet[], asked: PdfAsked): Promise<Uint8Array> {
  // Only here, so that whoever takes but a paper's size from this room need not carry it.
  const { default: Blank } = await import("pdfkit");
  const doc = blankPdf(Blank, sheets, asked);
  const chunks: Uint8Array[] = [];
  const done = new Promise<void>((settle, fail) => {
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("end", () => settle());
    doc.on("error", fail);
  });
  for (const sheet of sheets) addSheet(doc, sheet);
  doc.end();
  await done;
  return joined(chunks);
}

type Doc = PDFKit.PDFDocument;

function blankPdf(
  Blank: new (options: PDFKit.PDFDocumentOptions) => Doc,
  sheets: readonly Sheet[],
  { fonts, made }: PdfAsked,
): Doc {
  const title = sheets[0]?.title;
  const doc = new Blank({
    autoFirstPage: false,
    // A standard font would be looked for among files.
    font: fonts.regular as unknown as string,
    pdfVersion: "1.7",
    lang: "en",
    displayTitle: true,
    info: {
      Title: title?.piece ?? "",
      Subject: "Workshop drawings",
      Creator: "Latewood",
      Producer: "Latewood",
      CreationDate: made,
    },
  });
  doc.registerFont("regular", fonts.regular as unknown as ArrayBuffer);
  doc.registerFont("bold", fonts.bold as unknown as ArrayBuffer);
  keepScale(doc);
  return doc;
}

/** pdfkit has no door for this one preference, but its root is open. */
function keepScale(doc: Doc): void {
  const { _root: root } = doc as unknown as {
    readonly _root: { readonly data: { ViewerPreferences?: { readonly data: object } } };
  };
  const preferences = root.data.ViewerPreferences;
  if (!preferences) throw new Error("the PDF has no viewer preferences to ask for true size");
  Object.assign(preferences.data, { PrintScaling: "None" });
}

function addSheet(doc: Doc, sheet: Sheet): void {
  doc.addPage({ size: pageSize(sheet.paper), margin: 0 });
  // From here on in millimetres, downwards from the upper left corner.
  doc.scale(POINTS_PER_MM);
  for (const { marks } of marksOf(sheet))
    for (const mark of marks) draw(doc, mark, sheet.paper.height);
}

const pageSize = ({ width, height }: Paper): [number, number] => [
  width * POINTS_PER_MM,
  height * POINTS_PER_MM,
];

function draw(doc: Doc, mark: Mark, height: number): void {
  const flat = ([x, y]: Point): Point => [x, height - y];
  switch (mark.mark) {
    case "line":
      trace(doc, mark.points.map(flat), mark.isClosed);
      stroke(doc, mark.pen);
      return;
    case "fill":
      trace(doc, mark.points.map(flat), true);
      doc.fill(inks[mark.tone]);
      return;
    case "arc": {
      const [x, y] = flat(mark.centre);
      if (mark.to - mark.from >= 360 - 1e-9) doc.circle(x, y, mark.radius);
      else arcOf(doc, mark, [x, y]);
      stroke(doc, mark.pen);
      return;
    }
    case "text":
      letter(doc, mark, flat(mark.at));
      return;
  }
}

function trace(doc: Doc, points: readonly Point[], isClosed: boolean): void {
  for (const [i, [x, y]] of points.entries()) {
    if (i === 0) doc.moveTo(x, y);
    else doc.lineTo(x, y);
  }
  if (isClosed) doc.closePath();
}

/** Its type declarations leave arcs out. */
function arcOf(doc: Doc, mark: Extract<Mark, { mark: "arc" }>, [x, y]: Point): void {
  const [from, to] = [mark.from, mark.to].map((a) => (-a * Math.PI) / 180);
  const drawn = doc as unknown as {
    readonly arc: (...all: readonly (number | boolean | undefined)[]) => void;
  };
  drawn.arc(x, y, mark.radius, from, to, true);
}

function stroke(doc: Doc, { width, dash, tone }: Pen): void {
  doc.lineWidth(width).lineJoin("round");
  // A round cap would close up the gaps.
  if (dash.length > 0) doc.lineCap("butt").dash([...dash] as unknown as number, {});
  else doc.lineCap("round").undash();
  doc.stroke(inks[tone]);
}

function letter(doc: Doc, mark: Extract<Mark, { mark: "text" }>, [x, y]: Point): void {
  const { says, size, anchor, turn, isBold, tone } = mark;
  if (says === "") return;
  doc.save();
  doc
    .font(isBold ? "bold" : "regular")
    .fontSize(size)
    .fillColor(inks[tone]);
  doc.translate(x, y).rotate(-turn);
  const wide = doc.widthOfString(says, {});
  const start = anchor === "start" ? 0 : anchor === "middle" ? -wide / 2 : -wide;
  doc.text(says, start, 0, { lineBreak: false, baseline: "alphabetic" });
  doc.restore();
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
