import { Lettering, widthOf } from "./lettering.tsx";
import type { At } from "./path.ts";
import { usePlate } from "./plate.tsx";

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
  /** for a level one: the label past its right end, where something stands in its middle */
  readonly isPast?: boolean;
}) {
  const { from, to, off, label, isTouched = false, isPast = false } = props;
  const { width, letter } = usePlate();
  const isLevel = from[1] === to[1];
  const [dx, dy] = isLevel ? [0, off] : [off, 0];
  const [x1, y1, x2, y2] = [from[0] + dx, from[1] + dy, to[0] + dx, to[1] + dy];
  const gap = Math.sign(off) * 4;
  const [gx, gy] = isLevel ? [0, gap] : [gap, 0];
  const slash = (x: number, y: number) => `M${x - 4} ${y + 4}L${x + 4} ${y - 4}`;
  const [mx, my] = [(x1 + x2) / 2, (y1 + y2) / 2];
  const long = widthOf(label, letter);
  const isShort = Math.hypot(x2 - x1, y2 - y1) < long + 10;
  return (
    <g className="dimension" data-touched={isTouched}>
      <path
        d={`M${from[0] + gx} ${from[1] + gy}L${x1 + gx} ${y1 + gy}M${to[0] + gx} ${to[1] + gy}L${x2 + gx} ${y2 + gy}M${x1} ${y1}L${x2} ${y2}`}
      />
      <path className="slash" d={slash(x1, y1) + slash(x2, y2)} />
      {isPast ? (
        <Lettering at={[x2 + 10, y2 + 5]} anchor="start" text={label} isTouched={isTouched} />
      ) : isLevel ? (
        <Lettering
          at={[mx, off > 0 && isShort ? my + letter + 5 : my - 7]}
          text={label}
          isTouched={isTouched}
        />
      ) : isShort ? (
        <Beside at={[x1, y1, y2]} side={Math.sign(off)} {...{ label, long, isTouched, width }} />
      ) : (
        <Lettering at={[mx - 6, my]} text={label} isUpright isTouched={isTouched} />
      )}
    </g>
  );
}

/** The label of an upright dimension too short to hold it: beside it, or above where that is cut. */
function Beside(props: {
  readonly at: readonly [x: number, y1: number, y2: number];
  readonly side: number;
  readonly label: string;
  readonly long: number;
  readonly width: number;
  readonly isTouched: boolean;
}) {
  const { at, side, label, long, width, isTouched } = props;
  const [x, y1, y2] = at;
  const fits = side < 0 ? x - 9 - long > 4 : x + 9 + long < width - 4;
  return fits ? (
    <Lettering
      at={[x + side * 9, (y1 + y2) / 2 + 5]}
      anchor={side < 0 ? "end" : "start"}
      text={label}
      isTouched={isTouched}
    />
  ) : (
    <Lettering at={[x, Math.min(y1, y2) - 9]} text={label} isTouched={isTouched} />
  );
}

/** A load or push, its point at `at`. */
export function Arrow(props: { readonly at: At; readonly length?: number }) {
  const { at, length = 34 } = props;
  const [x, y] = at;
  return (
    <path
      className="load"
      d={`M${x} ${y - length}V${y}M${x - 5} ${y - 9}L${x} ${y}L${x + 5} ${y - 9}`}
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
