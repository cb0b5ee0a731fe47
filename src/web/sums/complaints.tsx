import type { Topic } from "../../reckon/index.ts";
import type { Problem } from "../../worked/index.ts";
import { Mark } from "../controls/finding-line.tsx";
import { Typeset } from "../controls/typeset.tsx";
import { subjectOf } from "./place.ts";

/** What stops the sum, each with what it is about; the field says its own beside it too. */
export function Complaints(props: {
  readonly topic: Topic;
  readonly problems: readonly Problem[];
  readonly hasOld: boolean;
}) {
  const { topic, problems, hasOld } = props;
  if (problems.length === 0) return null;
  return (
    <div className="complaints">
      {problems.map((problem) => (
        <p key={`${problem.place} ${problem.code}`} className="finding" data-verdict="stopped">
          <Mark of="stopped" />
          <span>
            <b className="complaint-subject">{subjectOf(topic, problem)}:</b>{" "}
            <Typeset text={problem.reason} /> <Typeset text={problem.remedy} />
          </span>
        </p>
      ))}
      {hasOld && <p className="aside">The figures and the drawing are the last that worked.</p>}
    </div>
  );
}
