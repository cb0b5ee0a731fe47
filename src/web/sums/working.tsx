import type { Result } from "../../reckon/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { stepsOf, type Worked } from "../../worked/index.ts";
import { Chain } from "../controls/chain.tsx";

/** The whole chain of one figure: formula, figures put in, where each comes from. */
export function Working({
  result,
  units,
}: {
  readonly result: Result;
  readonly units: LengthUnit;
}) {
  const { worked, low, high } = result;
  // An end that is the figure itself tells nothing new.
  const apart = (end: Worked | undefined) => (end?.value === worked.value ? undefined : end);
  return (
    <section className="working" aria-labelledby="working-title">
      <h2 id="working-title">
        Working <span>{result.says ?? worked.says}</span>
      </h2>
      <Chain of={worked} units={units} />
      <End title="Low end" of={apart(low)} known={[worked]} units={units} />
      <End title="High end" of={apart(high)} known={low ? [worked, low] : [worked]} units={units} />
      <p className="working-foot">Formulas are in millimetres, newtons and kilograms.</p>
    </section>
  );
}

/** One end of a range: only what was not told with the figure itself. */
function End(props: {
  readonly title: string;
  readonly of: Worked | undefined;
  readonly known: readonly Worked[];
  readonly units: LengthUnit;
}) {
  const { title, of, known, units } = props;
  if (!of || stepsOf(of, units, known).length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <Chain of={of} units={units} known={known} />
    </>
  );
}
