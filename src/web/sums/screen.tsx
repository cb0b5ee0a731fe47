import { type ReactNode, useEffect, useMemo, useState } from "react";
import { type Outcome, reckon, type Topic, topics } from "../../reckon/index.ts";
import { type LengthUnit, printQuantity } from "../../units/index.ts";
import type { Problem } from "../../worked/index.ts";
import { AnswerSheet } from "./answer.tsx";
import { Headline } from "./headline.tsx";
import { subjectOf } from "./place.ts";
import { Questions } from "./questions.tsx";
import { TopicStick } from "./stick.tsx";
import { REST_MS, useComplaints } from "./use-complaints.ts";
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
function useLastGood(outcome: Outcome): Good | undefined {
  const [last, setLast] = useState<Good | undefined>();
  useEffect(() => {
    if (outcome.ok) setLast(outcome);
  }, [outcome]);
  return outcome.ok ? outcome : last;
}

const none: readonly Problem[] = [];

/**
 * The stick, the sum it points at, and what is spoken of it. The sum alone is made anew for each
 * topic: the stick's links keep the focus, and what is spoken is heard only as a change in a place
 * that was there before.
 */
export function QuickSums({ units, texts }: { units: LengthUnit; texts: Texts }) {
  const topic = useTopic();
  const [spoken, setSpoken] = useState("");
  if (!topic) return null;
  return (
    <div className="sums">
      <TopicStick current={topic} units={units} texts={texts} />
      <main className="sum" aria-labelledby="topic-title">
        <Sum key={topic.name} topic={topic} units={units} texts={texts} speak={setSpoken} />
      </main>
      <output className="spoken" aria-atomic="false">
        <span>{topic.title}</span> <span>{spoken}</span>
      </output>
    </div>
  );
}

function Sum(props: {
  readonly topic: Topic;
  readonly units: LengthUnit;
  readonly texts: Texts;
  readonly speak: (text: string) => void;
}): ReactNode {
  const { topic, units, texts, speak } = props;
  const { of } = texts;
  const typed = useMemo(() => of(topic), [of, topic]);
  const [touched, setTouched] = useState<string | undefined>();
  const outcome = useMemo(() => reckon(topic, typed, units, (name) => name), [topic, typed, units]);
  const good = useLastGood(outcome);
  const { complaints, complainNow } = useComplaints(outcome.ok ? none : outcome.problems);
  const touch = (name: string | undefined) => {
    setTouched(name);
    if (name === undefined) complainNow();
  };
  useEffect(() => {
    document.title = `${topic.title}: Latewood`;
  }, [topic]);
  const news = outcome.ok ? firstFigure(outcome, units) : complaintsSpoken(topic, complaints);
  useEffect(() => {
    const timer = setTimeout(() => speak(news), REST_MS);
    return () => clearTimeout(timer);
  }, [news, speak]);
  return (
    <>
      <Questions
        topic={topic}
        typed={typed}
        units={units}
        complaints={complaints}
        write={(name, text) => texts.write(topic, name, text)}
        isCleared={texts.isCleared(topic)}
        clear={() => texts.clear(topic)}
        bringBack={() => texts.bringBack(topic)}
        touch={touch}
      />
      <Headline good={good} isStale={!outcome.ok} isWrong={complaints.length > 0} units={units} />
      <AnswerSheet
        topic={topic}
        good={good}
        isStale={!outcome.ok}
        complaints={complaints}
        units={units}
        touched={touched}
      />
    </>
  );
}

function firstFigure({ answer }: Good, units: LengthUnit): string {
  const [first] = answer.results;
  if (!first) return "";
  const { says, worked, purpose } = first;
  return `${says ?? worked.says}: ${printQuantity(worked.value, worked.unit, units, purpose)}`;
}

const complaintsSpoken = (topic: Topic, complaints: readonly Problem[]) =>
  complaints.map((p) => `${subjectOf(topic, p)}: ${p.reason} ${p.remedy}`).join(" ");
