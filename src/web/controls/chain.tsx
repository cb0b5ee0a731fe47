import { Fragment } from "react";
import type { Result } from "../../reckon/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { type Step, stepsOf, type Worked } from "../../worked/index.ts";
import { Typeset } from "../controls/typeset.tsx";

/** A step with the steps of what goes into it. */
type Branch = { readonly step: Step; readonly into: readonly Branch[] };

/** A chain is told flat, by depth; the page nests it, so that it can be heard as it is seen. */
function branches(steps: readonly Step[]): readonly Branch[] {
  const [first, ...rest] = steps;
  if (!first) return [];
  const end = rest.findIndex((step) => step.depth <= first.depth);
  const cut = end === -1 ? rest.length : end;
  return [{ step: first, into: branches(rest.slice(0, cut)) }, ...branches(rest.slice(cut))];
}

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
      <Steps of={branches(stepsOf(worked, units))} />
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
  const steps = of ? stepsOf(of, units, known) : [];
  if (steps.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <Steps of={branches(steps)} />
    </>
  );
}

function Steps({ of }: { readonly of: readonly Branch[] }) {
  if (of.length === 0) return null;
  return (
    <ol>
      {of.map(({ step, into }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the chain is drawn anew as a whole
        <li key={i} data-depth={Math.min(step.depth, 4)}>
          <StepLines step={step} />
          <Steps of={into} />
        </li>
      ))}
    </ol>
  );
}

function StepLines({ step }: { readonly step: Step }) {
  const { symbol, says, result, figure, formula, filled, source, notes } = step;
  return (
    <div className="step">
      <p className="step-head">
        <i>
          <Typeset text={symbol} isFormula />
        </i>{" "}
        ={" "}
        <b>
          <Typeset text={result} />
        </b>
        {figure !== result && result !== figure.replace(/ (?=°)/, "") && (
          <span className="step-figure"> {figure}</span>
        )}{" "}
        <span className="step-says">{says}</span>
      </p>
      {formula && filled && (
        <p className="step-formula">
          <Typeset text={formula} isFormula />
          <br />
          <Typeset text={filled} isFormula />
        </p>
      )}
      <p className="step-source">
        {source}
        {notes.map((note) => (
          <Fragment key={note}>
            <br />
            {note}
          </Fragment>
        ))}
      </p>
    </div>
  );
}
