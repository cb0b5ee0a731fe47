import { useId } from "react";

type Props = {
  readonly label: string;
  readonly choices: readonly string[];
  readonly chosen: string;
  readonly write: (choice: string) => void;
};

/** One of a few words, all in sight. */
export function ChoiceField({ label, choices, chosen, write }: Props) {
  const id = useId();
  return (
    <fieldset className="field choice">
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
    </fieldset>
  );
}
