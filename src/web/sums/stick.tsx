import { useEffect, useRef } from "react";
import { type Result, reckon, type Topic, topics } from "../../reckon/index.ts";
import { type LengthUnit, printQuantity } from "../../units/index.ts";
import { Typeset } from "../controls/typeset.tsx";
import type { Texts } from "./use-texts.ts";

/** Every quick sum as a mark on a story stick, with what it comes to now. */
export function TopicStick(props: { current: Topic; units: LengthUnit; texts: Texts }) {
  const { current, units, texts } = props;
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    // On a narrow screen the stick lies across: bring the chosen mark into sight, without motion.
    // Widths are known only when the type has come.
    const mark = list.current?.querySelector(`[href="#/${current.name}"]`);
    document.fonts.ready.then(() => mark?.scrollIntoView({ block: "nearest", inline: "center" }));
  }, [current]);
  return (
    <nav className="stick" aria-label="Quick sums">
      <ol ref={list}>
        {topics.map((topic) => (
          <li key={topic.name}>
            <a href={`#/${topic.name}`} aria-current={topic === current ? "page" : undefined}>
              <span>{topic.title}</span>
              <small>
                <Typeset text={resultNow(topic, units, texts)} />
              </small>
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}

function resultNow(topic: Topic, units: LengthUnit, texts: Texts): string {
  const outcome = reckon(topic, texts.of(topic), units, (name) => name);
  const result: Result | undefined = outcome.ok ? outcome.answer.results[0] : undefined;
  if (!result) return "not answered";
  return printQuantity(result.worked.value, result.worked.unit, units, result.purpose);
}
