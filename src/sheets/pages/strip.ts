import type { Drawing, Lettering, Point, Stroke } from "../drawing.ts";
import { blankDrawing } from "../drawing.ts";
import { lettering, shortened, sizes } from "../lettering.ts";
import { margins, type Paper, STRIP, type Title } from "../sheet.ts";

/** True lengths of the check bar, one for each side's rule [mm]. */
const CHECK = { metric: 100, inch: 4 * 25.4 } as const;

/** Height of each of its two rows [mm]. */
const ROW = STRIP / 2;
/** Widths of the cells that need no more; the first two share the rest [mm]. */
const CELLS = { timber: 36, scale: 20, date: 26, sheet: 18 } as const;

const line = (from: Point, to: Point): Stroke => ({ shape: "line", from, to });

/**
 * Border and title strip, with the check bar that tells whether a print came out at true size.
 *
 * @param number  the sheet's place in its set, from 1 [pieces]
 * @param of  how many sheets there are [pieces]
 */
export function stripDrawing(title: Title, paper: Paper, number: number, of: number): Drawing {
  const [left, right] = [margins.left, paper.width - margins.right];
  const [low, top] = [margins.bottom, paper.height - margins.top];
  const cells = cellsOf(title, right - left, number, of);
  const edges = cells.map(({ from }) => left + from).slice(1);
  const bar = checkBar([left + 6, low + ROW / 2 - 0.3]);
  return {
    ...blankDrawing("strip", `Title strip: ${title.piece}, ${title.shows}`, 1),
    strokes: {
      visible: [
        {
          shape: "path",
          isClosed: true,
          points: [
            [left, low],
            [right, low],
            [right, top],
            [left, top],
          ],
        },
        line([left, low + STRIP], [right, low + STRIP]),
      ],
      dimensions: [
        line([left, low + ROW], [right, low + ROW]),
        ...edges.map((x) => line([x, low + ROW], [x, low + STRIP])),
        ...bar.strokes,
      ],
    },
    texts: [
      ...cells.flatMap((cell) => cellTexts(cell, [left + cell.from, low + ROW])),
      ...bar.texts,
      ...remarks(title, left + 6 + CHECK.inch + 17, right - 2.5, low),
    ],
  };
}

type Cell = {
  readonly name: string;
  readonly says: string;
  readonly from: number;
  readonly wide: number;
};

function cellsOf(title: Title, wide: number, number: number, of: number): readonly Cell[] {
  const rest = wide - Object.values(CELLS).reduce((sum, one) => sum + one, 0);
  const plan: readonly (readonly [string, string, number])[] = [
    ["Piece", title.piece, rest * 0.53],
    ["Drawing", title.shows, rest * 0.47],
    ["Timber", title.timber, CELLS.timber],
    ["Scale", title.scale === "" ? "—" : title.scale, CELLS.scale],
    ["Date", title.date, CELLS.date],
    ["Sheet", `${number} of ${of}`, CELLS.sheet],
  ];
  let from = 0;
  return plan.map(([name, says, width]) => {
    const cell = { name, says, from, wide: width };
    from += width;
    return cell;
  });
}

function cellTexts({ name, says, wide }: Cell, [x, y]: Point): readonly Lettering[] {
  const isBold = name === "Piece";
  const { label, figure } = sizes;
  return [
    lettering([x + 1.6, y + ROW - 2.9], name, { size: label, tone: "graphite" }),
    lettering([x + 1.6, y + 2.2], shortened(says, figure, wide - 3, isBold), {
      size: figure,
      isBold,
    }),
  ];
}

/** One line, inches ticked above it and centimetres below. */
function checkBar([x, y]: Point): {
  readonly strokes: readonly Stroke[];
  readonly texts: readonly Lettering[];
} {
  const tick = (at: number, reach: number) => line([x + at, y], [x + at, y + reach]);
  const isEnd = (i: number, last: number) => i === 0 || i === last;
  const after = (says: string, at: number, up: number) =>
    lettering([x + at, y + up], says, { size: sizes.small });
  return {
    strokes: [
      line([x, y], [x + CHECK.inch, y]),
      ...[0, 1, 2, 3, 4].map((i) => tick(i * 25.4, isEnd(i, 4) ? 3 : 2)),
      ...Array.from({ length: 11 }, (_, i) => tick(i * 10, isEnd(i, 10) ? -3 : -1.6)),
    ],
    texts: [after("4 in", CHECK.inch + 1.5, 0.9), after("100 mm", CHECK.inch + 1.5, -3)],
  };
}

function remarks(title: Title, x: number, right: number, low: number): readonly Lettering[] {
  const unit = title.units === "mm" ? "millimetres" : "inches";
  const { small } = sizes;
  const room = right - x - (title.isDemo ? 42 : 0);
  const say = (says: string, row: number) =>
    lettering([x, low + (row === 0 ? 5.9 : 2)], shortened(says, small, room), {
      size: small,
      tone: "graphite",
    });
  return [
    say("Print at actual size: the bar tells.", 0),
    say(`Dimensions in ${unit}.`, 1),
    ...(title.isDemo
      ? [
          lettering([right, low + 5.9], "Demonstration", {
            ...{ size: sizes.figure, isBold: true, tone: "crayon", anchor: "end" },
          }),
          lettering([right, low + 2], "invented piece and client", {
            ...{ size: small, tone: "crayon", anchor: "end" },
          }),
        ]
      : []),
  ];
}
