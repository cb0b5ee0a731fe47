import { useId } from "react";
import { useTyping } from "../controls/use-typing.ts";

type Props = {
  readonly label: string;
  readonly stands: string;
  readonly isNeeded?: boolean;
  readonly keep: (text: string) => void;
};

/** A line of words. */
export function NameField({ label, stands, isNeeded = false, keep }: Props) {
  const id = useId();
  const isGood = (text: string) => !isNeeded || text.trim() !== "";
  const typing = useTyping(stands, isGood, () => undefined, keep);
  const isWrong = typing.isSettled && !isGood(typing.text);
  return (
    <div className="field" data-wrong={isWrong}>
      <label htmlFor={id}>{label}</label>
      <div className="field-line">
        <input
          id={id}
          value={typing.text}
          maxLength={120}
          autoComplete="off"
          aria-invalid={isWrong}
          onChange={(event) => typing.write(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === "Enter") typing.settle();
            if (event.key === "Escape") typing.giveUp();
          }}
          onBlur={typing.leave}
        />
      </div>
      {isWrong && (
        <p className="field-note">
          Nothing is written here. <b>Give it a name.</b>
        </p>
      )}
    </div>
  );
}
