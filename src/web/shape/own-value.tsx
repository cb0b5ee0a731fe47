import { ask } from "../../asking/index.ts";
import type { Value } from "../../piece/index.ts";
import { type LengthUnit, printLength } from "../../units/index.ts";
import { problemAt } from "../../worked/index.ts";
import { Chain } from "../controls/chain.tsx";
import type { Wrong } from "../controls/field-note.tsx";
import { QuantityField } from "../controls/quantity-field.tsx";
import { Typeset } from "../controls/typeset.tsx";
import { useTyping } from "../controls/use-typing.ts";

type Props = {
  readonly value: Value;
  readonly label: string;
  readonly units: LengthUnit;
  /** the text that the maker gave, if any */
  readonly own: string | undefined;
  /** why the piece cannot be made, where this is to blame */
  readonly refusal: Wrong | undefined;
  readonly preview: (text: string | undefined) => void;
  readonly keep: (text: string) => void;
  readonly takeBack: () => void;
};

const standsSays: Readonly<Record<Value["stands"], string>> = {
  computed: "worked out",
  override: "your own",
  measured: "measured",
  cut: "as cut",
};

/** What a part can be made to; the document refuses the same. */
const size = ask.length("size", {
  least: 0,
  most: 10_000,
  example: { inch: "1/2 in", mm: "12 mm" },
});

/** A computed value, which the maker may put another in place of, and take that back. */
export function OwnValue(props: Props) {
  const { value, label, units, own, refusal, preview, keep, takeBack } = props;
  const computed = printLength(value.computed.value, { units });
  const isGood = (text: string) => text.trim() === "" || size.read(text, units, false).ok;
  const typing = useTyping(
    own ?? "",
    isGood,
    (text) => preview(text?.trim() ? text : undefined),
    (text) => (text.trim() === "" ? takeBack() : keep(text)),
  );
  const isEmpty = typing.text.trim() === "";
  const read = size.read(typing.text, units, false);
  const fault = !isEmpty && !read.ok && typing.isSettled ? problemAt("", read.fault) : undefined;
  const wrong = fault ?? (!isEmpty && read.ok ? refusal : undefined);
  return (
    <div className="own-value" data-stands={value.stands}>
      <QuantityField
        label={label}
        text={typing.text}
        placeholder={computed}
        echo={undefined}
        problem={wrong}
        isWrong={wrong !== undefined}
        write={typing.write}
        step={(steps) => size.step(isEmpty ? computed : typing.text, units, steps)}
        settle={typing.settle}
        giveUp={typing.giveUp}
        touch={(isTouched) => !isTouched && typing.leave()}
      />
      <details className="how">
        <summary>
          <Typeset
            text={
              value.stands === "computed"
                ? standsSays.computed
                : `${standsSays[value.stands]}; else ${computed}`
            }
          />
          <span className="spoken">: working of {label}</span>
        </summary>
        <div className="working in-proof">
          <Chain of={value.computed} units={units} />
        </div>
      </details>
      {value.stands === "cut" && (
        <p className="field-note cut-note">
          As it is cut: <Typeset text={printLength(value.inForce, { units })} />
        </p>
      )}
    </div>
  );
}
