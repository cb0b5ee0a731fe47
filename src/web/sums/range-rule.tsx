import type { Result } from "../../reckon/index.ts";
import { Typeset } from "../controls/typeset.tsx";

/** A range drawn as a short rule with its likely value marked, and said in words. */
export function RangeRule(props: {
  readonly result: Result;
  readonly print: (value: number) => string;
}) {
  const { worked, low, high } = props.result;
  if (!low || !high || low.value === high.value) return null;
  const [near, far] = [low.value, high.value].sort((a, b) => Math.abs(a) - Math.abs(b));
  if (near === undefined || far === undefined) return null;
  const at = (value: number) => 4 + (Math.abs(value) / Math.abs(far)) * 188;
  return (
    <span className="range">
      <svg viewBox="0 0 200 14" aria-hidden="true">
        <path className="range-base" d="M4 10H196" />
        <path className="range-span" d={`M${at(near)} 7H${at(far)}`} />
        <path className="range-ends" d={`M${at(near)} 3V11M${at(far)} 3V11`} />
        <path className="range-likely" d={`M${at(worked.value)} 0V14`} />
      </svg>
      <span>
        <Typeset text={props.print(near)} /> to <Typeset text={props.print(far)} />
      </span>
    </span>
  );
}
