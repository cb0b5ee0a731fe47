import type { Spot } from "./view.ts";

/** What a hand, a pen or a mouse can do to the picture; places and ways with y down, as pages count. */
export type Gestures = {
  readonly turn: (by: Spot) => void;
  readonly slide: (by: Spot) => void;
  readonly zoom: (factor: number, at: Spot) => void;
  readonly tap: (at: Spot) => void;
  /** A mouse over the picture, or no longer; fingers do not hover. */
  readonly point: (at: Spot | undefined) => void;
};

/** A pointer that moved less than this was meant to stay where it was [px]. */
const STEADY = 5;
/** A wheel's notch of 100 pixels brings nearer by so much, as an exponent; a pinched pad sends less. */
const PER_WHEEL_PX = 0.0016;
const PER_PINCH_PX = 0.01;
/** Pixels in a line of text, for wheels that count lines. */
const LINE = 20;

/**
 * Listens to pointers on the canvas: one turns, two pinch and slide, and so does one with shift or
 * the right button held.
 *
 * @returns what stops it
 */
export function listenTo(canvas: HTMLCanvasElement, gestures: Gestures): () => void {
  const ending = new AbortController();
  const on = <K extends keyof HTMLElementEventMap>(
    name: K,
    heard: (event: HTMLElementEventMap[K]) => void,
  ) => canvas.addEventListener(name, heard, { signal: ending.signal, passive: false });
  const down = new Map<number, Spot>();
  let start: Spot | undefined;

  const spot = ({ clientX, clientY }: MouseEvent): Spot => {
    const { left, top } = canvas.getBoundingClientRect();
    return { x: clientX - left, y: clientY - top };
  };

  on("pointerdown", (event) => {
    canvas.setPointerCapture(event.pointerId);
    down.set(event.pointerId, spot(event));
    start = down.size === 1 && event.button === 0 ? spot(event) : undefined;
    gestures.point(undefined);
  });
  on("pointermove", (event) => {
    const at = spot(event);
    const before = down.get(event.pointerId);
    if (!before) {
      if (event.pointerType !== "touch") gestures.point(at);
      return;
    }
    // Until it has left its place it may still be a tap.
    if (start && distance(start, at) < STEADY) return;
    start = undefined;
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    down.set(event.pointerId, at);
    const by = { x: at.x - before.x, y: at.y - before.y };
    if (other) {
      const gap = distance(before, other);
      if (gap > 0) gestures.zoom(distance(at, other) / gap, half(at, other));
      gestures.slide({ x: by.x / 2, y: by.y / 2 });
    } else if (event.shiftKey || (event.buttons & 6) !== 0) gestures.slide(by);
    else gestures.turn(by);
  });
  const leave = (event: PointerEvent, isTap: boolean) => {
    const wasDown = down.delete(event.pointerId);
    if (wasDown && isTap && start) gestures.tap(spot(event));
    start = undefined;
  };
  on("pointerup", (event) => leave(event, true));
  on("pointercancel", (event) => leave(event, false));
  on("lostpointercapture", (event) => leave(event, false));
  on("pointerleave", () => gestures.point(undefined));
  on("contextmenu", (event) => event.preventDefault());
  on("wheel", (event) => {
    event.preventDefault();
    const pixels = event.deltaY * (event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE : 1);
    const per = event.ctrlKey ? PER_PINCH_PX : PER_WHEEL_PX;
    gestures.zoom(Math.exp(-pixels * per), spot(event));
  });
  return () => ending.abort();
}

const distance = (a: Spot, b: Spot) => Math.hypot(a.x - b.x, a.y - b.y);
const half = (a: Spot, b: Spot): Spot => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
