import { Fragment, type ReactNode } from "react";

/** Every drawing is laid out on the same plate, in these units. */
const PLATE = { width: 640, height: 280 };

type At = readonly [x: number, y: number];

export function Plate({ says, children }: { readonly says: string; readonly children: ReactNode }) {
  return (
    <svg
      className="plate"
      viewBox={`0 0 ${PLATE.width} ${PLATE.height}`}
      role="img"
      aria-label={says}
    >
      {children}
    </svg>
  );
}

/** Text on a plate, with true fractions. */
export function Lettering(props: {
  readonly at: At;
  readonly text: string;
  readonly anchor?: "start" | "middle" | "end";
  readonly className?: string;
  readonly turn?: boolean;
}) {
  const { at, text, anchor = "middle", className = "lettering", turn = false } = props;
  const pieces = text
    .replace(/"/g, "″")
    .replace(/^-/, "−")
    .split(/(\d+\/\d+)/);
  return (
    <text
      x={at[0]}
      y={at[1]}
      textAnchor={anchor}
      className={className}
      transform={turn ? `rotate(-90 ${at[0]} ${at[1]})` : undefined}
    >
      {pieces.map((piece, i) =>
        i % 2 === 1 ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one text, always drawn anew
          <tspan key={i} className="frac">
            {piece.replace("/", "⁄")}
          </tspan>
        ) : (
          // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one text, always drawn anew
          <Fragment key={i}>{piece}</Fragment>
        ),
      )}
    </text>
  );
}

/**
 * A dimension between two points, level or upright, set off to one side; blue while its field is
 * touched, so that one sees which size is meant.
 */
export function Dimension(props: {
  readonly from: At;
  readonly to: At;
  readonly off: number;
  readonly label: string;
  readonly isTouched?: boolean;
}) {
  const { from, to, off, label, isTouched = false } = props;
  const isLevel = from[1] === to[1];
  const [dx, dy] = isLevel ? [0, off] : [off, 0];
  const [x1, y1, x2, y2] = [from[0] + dx, from[1] + dy, to[0] + dx, to[1] + dy];
  const gap = Math.sign(off) * 4;
  const [gx, gy] = isLevel ? [0, gap] : [gap, 0];
  const slash = (x: number, y: number) => `M${x - 4} ${y + 4}L${x + 4} ${y - 4}`;
  const middle: At = [(x1 + x2) / 2, (y1 + y2) / 2];
  const isShort = Math.hypot(x2 - x1, y2 - y1) < label.length * 8 + 10;
  const at: At = isLevel
    ? [middle[0], middle[1] + (off < 0 ? -7 : isShort ? 19 : -6)]
    : isShort
      ? [middle[0] + (off < 0 ? -8 : 8), middle[1] + 5]
      : [middle[0] - 6, middle[1]];
  const anchor = isLevel || !isShort ? "middle" : off < 0 ? "end" : "start";
  return (
    <g className="dimension" data-touched={isTouched}>
      <path
        d={`M${from[0] + gx} ${from[1] + gy}L${x1 + gx} ${y1 + gy}M${to[0] + gx} ${to[1] + gy}L${x2 + gx} ${y2 + gy}M${x1} ${y1}L${x2} ${y2}`}
      />
      <path className="slash" d={slash(x1, y1) + slash(x2, y2)} />
      <Lettering at={at} text={label} anchor={anchor} turn={!isLevel && !isShort} />
    </g>
  );
}

/** A load or push, its point at `at`. */
export function Arrow(props: {
  readonly at: At;
  readonly length?: number;
  readonly turn?: number;
}) {
  const { at, length = 34, turn = 0 } = props;
  return (
    <path
      className="load"
      transform={`rotate(${turn} ${at[0]} ${at[1]})`}
      d={`M${at[0]} ${at[1] - length}V${at[1]}M${at[0] - 5} ${at[1] - 9}L${at[0]} ${at[1]}L${at[0] + 5} ${at[1] - 9}`}
    />
  );
}

/** Growth rings about a pith, clipped to a shape that the caller names and draws. */
export function Rings(props: {
  readonly clip: string;
  readonly pith: At;
  readonly from: number;
  readonly to: number;
  readonly every: number;
}) {
  const { clip, pith, from, to, every } = props;
  const count = Math.min(80, Math.max(0, Math.floor((to - from) / every)));
  return (
    <g clipPath={`url(#${clip})`} className="rings">
      {Array.from({ length: count + 1 }, (_, i) => from + i * every).map((radius) => (
        <circle key={radius} cx={pith[0]} cy={pith[1]} r={Math.max(0.1, radius)} />
      ))}
    </g>
  );
}

/** Points as a path. */
export const pathOf = (points: readonly At[], close = false): string =>
  points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x.toFixed(2)} ${y.toFixed(2)}`).join("") +
  (close ? "Z" : "");

/** How many times a small quantity must be magnified to be seen, from a few round numbers. */
export const magnified = (small: number, seen: number): number =>
  [1, 2, 5, 10, 20, 50, 100, 200, 500].findLast((k) => Math.abs(small) * k <= seen) ?? 1;
