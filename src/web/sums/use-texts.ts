import { useCallback } from "react";
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
  /** writes every bare number's unit out, before the side changes */
  readonly pinAll: () => void;
};

/** The texts of all topics, kept in the browser. */
export function useTexts(units: LengthUnit): Texts {
  const [typed, keep] = useKept<Typed>("latewood/sums", {}, isTyped);
  const of = useCallback(
    (topic: Topic) => {
      const kept = typed[topic.name] ?? openingTexts(topic, units);
      return Object.fromEntries(Object.entries(kept).filter(([name]) => name in topic.asks));
    },
    [typed, units],
  );
  return {
    of,
    write: (topic, name, text) => keep({ ...typed, [topic.name]: { ...of(topic), [name]: text } }),
    clear: (topic) => {
      const { [topic.name]: _, ...others } = typed;
      keep(others);
    },
    pinAll: () => {
      const pinned = (topic: Topic) =>
        Object.fromEntries(
          Object.entries(of(topic)).map(([name, text]) => [
            name,
            topic.asks[name]?.pin(text, units) ?? text,
          ]),
        );
      const kept = topics.filter((t) => t.name in typed);
      keep(Object.fromEntries(kept.map((topic) => [topic.name, pinned(topic)])));
    },
  };
}
