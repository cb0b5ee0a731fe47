import { onSide, type Question, timberGroups, timberNamed } from "../../asking/index.ts";
import type { Shop } from "../../shop/index.ts";
import { type LengthUnit, printQuantity } from "../../units/index.ts";
import { type Given, problemAt } from "../../worked/index.ts";
import { ChoiceField } from "../controls/choice-field.tsx";
import type { Wrong } from "../controls/field-note.tsx";
import { PickField } from "../controls/pick-field.tsx";
import { QuantityField } from "../controls/quantity-field.tsx";
import { TimberField } from "../controls/timber-field.tsx";
import { useTyping } from "../controls/use-typing.ts";

type Props = {
  readonly question: Question<unknown>;
  /** for what is chosen among its things */
  readonly shop?: Shop | undefined;
  readonly label?: string;
  /** what is kept of it; nothing stands for its default */
  readonly stands: string | undefined;
  readonly units: LengthUnit;
  /** why the piece cannot be made, where this is to blame */
  readonly refusal: Wrong | undefined;
  readonly preview: (text: string | undefined) => void;
  readonly keep: (text: string) => void;
  readonly touch: (isTouched: boolean) => void;
};

/** A question of the piece's, of whatever kind. */
export function AnswerField(props: Props) {
  const { question, shop, stands, units, refusal, keep } = props;
  const label = capital(props.label ?? question.says);
  const fallback = question.fallback === undefined ? "" : onSide(question.fallback, units);
  const text = stands ?? fallback;
  if (question.kind === "choice") {
    return (
      <ChoiceField
        label={label}
        choices={question.choices}
        chosen={text}
        problem={refusal}
        isWrong={refusal !== undefined}
        write={keep}
      />
    );
  }
  if (question.kind === "species") {
    return (
      <TimberField
        label={label}
        groups={timberGroups}
        chosen={timberNamed(text) ?? text}
        problem={refusal}
        isWrong={refusal !== undefined}
        write={keep}
      />
    );
  }
  if (question.kind === "thing") {
    const things = shop && question.from ? shop[question.from].map(({ name }) => name) : [];
    return (
      <PickField
        label={label}
        names={things}
        chosen={things.find((name) => isSame(name, text)) ?? text}
        missing={shop ? "not in the shop" : undefined}
        problem={refusal}
        isWrong={refusal !== undefined}
        write={keep}
      />
    );
  }
  return <SizeField {...props} label={label} text={text} />;
}

function SizeField({
  question,
  label,
  text,
  units,
  refusal,
  preview,
  keep,
  touch,
}: Props & { readonly label: string; readonly text: string }) {
  const isGood = (typed: string) => question.read(typed, units, false).ok;
  const typing = useTyping(text, isGood, preview, keep);
  const read = question.read(typing.text, units, false);
  const fault = !read.ok && typing.isSettled ? problemAt("", read.fault) : undefined;
  const wrong = fault ?? (read.ok ? refusal : undefined);
  return (
    <QuantityField
      label={label}
      text={typing.text}
      placeholder=""
      echo={read.ok ? echoOf(read.value as Given, units) : undefined}
      problem={wrong}
      isWrong={wrong !== undefined}
      write={typing.write}
      step={(steps) => question.step(typing.text, units, steps)}
      settle={typing.settle}
      giveUp={typing.giveUp}
      touch={(isTouched) => {
        touch(isTouched);
        if (!isTouched) typing.leave();
      }}
    />
  );
}

/** The value as the other side writes it, so that a slip of the unit is seen at once. */
function echoOf({ value, unit }: Given, units: LengthUnit): string | undefined {
  const here = printQuantity(value, unit, units);
  const there = printQuantity(value, unit, units === "inch" ? "mm" : "inch");
  return here === there ? undefined : there;
}

/** The shop's things are found however their letters are written. */
const isSame = (a: string, b: string) => a.toLowerCase() === b.toLowerCase();

const capital = (says: string) => says.charAt(0).toUpperCase() + says.slice(1);
