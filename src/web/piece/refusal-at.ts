import type { Wrong } from "../controls/field-note.tsx";
import type { Refusal } from "./talk.ts";

/** Why the piece cannot be made, where one place of the document is to blame; without the place in it. */
export function refusalAt(
  refusals: readonly Refusal[],
  ...place: readonly string[]
): Wrong | undefined {
  return refusals.find((refusal) => refusal.place.split(/, /)[0] === place.join(" › "));
}
