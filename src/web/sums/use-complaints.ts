import { useEffect, useState } from "react";
import type { Problem } from "../../worked/index.ts";

/** How long the keys must rest before a half-written text is taken for a finished one. */
export const REST_MS = 700;

/**
 * The problems to show. While a text is being written every other key is a fault, and a page that
 * complained at once would shake: so they wait until the keys rest or the field is left. A mended
 * fault goes at once, and what stands stays until the next is due.
 *
 * @param problems  those of the texts as they are now, the same list as long as they are the same
 */
export function useComplaints(problems: readonly Problem[]) {
  const [due, setDue] = useState(problems);
  useEffect(() => {
    if (problems.length === 0) {
      setDue(problems);
      return;
    }
    const timer = setTimeout(() => afterPress(() => setDue(problems)), REST_MS);
    return () => clearTimeout(timer);
  }, [problems]);
  const isOpen = (shown: Problem) => problems.some((p) => first(p) === first(shown));
  return {
    complaints: due.filter(isOpen),
    complainNow: () => afterPress(() => setDue(problems)),
  };
}

/** What a problem's place begins with: the first field to blame. */
const first = ({ place }: Problem) => place.split(", ")[0];

let isPressed = false;
const press = () => {
  isPressed = true;
};
const release = () => {
  isPressed = false;
};
window.addEventListener("pointerdown", press, true);
window.addEventListener("pointerup", release, true);
window.addEventListener("pointercancel", release, true);

/**
 * Runs when nothing is pressed. A press on a button leaves the field first: a complaint shown then
 * would move the button from under the finger, and the press would be lost.
 */
function afterPress(run: () => void): void {
  if (!isPressed) {
    run();
    return;
  }
  const later = () => setTimeout(run);
  window.addEventListener("pointerup", later, { once: true });
  window.addEventListener("pointercancel", later, { once: true });
}
