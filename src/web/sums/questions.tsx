import {
  onSide,
  type Question,
  type Topic,
  timberGroups,
  timberNamed,
} from "../../reckon/index.ts";
import { type LengthUnit, printQuantity } from "../../units/index.ts";
import type { Given, Problem } from "../../worked/index.ts";
import { ChoiceField } from "../controls/choice-field.tsx";
import { QuantityField } from "../controls/quantity-field.tsx";
import { TimberField } from "../controls/timber-field.tsx";

type Props = {
  readonly topic: Topic;
  readonly typed: Readonly<Record<string, string>>;
  readonly units: LengthUnit;
  readonly problems: readonly Problem[];
  readonly write: (name: string, text: string) => void;
  readonly clear: () => void;
  readonly touch: (name: string | undefined) => void;
};

/** What a topic asks. */
export function Questions(props: Props) {
  const { topic, clear } = props;
  return (
    <section className="questions" id="questions" aria-labelledby="topic-title" tabIndex={-1}>
      <h1 id="topic-title">{topic.title}</h1>
      <p className="tells">Tells {topic.tells}.</p>
      <form onSubmit={(event) => event.preventDefault()}>
        {Object.entries(topic.asks).map(([name, question]) => (
          <Field key={name} name={name} question={question} {...props} />
        ))}
      </form>
      <button type="button" className="quiet" onClick={clear}>
        Start this sum afresh
      </button>
    </section>
  );
}

function Field({
  name,
  question,
  typed,
  units,
  problems,
  write,
  touch,
}: Props & { readonly name: string; readonly question: Question<unknown> }) {
  const text = typed[name] ?? "";
  const fallback = question.fallback === undefined ? "" : onSide(question.fallback, units);
  const problem = problems.find((p) => p.place === name || p.place.startsWith(`${name}, `));
  const label = capital(question.says);
  if (question.kind === "choice") {
    const chosen = text || fallback;
    return (
      <ChoiceField
        label={label}
        choices={question.choices}
        chosen={chosen}
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
      write={(next) => write(name, next)}
      step={(steps) => question.step(text || fallback, units, steps)}
      touch={(isTouched) => touch(isTouched ? name : undefined)}
    />
  );
}

/** The value as the other side writes it, so that a slip of the unit is seen at once. */
function echoOf(question: Question<unknown>, text: string, units: LengthUnit): string | undefined {
  if (text.trim() === "") return undefined;
  const read = question.read(text, units, false);
  if (!read.ok) return undefined;
  const { value, unit } = read.value as Given;
  const here = printQuantity(value, unit, units);
  const there = printQuantity(value, unit, units === "inch" ? "mm" : "inch");
  return here === there ? undefined : there;
}

const capital = (says: string) => says.charAt(0).toUpperCase() + says.slice(1);
