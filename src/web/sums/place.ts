import type { Topic } from "../../reckon/index.ts";
import type { Problem } from "../../worked/index.ts";

/** The questions whose fields are to blame: a problem's place begins with their names. */
export function blamed(topic: Topic, problem: Problem): readonly string[] {
  const parts = problem.place.split(", ");
  const end = parts.findIndex((part) => !(part in topic.asks));
  return end === -1 ? parts : parts.slice(0, end);
}

/** What a problem is about, in the words of the screen. */
export function subjectOf(topic: Topic, problem: Problem): string {
  const says = blamed(topic, problem).flatMap((name) => topic.asks[name]?.says ?? []);
  return says.length > 0 ? says.join(" · ") : problem.place;
}
