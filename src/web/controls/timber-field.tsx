import { useId } from "react";
import { FieldNote, type Wrong } from "./field-note.tsx";

/** Timbers as a screen lists them. */
type TimberGroup = { readonly label: string; readonly names: readonly string[] };

type Props = {
  readonly label: string;
  readonly groups: readonly TimberGroup[];
  readonly chosen: string;
  readonly problem: Wrong | undefined;
  readonly isWrong: boolean;
  readonly write: (name: string) => void;
};

/** A timber from the table; the browser's own list, which every device knows how to show large. */
export function TimberField({ label, groups, chosen, problem, isWrong, write }: Props) {
  const id = useId();
  const isKnown = groups.some((g) => g.names.includes(chosen));
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
        {!isKnown && <option value={chosen}>{chosen || "choose a timber"}</option>}
        {groups.map((group) => (
          <optgroup key={group.label} label={group.label}>
            {group.names.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
      <FieldNote id={`${id}-note`} problem={problem} />
    </div>
  );
}
