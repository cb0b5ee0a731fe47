import { Fragment } from "react";
import type { Result } from "../../reckon/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { type Step, stepsOf } from "../../worked/index.ts";
import { Typeset } from "../controls/typeset.tsx";

/** The whole chain of one figure: formula, figures put in, where each comes from. */
export function Working({
  result,
  units,
}: {
  readonly result: Result;
  readonly units: LengthUnit;
}) {
  const steps = stepsOf(result.worked, units);
  return (
    <section className="working" aria-labelledby="working-title">
      <h2 id="working-title">
        Working <span>{result.says ?? result.worked.says}</span>
      </h2>
      <ol>
        {steps.map((step, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the chain is drawn anew as a whole
          <StepLine key={i} step={step} />
        ))}
      </ol>
      <p className="working-foot">
        Formulas are in millimetres, newtons and kilograms; angles in radians.
      </p>
    </section>
  );
}

function StepLine({ step }: { readonly step: Step }) {
  const { depth, symbol, says, result, figure, formula, filled, source, notes } = step;
  const isPlain = source === "given";
  return (
    <li data-depth={Math.min(depth, 4)} data-worked={formula !== undefined}>
      <p className="step-head">
        <i>
          <Typeset text={symbol} isFormula />
        </i>{" "}
        = <b>{<Typeset text={result} />}</b>
        {figure !== result && result !== figure.replace(/ (?=°)/, "") && (
          <span className="step-figure"> {figure}</span>
        )}{" "}
        <span className="step-says">{says}</span>
      </p>
      {formula && (
        <p className="step-formula">
          <Typeset text={formula} isFormula />
          <br />
          <Typeset text={`${symbol} = ${filled}`} isFormula />
        </p>
      )}
      <p className="step-source" data-plain={isPlain}>
        {source}
        {notes.map((note) => (
          <Fragment key={note}>
            <br />
            {note}
          </Fragment>
        ))}
      </p>
    </li>
  );
}
