import type { Point, Tone } from "../drawing.ts";

/** How a line is drawn on paper. */
export type Pen = {
  /** on paper, in millimetres */
  readonly width: number;
  /** dash, gap, dash, gap; none for a full line */
  readonly dash: readonly number[];
  readonly tone: Tone;
};

/** What comes on paper, in millimetres from its lower left corner: right and up. */
export type Mark =
  | {
      readonly mark: "line";
      readonly points: readonly Point[];
      readonly isClosed: boolean;
      readonly pen: Pen;
    }
  | {
      readonly mark: "arc";
      readonly centre: Point;
      readonly radius: number;
      /** degrees, counter-clockwise from one to the other */
      readonly from: number;
      readonly to: number;
      readonly pen: Pen;
    }
  | { readonly mark: "fill"; readonly points: readonly Point[]; readonly tone: Tone }
  | {
      readonly mark: "text";
      /** its base line's start, middle or end */
      readonly at: Point;
      readonly says: string;
      readonly size: number;
      readonly anchor: "start" | "middle" | "end";
      /** degrees, counter-clockwise */
      readonly turn: number;
      readonly isBold: boolean;
      readonly tone: Tone;
    };

/** Marks of one drawing's layer, under a name that stays. */
export type MarkGroup = {
  readonly id: string;
  readonly says: string | undefined;
  readonly marks: readonly Mark[];
};

/** The same colours as on the screen by day. */
export const inks: Readonly<Record<Tone, string>> = {
  ink: "#1e2320",
  graphite: "#585d56",
  hair: "#a9a392",
  crayon: "#a32d22",
  ochre: "#7d5200",
  sage: "#34633f",
};
