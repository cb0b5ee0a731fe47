import { useEffect, useMemo, useRef, useState } from "react";
import { type Outcome, reckon, type Topic, topics } from "../../reckon/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { AnswerSheet } from "./answer.tsx";
import { Headline } from "./headline.tsx";
import { Questions } from "./questions.tsx";
import { TopicStick } from "./stick.tsx";
import type { Texts } from "./use-texts.ts";

const [firstTopic] = topics;

const topicInAddress = (): Topic | undefined =>
  topics.find((t) => t.name === window.location.hash.slice(2)) ?? firstTopic;

/** The topic named in the page's address, followed as it changes. */
function useTopic(): Topic | undefined {
  const [topic, setTopic] = useState(topicInAddress);
  useEffect(() => {
    const follow = () => setTopic(topicInAddress());
    window.addEventListener("hashchange", follow);
    return () => window.removeEventListener("hashchange", follow);
  }, []);
  return topic;
}

type Good = Extract<Outcome, { ok: true }>;

/** The newest answer that worked, so that the old one can stay while a field is being mended. */
function useLastGood(outcome: Outcome, topic: Topic): Good | undefined {
  const last = useRef<{ topic: Topic; good: Good } | undefined>(undefined);
  if (outcome.ok) last.current = { topic, good: outcome };
  return last.current?.topic === topic ? last.current.good : undefined;
}

export function QuickSums({ units, texts }: { units: LengthUnit; texts: Texts }) {
  const topic = useTopic();
  return topic ? <Sum key={topic.name} topic={topic} units={units} texts={texts} /> : null;
}

function Sum({ topic, units, texts }: { topic: Topic; units: LengthUnit; texts: Texts }) {
  const typed = texts.of(topic);
  const [touched, setTouched] = useState<string | undefined>();
  const outcome = useMemo(() => reckon(topic, typed, units, (name) => name), [topic, typed, units]);
  const good = useLastGood(outcome, topic);
  useEffect(() => {
    document.title = `${topic.title}: Latewood`;
  }, [topic]);
  return (
    <div className="sums">
      <TopicStick current={topic} units={units} texts={texts} />
      <main className="sum">
        <Questions
          topic={topic}
          typed={typed}
          units={units}
          problems={outcome.ok ? [] : outcome.problems}
          write={(name, text) => texts.write(topic, name, text)}
          clear={() => texts.clear(topic)}
          touch={setTouched}
        />
        <Headline good={good} isStale={!outcome.ok} units={units} />
        <AnswerSheet
          topic={topic}
          good={good}
          isStale={!outcome.ok}
          problems={outcome.ok ? [] : outcome.problems}
          units={units}
          touched={touched}
        />
      </main>
    </div>
  );
}
