import type { Lettering, Stroke } from "../drawing.ts";
import { lettering, sizes, wrapped } from "../lettering.ts";
import type { Area } from "../sheet.ts";
import type { Figures } from "./leaf-joint-figures.ts";

/** What was written, and where its last line ends. */
export type Rows = {
  readonly texts: readonly Lettering[];
  readonly rules: readonly Stroke[];
  readonly below: number;
};

/** Rows of a narrow table: what it is at the left, the figure at the right. */
export function figureRows(groups: readonly Figures[], { left, right, top }: Area): Rows {
  const { body } = sizes;
  const texts: Lettering[] = [];
  const rules: Stroke[] = [];
  let y = top - body * 0.3;
  for (const { title, rows } of groups) {
    y -= body * 1.5;
    texts.push(lettering([left, y], title, { size: body, isBold: true }));
    rules.push({ shape: "line", from: [left, y - 1.2], to: [right, y - 1.2] });
    for (const { says, figure } of rows) {
      const lines = wrapped(says, body, right - left - (figure === "" ? 0 : 20));
      for (const [i, line] of lines.entries()) {
        y -= body * (i === 0 ? 1.45 : 1.25);
        texts.push(lettering([left, y], line, { size: body }));
        if (i === 0 && figure !== "")
          texts.push(lettering([right, y], figure, { size: body, anchor: "end" }));
      }
    }
  }
  return { texts, rules, below: y - body * 0.6 };
}

/** What can hurt someone or spoil the work, in small lines. */
export function cautionRows(says: readonly string[], { left, right, top }: Area): Rows {
  const { body, small } = sizes;
  let y = top - body * 1.5;
  const texts = [lettering([left, y], "Mind", { size: body, isBold: true, tone: "crayon" })];
  for (const one of says)
    for (const [i, line] of wrapped(one, small, right - left - 2).entries()) {
      y -= small * (i === 0 ? 1.5 : 1.25);
      texts.push(lettering([left + (i === 0 ? 0 : 2), y], line, { size: small }));
    }
  return { texts, rules: [], below: y - body * 0.6 };
}
