import { Fragment } from "react";
import { figuresIn, type Piece } from "./figures.ts";

/** Text of the page with its figures set. */
export function Typeset(props: { readonly text: string; readonly isFormula?: boolean }) {
  return figuresIn(props.text, props.isFormula).map((piece, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one text, always drawn anew
    <Fragment key={i}>{setInPage(piece)}</Fragment>
  ));
}

/**
 * The type's own fractions stand their figures so far apart that 51/64 reads as 5 1/64, and they
 * are lost where its close-set figures are asked for: so these are small close-set figures.
 */
function setInPage(piece: Piece) {
  switch (piece.kind) {
    case "plain":
      return piece.text;
    case "index":
      return <sub>{piece.text}</sub>;
    case "fraction":
      return (
        <span className="frac">
          <span className="frac-top">{piece.top}</span>⁄
          <span className="frac-bottom">{piece.bottom}</span>
        </span>
      );
  }
}
