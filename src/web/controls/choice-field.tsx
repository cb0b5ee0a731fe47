import { useId } from "react";
import { FieldNote, type Wrong } from "./field-note.tsx";

type Props = {
  readonly label: string;
  readonly choices: readonly string[];
  readonly chosen: string;
  readonly problem: Wrong | undefined;
  readonly isWrong: boolean;
  readonly write: (choice: string) => void;
};

/** One of a few words, all in sight. */
export function ChoiceField({ label, choices, chosen, problem, isWrong, write }: Props) {
  const id = useId();
  return (
    <fieldset className="field choice" data-wrong={isWrong} aria-describedby={`${id}-note`}>
      <legend>{label}</legend>
      <div className="choice-line">
        {choices.map((choice) => (
          <label key={choice} data-on={choice === chosen}>
            <input
              type="radio"
              name={id}
              value={choice}
              checked={choice === chosen}
              onChange={() => write(choice)}
            />
            {choice}
          </label>
        ))}
      </div>
      <FieldNote id={`${id}-note`} problem={problem} />
    </fieldset>
  );
}
