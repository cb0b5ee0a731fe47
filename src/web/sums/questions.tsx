import { onSide, type Question, timberGroups, timberNamed } from "../../asking/index.ts";
import type { Topic } from "../../reckon/index.ts";
import { type LengthUnit, printQuantity } from "../../units/index.ts";
import type { Given, Problem } from "../../worked/index.ts";
import { ChoiceField } from "../controls/choice-field.tsx";
import { QuantityField } from "../controls/quantity-field.tsx";
import { TimberField } from "../controls/timber-field.tsx";
import { blamed } from "./place.ts";

type Props = {
  readonly topic: Topic;
  readonly typed: Readonly<Record<string, string>>;
  readonly units: LengthUnit;
  readonly complaints: readonly Problem[];
  readonly write: (name: string, text: string) => void;
  readonly isCleared: boolean;
  readonly clear: () => void;
  readonly bringBack: () => void;
  readonly touch: (name: string | undefined) => void;
};

/** What a topic asks. */
export function Questions(props: Props) {
  const { topic, isCleared, clear, bringBack } = props;
  return (
    <section className="questions" id="questions" aria-labelledby="topic-title" tabIndex={-1}>
      <h1 id="topic-title">{topic.title}</h1>
      <p className="tells">Tells {topic.tells}.</p>
      <form onSubmit={(event) => event.preventDefault()}>
        {Object.entries(topic.asks).map(([name, question]) => (
          <Field key={name} name={name} question={question} {...props} />
        ))}
      </form>
      <button type="button" className="quiet" onClick={isCleared ? bringBack : clear}>
        {isCleared ? "Bring back what was written" : "Start this sum afresh"}
      </button>
    </section>
  );
}

function Field({
  name,
  question,
  topic,
  typed,
  units,
  complaints,
  write,
  touch,
}: Props & { readonly name: string; readonly question: Question<unknown> }) {
  const text = typed[name] ?? "";
  const fallback = question.fallback === undefined ? "" : onSide(question.fallback, units);
  // Of the fields that share a problem the first says it; all are marked.
  const isWrong = complaints.some((p) => blamed(topic, p).includes(name));
  const problem = complaints.find((p) => blamed(topic, p)[0] === name);
  const label = capital(question.says);
  if (question.kind === "choice") {
    const chosen = text || fallback;
    return (
      <ChoiceField
        label={label}
        choices={question.choices}
        chosen={chosen}
        problem={problem}
        isWrong={isWrong}
        write={(choice) => write(name, choice)}
      />
    );
  }
  if (question.kind === "species") {
    return (
      <TimberField
        label={label}
        groups={timberGroups}
        chosen={timberNamed(text) ?? text}
        problem={problem}
        isWrong={isWrong}
        write={(choice) => write(name, choice)}
      />
    );
  }
  return (
    <QuantityField
      label={label}
      text={text}
      placeholder={fallback || (question.optional ? "left out" : "")}
      echo={echoOf(question, text, units)}
      problem={problem}
      isWrong={isWrong}
      write={(next) => write(name, next)}
      step={(steps) => question.step(text || fallback, units, steps)}
      touch={(isTouched) => touch(isTouched ? name : undefined)}
    />
  );
}

/** The value as the other side writes it, so that a slip of the unit is seen at once. */
function echoOf(question: Question<unknown>, text: string, units: LengthUnit): string | undefined {
  if (question.kind !== "quantity" || text.trim() === "") return undefined;
  const read = question.read(text, units, false);
  if (!read.ok) return undefined;
  const { value, unit } = read.value as Given;
  const here = printQuantity(value, unit, units);
  const there = printQuantity(value, unit, units === "inch" ? "mm" : "inch");
  return here === there ? undefined : there;
}

const capital = (says: string) => says.charAt(0).toUpperCase() + says.slice(1);
