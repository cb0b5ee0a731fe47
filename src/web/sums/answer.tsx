import { useState } from "react";
import type { Outcome, Result, Topic } from "../../reckon/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { type Caution, cite, type Problem } from "../../worked/index.ts";
import { FindingLine } from "../controls/finding-line.tsx";
import { Typeset } from "../controls/typeset.tsx";
import { Complaints } from "./complaints.tsx";
import { Drawing } from "./drawings/index.tsx";
import { groundOf } from "./ground.ts";
import { ResultRow } from "./result-row.tsx";
import { Working } from "./working.tsx";

type Props = {
  readonly topic: Topic;
  readonly good: Extract<Outcome, { ok: true }> | undefined;
  readonly isStale: boolean;
  readonly complaints: readonly Problem[];
  readonly units: LengthUnit;
  /** the question whose field has the focus */
  readonly touched: string | undefined;
};

/** The answer on its sheet: drawing, figures, what they mean, cautions, and the working beside them. */
export function AnswerSheet({ topic, good, isStale, complaints, units, touched }: Props) {
  const [chosen, setChosen] = useState<string | undefined>();
  const { results, findings, remarks, cautions } = good?.answer ?? nothing;
  const shown = results.find((r) => r.name === chosen) ?? results[0];
  return (
    <section className="answer" id="answer" aria-label="Answer" data-stale={isStale}>
      {good && <Drawing topic={topic.name} good={good} units={units} touched={touched} />}
      <Results results={results} units={units} shown={shown} choose={setChosen} />
      <div className="words">
        <Complaints topic={topic} problems={complaints} hasOld={good !== undefined} />
        {/* A verdict on what was written before would contradict what is written now. */}
        {complaints.length === 0 && (
          <div className="findings">
            {findings.map((finding) => (
              <FindingLine key={finding.id} finding={finding} />
            ))}
          </div>
        )}
        {remarks.map((remark) => (
          <p key={remark}>
            <Typeset text={remark} />
          </p>
        ))}
        <Cautions cautions={cautions} />
      </div>
      {shown && <Working result={shown} units={units} />}
    </section>
  );
}

const nothing = { results: [], findings: [], remarks: [], cautions: [] };

function Results(props: {
  readonly results: readonly Result[];
  readonly units: LengthUnit;
  readonly shown: Result | undefined;
  readonly choose: (name: string) => void;
}) {
  const { results, units, shown, choose } = props;
  const told = new Set<string>();
  return (
    <ol className="results">
      {results.map((result) => {
        const all = groundOf(result);
        const fresh = all.filter(({ says }) => !told.has(says));
        for (const { says } of fresh) told.add(says);
        return (
          <ResultRow
            key={result.name}
            result={result}
            units={units}
            isShown={result === shown}
            ground={fresh}
            hasMoreAbove={fresh.length < all.length}
            choose={() => choose(result.name)}
          />
        );
      })}
    </ol>
  );
}

function Cautions({ cautions }: { readonly cautions: readonly Caution[] }) {
  if (cautions.length === 0) return null;
  return (
    <aside className="cautions" aria-label="Take care">
      <h2>Take care</h2>
      <ul>
        {cautions.map(({ says, source }) => (
          <li key={says}>
            <Typeset text={says} /> <cite>{cite(source)}</cite>
          </li>
        ))}
      </ul>
    </aside>
  );
}
