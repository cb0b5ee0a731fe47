/** A stretch of text as a printer sets it: plain, a fraction, or a lowered index. */
export type Piece =
  | { readonly kind: "plain"; readonly text: string }
  | { readonly kind: "fraction"; readonly top: string; readonly bottom: string }
  | { readonly kind: "index"; readonly text: string };

/** A fraction standing alone, not part of a longer figure, or an underscored index. */
const PIECES = /(?<![\d.·/])(\d+)\/(\d+)(?![\d/]|[.,]\d)|_([\p{L}\d]+)/gu;
/** In formulas a stroke divides, so only indices are set. */
const INDICES = /()()_([\p{L}\d]+)/gu;

/**
 * Text taken apart for setting: true fractions, primes for inches and feet, a real minus, indices
 * lowered. The page and the drawings set the pieces each in their own way.
 */
export function figuresIn(text: string, isFormula = false): readonly Piece[] {
  const set = text
    .replace(/(^|[\s(])-(?=\d)/g, "$1−")
    .replace(/(?<=\d)"/g, "″")
    .replace(/(?<=\d)'/g, "′");
  const pieces: Piece[] = [];
  const plain = (between: string) => {
    if (between !== "") pieces.push({ kind: "plain", text: between });
  };
  let at = 0;
  for (const match of set.matchAll(isFormula ? INDICES : PIECES)) {
    plain(set.slice(at, match.index));
    const [whole, top, bottom, index] = match;
    pieces.push(
      top && bottom ? { kind: "fraction", top, bottom } : { kind: "index", text: index ?? "" },
    );
    at = match.index + whole.length;
  }
  plain(set.slice(at));
  return pieces;
}
