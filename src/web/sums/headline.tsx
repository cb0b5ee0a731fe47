import type { Outcome } from "../../reckon/index.ts";
import { type LengthUnit, printQuantity } from "../../units/index.ts";
import { Typeset } from "../controls/typeset.tsx";

/** The first figure of an answer, kept in sight on a phone; touched, it brings the whole answer up. */
export function Headline(props: {
  readonly good: Extract<Outcome, { ok: true }> | undefined;
  readonly isStale: boolean;
  readonly units: LengthUnit;
}) {
  const { good, isStale, units } = props;
  const first = good?.answer.results[0];
  if (!first) return null;
  const { worked, says, purpose } = first;
  return (
    <button
      type="button"
      className="headline"
      data-stale={isStale}
      onClick={() => document.getElementById("answer")?.scrollIntoView()}
    >
      <span>{says ?? worked.says}</span>
      <strong>
        <Typeset text={printQuantity(worked.value, worked.unit, units, purpose)} />
      </strong>
    </button>
  );
}
