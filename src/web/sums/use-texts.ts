import { useCallback, useState } from "react";
import { openingTexts, type Topic, topics } from "../../reckon/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { useKept } from "../kept.ts";

/** What was typed, by topic and question. */
type Typed = Readonly<Record<string, Readonly<Record<string, string>>>>;

const isRecord = (kept: unknown): kept is Readonly<Record<string, unknown>> =>
  typeof kept === "object" && kept !== null && !Array.isArray(kept);
const isTyped = (kept: unknown): kept is Typed =>
  isRecord(kept) &&
  Object.values(kept).every(
    (t) => isRecord(t) && Object.values(t).every((v) => typeof v === "string"),
  );

export type Texts = {
  readonly of: (topic: Topic) => Readonly<Record<string, string>>;
  readonly write: (topic: Topic, name: string, text: string) => void;
  readonly clear: (topic: Topic) => void;
  /** whether a cleared topic's texts can still be brought back: until something is typed there */
  readonly isCleared: (topic: Topic) => boolean;
  readonly bringBack: (topic: Topic) => void;
  /** writes every bare number's unit out, before the side changes */
  readonly pinAll: () => void;
};

/** The texts of all topics, kept in the browser. */
export function useTexts(units: LengthUnit): Texts {
  const [typed, keep] = useKept<Typed>("latewood/sums", {}, isTyped);
  const [cleared, setCleared] = useState<Typed>({});
  const of = useCallback(
    (topic: Topic) => {
      const kept = typed[topic.name] ?? openingTexts(topic, units);
      return Object.fromEntries(Object.entries(kept).filter(([name]) => name in topic.asks));
    },
    [typed, units],
  );
  return {
    of,
    write: (topic, name, text) => {
      keep({ ...typed, [topic.name]: { ...of(topic), [name]: text } });
      setCleared(without(cleared, topic));
    },
    clear: (topic) => {
      const texts = typed[topic.name];
      if (!texts) return;
      keep(without(typed, topic));
      setCleared({ ...cleared, [topic.name]: texts });
    },
    isCleared: (topic) => topic.name in cleared,
    bringBack: (topic) => {
      const texts = cleared[topic.name];
      if (!texts) return;
      keep({ ...typed, [topic.name]: texts });
      setCleared(without(cleared, topic));
    },
    pinAll: () => {
      keep(pinned(typed, units));
      setCleared(pinned(cleared, units));
    },
  };
}

function without(typed: Typed, topic: Topic): Typed {
  const { [topic.name]: _, ...others } = typed;
  return others;
}

function pinned(typed: Typed, units: LengthUnit): Typed {
  const kept = topics.flatMap((topic) => {
    const texts = Object.entries(typed[topic.name] ?? {});
    const pin = (name: string, text: string) => topic.asks[name]?.pin(text, units) ?? text;
    return topic.name in typed
      ? [[topic.name, Object.fromEntries(texts.map(([n, text]) => [n, pin(n, text)]))] as const]
      : [];
  });
  return Object.fromEntries(kept);
}
