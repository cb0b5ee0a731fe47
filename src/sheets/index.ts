export type { Dimension, Drawing, Point, Stroke, Tone } from "./drawing.ts";
export { type Plan, type PlanAsked, planOf } from "./plan.ts";
export { type PaperName, paperNamed, papers, type Sheet, usualPaper } from "./sheet.ts";
export { type LiveSection, liveSection } from "./views/live-section.ts";
export { inks, type Mark, type Pen } from "./writers/mark.ts";
export { drawingMarks } from "./writers/marks-of.ts";
export { type PdfFonts, writePdf } from "./writers/pdf.ts";
export { writeSvg } from "./writers/svg.ts";
