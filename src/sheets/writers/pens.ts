import type { Layer } from "../drawing.ts";
import type { Pen } from "./mark.ts";

/** Widths in steps of √2, wide to narrow 2:1; dashes after ISO 128-2, from memory. */
export const pens: Readonly<Record<Exclude<Layer, "text">, Pen>> = {
  visible: { width: 0.5, dash: [], tone: "ink" },
  hidden: { width: 0.25, dash: [2, 1], tone: "ink" },
  centre: { width: 0.18, dash: [6, 1.2, 0.6, 1.2], tone: "ink" },
  dimensions: { width: 0.18, dash: [], tone: "ink" },
  construction: { width: 0.18, dash: [], tone: "hair" },
  hatch: { width: 0.13, dash: [], tone: "graphite" },
};

/** One step down. */
const FINER = Math.SQRT1_2;

/** The pen for a layer, a step thinner where the drawing is small. */
export const penFor = (layer: Exclude<Layer, "text">, isFine: boolean): Pen =>
  isFine ? { ...pens[layer], width: pens[layer].width * FINER } : pens[layer];
