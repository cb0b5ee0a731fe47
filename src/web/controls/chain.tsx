import { Fragment } from "react";
import type { LengthUnit } from "../../units/index.ts";
import { type Step, stepsOf, type Worked } from "../../worked/index.ts";
import { Typeset } from "./typeset.tsx";

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

/** The whole chain of one figure, but what is `known` from before: formula, figures put in, sources. */
export function Chain(props: {
  readonly of: Worked;
  readonly units: LengthUnit;
  readonly known?: readonly Worked[];
}) {
  const { of, units, known = [] } = props;
  return <Steps of={branches(stepsOf(of, units, known))} />;
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
