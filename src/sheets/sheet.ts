import { type LengthUnit, type Mm, mm } from "../units/index.ts";
import { Problem } from "../worked/index.ts";
import type { Drawing, Point } from "./drawing.ts";

export type PaperName = "letter" | "a4";

/** A sheet of paper, lying. */
export type Paper = {
  readonly name: PaperName;
  /** [mm] */
  readonly width: Mm;
  /** [mm] */
  readonly height: Mm;
};

export const papers: Readonly<Record<PaperName, Paper>> = {
  letter: { name: "letter", width: mm(11 * 25.4), height: mm(8.5 * 25.4) },
  a4: { name: "a4", width: mm(297), height: mm(210) },
};

/** What a piece is printed on where nothing else is asked: by its side of the inch. */
export const usualPaper = (units: LengthUnit): PaperName => (units === "inch" ? "letter" : "a4");

/**
 * The paper of that name.
 *
 * @param place  where it was asked for
 * @throws Problem "paper-unknown"
 */
export function paperNamed(text: string, place: string): PaperName {
  const name = text.toLowerCase();
  if (name === "letter" || name === "a4") return name;
  throw new Problem(
    "paper-unknown",
    `${place}, “${text.slice(0, 24)}”`,
    "There are two papers.",
    "Use letter or a4.",
  );
}

/** Kept clear of ink: wide at the left, where sheets are punched; ISO 5457 from memory [mm]. */
export const margins = { left: 20, right: 10, top: 10, bottom: 10 } as const;

/** Height of the strip with title and check bar, along the lower edge [mm]. */
export const STRIP = 20;

/** A drawing, and where its own 0, 0 lies on the paper: from the lower left corner [mm]. */
export type Placed = { readonly drawing: Drawing; readonly at: Point };

/** What the strip says. */
export type Title = {
  readonly piece: string;
  readonly client: string;
  readonly shows: string;
  readonly timber: string;
  readonly date: string;
  /** `1:8`, or words where there are several or none */
  readonly scale: string;
  readonly units: LengthUnit;
  readonly isDemo: boolean;
};

export type Sheet = {
  /** stable: `legs`, `cut-list` */
  readonly id: string;
  readonly paper: Paper;
  readonly title: Title;
  /** its place in the set, from 1 [pieces] */
  readonly number: number;
  readonly of: number;
  readonly placed: readonly Placed[];
};

/** A rectangle on paper, from the lower left corner [mm]. */
export type Area = {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
};

/** Where drawings may stand: within the margins, above the strip. */
export const fieldOf = ({ width, height }: Paper): Area => ({
  left: margins.left + 3,
  right: width - margins.right - 3,
  bottom: margins.bottom + STRIP + 3,
  top: height - margins.top - 3,
});
