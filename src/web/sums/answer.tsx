import { useState } from "react";
import type { Outcome, Result, Topic } from "../../reckon/index.ts";
import { type LengthUnit, printQuantity } from "../../units/index.ts";
import { cite, type Finding, type Problem } from "../../worked/index.ts";
import { Typeset } from "../controls/typeset.tsx";
import { Drawing } from "./drawings/index.tsx";
import { RangeRule } from "./range-rule.tsx";
import { Working } from "./working.tsx";

type Good = Extract<Outcome, { ok: true }>;

type Props = {
  readonly topic: Topic;
  readonly good: Good | undefined;
  readonly isStale: boolean;
  readonly problems: readonly Problem[];
  readonly units: LengthUnit;
  /** the question whose field has the focus */
  readonly touched: string | undefined;
};

/** The answer on its sheet: drawing, figures, what they mean, cautions, and the working beside them. */
export function AnswerSheet({ topic, good, isStale, problems, units, touched }: Props) {
  const [chosen, setChosen] = useState<string | undefined>();
  if (!good) {
    return (
      <section className="answer" aria-label="Answer">
        <Complaints problems={problems} hasOld={false} />
      </section>
    );
  }
  const { results, findings, remarks, cautions } = good.answer;
  const shown = results.find((r) => r.name === chosen) ?? results[0];
  return (
    <section className="answer" id="answer" aria-label="Answer" data-stale={isStale}>
      {isStale && <Complaints problems={problems} hasOld />}
      <Drawing topic={topic.name} good={good} units={units} touched={touched} />
      <ol className="results">
        {results.map((result) => (
          <ResultRow
            key={result.name}
            result={result}
            units={units}
            isShown={result === shown}
            choose={() => setChosen(result.name)}
          />
        ))}
      </ol>
      <div className="words">
        {findings.map((finding) => (
          <FindingLine key={finding.id} finding={finding} />
        ))}
        {remarks.map((remark) => (
          <p key={remark}>{remark}</p>
        ))}
        {cautions.length > 0 && (
          <aside className="cautions" aria-label="Take care">
            <h2>Take care</h2>
            <ul>
              {cautions.map(({ says, source }) => (
                <li key={says}>
                  {says} <cite>{cite(source)}</cite>
                </li>
              ))}
            </ul>
          </aside>
        )}
      </div>
      {shown && <Working result={shown} units={units} />}
    </section>
  );
}

function ResultRow(props: {
  readonly result: Result;
  readonly units: LengthUnit;
  readonly isShown: boolean;
  readonly choose: () => void;
}) {
  const { result, units, isShown, choose } = props;
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
    </li>
  );
}

/** What stops the sum; a field says its own beside it too. */
function Complaints(props: { readonly problems: readonly Problem[]; readonly hasOld: boolean }) {
  const { problems, hasOld } = props;
  return (
    <div className="complaints" role="status">
      {problems.map((problem) => (
        <p key={`${problem.place} ${problem.code}`}>
          {problem.reason} <b>{problem.remedy}</b>
        </p>
      ))}
      {hasOld && <p className="aside">Below stands the last answer that worked.</p>}
    </div>
  );
}

const verdicts = {
  ok: { word: "Proven.", path: "M2.5 9.5l4.5 5 8.5-12" },
  watch: { word: "Watch.", path: "M9 2l7.5 14h-15z" },
  fails: { word: "Stops.", path: "M1.5 1.5h15v15h-15zM4 4l10 10M14 4L4 14" },
  "not-judged": { word: "Not judged.", path: "M3 9h12" },
} as const;

function FindingLine({ finding }: { readonly finding: Finding }) {
  const { word, path } = verdicts[finding.verdict];
  return (
    <p className="finding" data-verdict={finding.verdict}>
      <svg viewBox="0 0 18 18" aria-hidden="true">
        <path d={path} />
      </svg>
      <span>
        <b>{word}</b> {finding.says}
      </span>
    </p>
  );
}
