import { hangsAt } from "../motion/index.ts";
import type { Finding } from "../worked/index.ts";
import { type Alike, waits } from "./leaf-alike.ts";
import { told } from "./told.ts";

/** A leaf this much short of plumb is seen to stand off [°]. */
const SEEN = 0.5;

/** How a leaf comes to rest when nothing but its own joint stops it. */
export function leafRests(alike: Alike): readonly Finding[] {
  const { leaf, first, bind, id, lights } = alike;
  const group = "Fit and swing";
  if (first || bind) return [waits(alike, "rests", group, "It binds before it is down.")];
  const rest = hangsAt(leaf);
  const off = rest.value - 90;
  const isOut = off < -SEEN;
  const past = `${off.toFixed(1)}° past plumb`;
  const says = isOut
    ? `Hanging down, the leaf stands ${(-off).toFixed(1)}° out from plumb: its pin lies higher than half its thickness.`
    : rest.inputs.θ_s
      ? `By itself the leaf’s lip meets the top ${past}, before it hangs quite free: no matter, so long as nobody pushes it further.`
      : `Left to its hinges alone the leaf hangs ${Math.abs(off) < 0.05 ? "plumb" : past}.`;
  return [
    told({
      ...{ id: id("rests"), group, verdict: isOut ? "watch" : "ok", says, lights },
      severity: isOut ? -off / SEEN : 0,
      margin: rest,
    }),
  ];
}
