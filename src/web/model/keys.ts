import { nearer, slid, turned, type View } from "./view.ts";

/** A press turns so far [°], slides so far [px], brings nearer by so much. */
const TURN = 10;
const SLIDE = 40;
const NEARER = 1.2;

type Press = Pick<KeyboardEvent, "key" | "shiftKey" | "ctrlKey" | "metaKey" | "altKey">;

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** What a key makes of the view: arrows turn, with shift they slide; "fit" shows all; else nothing. */
export function pressed(view: View, press: Press): View | "fit" | undefined {
  // Those are the browser's own.
  if (press.ctrlKey || press.metaKey || press.altKey) return undefined;
  const arrow = arrows[press.key];
  if (arrow) {
    const [x, y] = arrow;
    return press.shiftKey
      ? slid(view, { x: -x * SLIDE, y: -y * SLIDE })
      : turned(view, x * TURN, y * TURN);
  }
  if (press.key === "+" || press.key === "=") return nearer(view, NEARER);
  if (press.key === "-" || press.key === "_") return nearer(view, 1 / NEARER);
  return press.key === "0" || press.key === "Home" ? "fit" : undefined;
}

/** L goes on to the next way in which the piece may stand, with Shift to the one before. */
export function stepped(press: Press): 1 | -1 | undefined {
  if (press.ctrlKey || press.metaKey || press.altKey) return undefined;
  return press.key.toLowerCase() === "l" ? (press.shiftKey ? -1 : 1) : undefined;
}
