import { type KeyboardEvent, useId } from "react";
import { FieldNote, type Wrong } from "./field-note.tsx";
import { Typeset } from "./typeset.tsx";

type Props = {
  readonly label: string;
  readonly text: string;
  /** what stands when nothing is written */
  readonly placeholder: string;
  /** the value read, on the other side of the inch */
  readonly echo: string | undefined;
  readonly problem: Wrong | undefined;
  /** whether it is to blame for a problem, its own or one that it shares with other fields */
  readonly isWrong: boolean;
  readonly write: (text: string) => void;
  readonly step: (steps: number) => string | undefined;
  readonly touch: (isTouched: boolean) => void;
  /** Enter and Escape, where they mean something */
  readonly settle?: () => void;
  readonly giveUp?: () => void;
};

const keys: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};

/** A field for any way of writing a quantity; the arrow keys step it, a fault says what was read. */
export function QuantityField(props: Props) {
  const { label, text, placeholder, echo, problem, isWrong, write, step, touch } = props;
  const { settle, giveUp } = props;
  const id = useId();
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Enter") settle?.();
    if (event.key === "Escape") giveUp?.();
    const steps = keys[event.key];
    const next = steps === undefined ? undefined : step(steps);
    if (next === undefined) return;
    event.preventDefault();
    write(next);
  };
  return (
    <div className="field" data-wrong={isWrong}>
      <label htmlFor={id}>{label}</label>
      <div className="field-line">
        <input
          id={id}
          value={text}
          placeholder={placeholder}
          autoComplete="off"
          autoCorrect="off"
          autoCapitalize="off"
          spellCheck={false}
          inputMode="text"
          aria-invalid={isWrong}
          aria-describedby={`${id}-note`}
          onChange={(event) => write(event.target.value)}
          onKeyDown={onKeyDown}
          onFocus={() => touch(true)}
          onBlur={() => touch(false)}
        />
        {echo && (
          <span className="echo">
            <Typeset text={echo} />
          </span>
        )}
      </div>
      <FieldNote id={`${id}-note`} problem={problem} />
    </div>
  );
}
