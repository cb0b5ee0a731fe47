import { Fragment, type ReactNode } from "react";

/** A fraction standing alone, or an underscored index. */
const PIECES = /(?<![\d.·])(\d+\/\d+(?=["\s]|$))|_([\p{L}\d]+)/gu;
/** In formulas a stroke divides, so only indices are set. */
const INDICES = /()_([\p{L}\d]+)/gu;

/**
 * Text with its figures set as a printer would: true fractions, primes for inches and feet, a real
 * minus, indices lowered. The fraction alone is wrapped: the feature would shrink whole numbers too.
 */
export function Typeset(props: { readonly text: string; readonly isFormula?: boolean }) {
  const { text, isFormula = false } = props;
  const set = text.replace(/(^|[\s(])-(?=\d)/g, "$1−");
  const parts: ReactNode[] = [];
  let at = 0;
  for (const match of set.matchAll(isFormula ? INDICES : PIECES)) {
    parts.push(marks(set.slice(at, match.index)));
    const [whole, fraction, index] = match;
    if (fraction) {
      parts.push(
        <span className="frac" key={match.index}>
          {fraction.replace("/", "⁄")}
        </span>,
      );
    } else parts.push(<sub key={match.index}>{index}</sub>);
    at = match.index + whole.length;
  }
  parts.push(marks(set.slice(at)));
  return (
    <>
      {parts.map((part, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: parts of one text, always drawn anew
        <Fragment key={i}>{part}</Fragment>
      ))}
    </>
  );
}

const marks = (text: string) => text.replace(/(?<=\d|^)"/g, "″").replace(/(?<=\d)'/g, "′");
