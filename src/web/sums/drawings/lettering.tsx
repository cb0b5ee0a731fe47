import { Fragment } from "react";
import { figuresIn, type Piece } from "../../controls/figures.ts";
import type { At } from "./path.ts";
import { PLATE_HEIGHT, usePlate } from "./plate.tsx";

/** Clear space that lettering keeps to the plate's edge. */
const EDGE = 4;
/** How far letters reach above and below their line, in their size. */
const ASCENT = 1.05;
const DESCENT = 0.42;
const FRACTION_SIZE = 0.66;
const NUMERATOR_RISE = 0.46;

/**
 * How wide a text comes out at most, in the units of its size. Letters are reckoned by kind, a
 * little generously: to measure them would need the page, and a drawing may be made without one.
 */
export function widthOf(text: string, size: number): number {
  const em = figuresIn(text).reduce((sum, piece) => {
    if (piece.kind === "fraction")
      return sum + (piece.top.length + piece.bottom.length) * 0.5 * FRACTION_SIZE + 0.28;
    return sum + [...piece.text].reduce((wide, letter) => wide + widthOfLetter(letter), 0);
  }, 0);
  return em * size * 1.06;
}

const widthOfLetter = (letter: string): number =>
  /[ .,:;'′″ijl|]/.test(letter)
    ? 0.3
    : /[mwMW%×½→]/.test(letter)
      ? 0.86
      : /[A-Z]/.test(letter)
        ? 0.62
        : 0.53;

type Props = {
  readonly at: At;
  readonly text: string;
  readonly anchor?: "start" | "middle" | "end";
  /** `aside` is smaller and in graphite */
  readonly kind?: "lettering" | "aside";
  readonly isTouched?: boolean;
  /** set upright, to be read from the right */
  readonly isUpright?: boolean;
};

/** Text on a plate, its figures set, moved in (and made smaller) as far as the plate's edge asks. */
export function Lettering(props: Props) {
  const { at, text, anchor = "middle", kind = "lettering", isTouched, isUpright } = props;
  const { width, letter } = usePlate();
  const full = kind === "aside" ? letter * 0.87 : letter;
  const room = (isUpright ? PLATE_HEIGHT : width) - 2 * EDGE;
  const size = Math.min(full, (full * room) / Math.max(1, widthOf(text, full)));
  const long = widthOf(text, size);
  const before = anchor === "start" ? 0 : anchor === "end" ? long : long / 2;
  const along = (from: number) => within(from - before, EDGE, EDGE + room - long) + before;
  const [x, y] = isUpright
    ? [within(at[0], ASCENT * size, width - DESCENT * size), along(at[1])]
    : [along(at[0]), within(at[1], ASCENT * size, PLATE_HEIGHT - DESCENT * size)];
  return (
    <text
      x={x}
      y={y}
      fontSize={size}
      textAnchor={anchor}
      className={isTouched ? `${kind} touched` : kind}
      transform={isUpright ? `rotate(-90 ${x} ${y})` : undefined}
    >
      {figuresIn(text).map((piece, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one text, always drawn anew
        <Fragment key={i}>{setOnPlate(piece)}</Fragment>
      ))}
    </text>
  );
}

const within = (n: number, least: number, most: number) => Math.max(least, Math.min(most, n));

/** As the page sets it; on a plate a shift holds for all that follows, so it is taken back. */
function setOnPlate(piece: Piece) {
  if (piece.kind !== "fraction") return piece.text;
  return (
    <tspan className="frac">
      <tspan className="frac-top" dy={`-${NUMERATOR_RISE}em`}>
        {piece.top}
      </tspan>
      <tspan dy={`${NUMERATOR_RISE * FRACTION_SIZE}em`}>⁄</tspan>
      <tspan className="frac-bottom">{piece.bottom}</tspan>
    </tspan>
  );
}
