import type { Outcome } from "../../reckon/index.ts";
import { type LengthUnit, printQuantity } from "../../units/index.ts";
import { Typeset } from "../controls/typeset.tsx";

/** The first figure of an answer, kept in sight on a phone; touched, it brings the whole answer up. */
export function Headline(props: {
  readonly good: Extract<Outcome, { ok: true }> | undefined;
  readonly isStale: boolean;
  readonly isWrong: boolean;
  readonly units: LengthUnit;
}) {
  const { good, isStale, isWrong, units } = props;
  const first = good?.answer.results[0];
  const toAnswer = () => document.getElementById("answer")?.scrollIntoView();
  if (!first) {
    return (
      <button type="button" className="headline" data-stale onClick={toAnswer}>
        <span>not answered yet</span>
      </button>
    );
  }
  const { worked, says, purpose } = first;
  return (
    <button type="button" className="headline" data-stale={isStale} onClick={toAnswer}>
      <span>
        {says ?? worked.says}
        {isWrong && ", the last that worked"}
      </span>
      <strong>
        <Typeset text={printQuantity(worked.value, worked.unit, units, purpose)} />
      </strong>
    </button>
  );
}
