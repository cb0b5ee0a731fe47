import { type Drawing, drawingMarks, inks, type Point, type Tone } from "../../sheets/index.ts";
import { pathsFor, type Written } from "./drawing-paths.ts";

type Props = {
  /** each with the place of its own 0, 0 on the paper, from the lower left corner [mm] */
  readonly placed: readonly { readonly drawing: Drawing; readonly at: Point }[];
  /** of the paper, from whose upper edge an SVG counts [mm] */
  readonly height: number;
  /** on paper ink is the same by day and in the evening; in the page it is the theme's */
  readonly isOnPaper?: boolean;
};

/** What drawings come to, within an SVG whose user unit is a millimetre on paper. */
export function DrawingMarks({ placed, height, isOnPaper = false }: Props) {
  const colour = (tone: Tone) => (isOnPaper ? inks[tone] : `var(--${tone})`);
  return (
    <g fill="none" strokeLinecap="round" strokeLinejoin="round">
      {placed.flatMap(drawingMarks).map(({ id, marks }) => {
        const { fills, strokes, texts } = pathsFor(marks, height);
        return (
          <g key={id}>
            {fills.map(({ tone, d }) => (
              <path key={tone} d={d} style={{ fill: colour(tone) }} />
            ))}
            {strokes.map(({ pen: { tone, width, dash }, d }) => (
              <path
                key={[tone, width, ...dash].join(" ")}
                d={d}
                strokeWidth={width}
                style={{ stroke: colour(tone) }}
                // A round cap would close up the gaps.
                {...(dash.length > 0
                  ? { strokeDasharray: dash.join(" "), strokeLinecap: "butt" as const }
                  : {})}
              />
            ))}
            {texts.map((text, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is drawn anew as a whole
              <Line key={i} text={text} height={height} colour={colour(text.tone)} />
            ))}
          </g>
        );
      })}
    </g>
  );
}

function Line(props: { readonly text: Written; readonly height: number; readonly colour: string }) {
  const { text, height, colour } = props;
  const { at, says, size, anchor, turn, isBold } = text;
  const [x, y] = [at[0], height - at[1]];
  return (
    <text
      x={x}
      y={y}
      fontSize={size}
      fontWeight={isBold ? 600 : 400}
      textAnchor={anchor}
      style={{ fill: colour }}
      {...(turn === 0 ? {} : { transform: `rotate(${-turn} ${x} ${y})` })}
    >
      {says}
    </text>
  );
}
