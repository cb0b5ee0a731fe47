import type { Problem } from "../../worked/index.ts";
import { Typeset } from "./typeset.tsx";

/** What a note says of a problem. */
export type Wrong = Pick<Problem, "place" | "reason" | "remedy">;

/** What was read where the fault is, unless the reason quotes it anyway. */
function readIn({ place, reason }: Wrong): string {
  const read = /“([^”]+)”/.exec(place)?.[1];
  return read === undefined || reason.includes(read) ? "" : `“${read}”: `;
}

/** What is wrong with a field, said under it; empty while nothing is. */
export function FieldNote(props: { readonly id: string; readonly problem: Wrong | undefined }) {
  const { id, problem } = props;
  return (
    <p className="field-note" id={id}>
      {problem && (
        <>
          {readIn(problem)}
          <Typeset text={problem.reason} />{" "}
          <b>
            <Typeset text={problem.remedy} />
          </b>
        </>
      )}
    </p>
  );
}
