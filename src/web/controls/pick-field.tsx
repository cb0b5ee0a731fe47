import { useId } from "react";
import { FieldNote, type Wrong } from "./field-note.tsx";

type Props = {
  readonly label: string;
  readonly names: readonly string[];
  readonly chosen: string;
  /** said behind what is chosen and is not among the names */
  readonly missing: string | undefined;
  readonly problem: Wrong | undefined;
  readonly isWrong: boolean;
  readonly write: (name: string) => void;
};

/** One of many names; the browser's own list, which every device knows how to show large. */
export function PickField({ label, names, chosen, missing, problem, isWrong, write }: Props) {
  const id = useId();
  return (
    <div className="field" data-wrong={isWrong}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={chosen}
        aria-invalid={isWrong}
        aria-describedby={`${id}-note`}
        onChange={(event) => write(event.target.value)}
      >
        {!names.includes(chosen) && (
          <option value={chosen}>{missing ? `${chosen} (${missing})` : chosen}</option>
        )}
        {names.map((name) => (
          <option key={name} value={name}>
            {name}
          </option>
        ))}
      </select>
      <FieldNote id={`${id}-note`} problem={problem} />
    </div>
  );
}
