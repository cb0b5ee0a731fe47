import type { Result } from "../../reckon/index.ts";
import { type LengthUnit, printQuantity } from "../../units/index.ts";
import { Mark } from "../controls/finding-line.tsx";
import { Typeset } from "../controls/typeset.tsx";
import type { Ground } from "./ground.ts";
import { RangeRule } from "./range-rule.tsx";

/** One figure of the answer, with its range and what it stands on; touched, it shows its working. */
export function ResultRow(props: {
  readonly result: Result;
  readonly units: LengthUnit;
  readonly isShown: boolean;
  readonly ground: readonly Ground[];
  /** whether some of what it stands on was said above, and is not repeated */
  readonly hasMoreAbove: boolean;
  readonly choose: () => void;
}) {
  const { result, units, isShown, ground, hasMoreAbove, choose } = props;
  const { worked, purpose } = result;
  const print = (value: number) => printQuantity(value, worked.unit, units, purpose);
  return (
    <li>
      <button type="button" className="result" aria-pressed={isShown} onClick={choose}>
        <span className="result-says">{result.says ?? worked.says}</span>
        <strong className="result-value">
          <Typeset text={print(worked.value)} />
        </strong>
        <RangeRule result={result} print={print} />
      </button>
      {(ground.length > 0 || hasMoreAbove) && (
        <ul className="ground">
          {ground.map(({ kind, says }) => (
            <li key={says}>
              <Mark of={kind} />
              <span className="ground-says">
                <Typeset text={kind === "note" ? `Note: ${says}` : says} />
              </span>
            </li>
          ))}
          {hasMoreAbove && (
            <li>
              <Mark of="unproven" />
              {ground.length > 0 ? "and what is said above" : "rests on what is said above"}
            </li>
          )}
        </ul>
      )}
    </li>
  );
}
