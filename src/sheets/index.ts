export type { Dimension, Drawing, Point, Stroke } from "./drawing.ts";
export { type Plan, type PlanAsked, planOf } from "./plan.ts";
export { papers, type Sheet } from "./sheet.ts";
export { type PdfFonts, writePdf } from "./writers/pdf.ts";
export { writeSvg } from "./writers/svg.ts";
