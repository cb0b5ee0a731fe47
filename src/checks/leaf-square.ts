import { type SquareBind, squareGapDown, squareRoom } from "../motion/index.ts";
import type { Shop } from "../shop/index.ts";
import { mm } from "../units/index.ts";
import {
  commonPractice,
  derived,
  type Finding,
  given,
  type Worked,
  work,
} from "../worked/index.ts";
import { type Alike, waits } from "./leaf-alike.ts";
import { told } from "./told.ts";

/** Less than this rubs as soon as finish comes between; common practice [mm]. */
const LEAST = 0.1;
/** A tie with that counts as reached [mm]. */
const HAIR = 1e-6;
/** A wider gap is noticed from above; our own measure. */
const WIDE = given("widest gap that is not noticed", mm(1.2), "mm", commonPractice);

/** Whether a leaf between square edges swings free, where it does not, and how it looks when down. */
export function squareLeaves(alike: Alike, shop: Shop): readonly Finding[] {
  if (alike.section) return [];
  const { bind } = alike;
  const room = squareRoom(alike.leaf);
  return [
    swings(alike, bind, room),
    bind ? waits(alike, "down", "Fit and swing", "It binds before it is down.") : down(alike),
    bind
      ? waits(alike, "pin", "Can this shop make it", "It binds with the pin where it is planned.")
      : pin(alike, room, shop),
  ];
}

function swings({ id, lights, show }: Alike, bind: SquareBind | undefined, room: Worked): Finding {
  const isTight = room.value < LEAST - HAIR;
  const verdict = bind ? "fails" : isTight ? "watch" : "ok";
  const says = {
    fails: bind
      ? `The leaf binds ${bind.swing.toFixed(0)}° down, at the ${bind.contact}: between square edges the pin may lie no higher over the underside than half the gap. Take hinges with the pin at their face, let in flush or laid on the face: the pin must come ${show(LEAST - room.value)} lower.`
      : "",
    watch: `The leaf swings, but its lower edge passes the top’s with less than ${show(LEAST)} to spare: finish or dust can make it rub. Widen the gap a little, or set the hinges less deep.`,
    ok: "The leaf swings free all the way down.",
  }[verdict];
  return told({
    ...{ id: id("swing"), group: "Fit and swing", verdict, says, lights },
    severity: verdict === "ok" ? 0 : 1 + (LEAST - room.value) / LEAST,
    margin: room,
    why: [room, ...(bind ? [begins(bind)] : [])],
  });
}

const begins = (bind: SquareBind): Worked =>
  work({
    says: "binds with the leaf down by",
    unit: "°",
    formula: "θ = a",
    inputs: {
      a: given(
        `first overlap on the way down, at the ${bind.contact}`,
        bind.swing,
        "°",
        derived("found by turning the corners about the pin"),
      ),
    },
    value: bind.swing,
    source: derived("geometry of the joint’s section"),
  });

function down({ leaf, id, lights, show }: Alike): Finding {
  const G = squareGapDown(leaf);
  const margin = work({
    says: "gap seen from above, under what is noticed",
    unit: "mm",
    formula: "a = w − G",
    inputs: { w: WIDE, G },
    value: mm(WIDE.value - G.value),
    source: derived("arithmetic"),
  });
  const isWide = margin.value < 0;
  return told({
    ...{ id: id("down"), group: "Fit and swing", verdict: isWide ? "watch" : "ok", margin, lights },
    severity: isWide ? G.value / WIDE.value : 0,
    says: isWide
      ? `With the leaf down a gap of ${show(G.value)} stands open between it and the top’s edge: the pin lies low under the face. Let the hinges in deeper.`
      : "With the leaf down it hangs close to the top’s edge.",
  });
}

function pin({ id, lights, show }: Alike, m: Worked, { pinError, isDemo }: Shop): Finding {
  const s = given(
    "how far a pin usually comes out off its place",
    pinError,
    "mm",
    derived(isDemo ? "the demo shop’s, invented" : "the shop’s own"),
  );
  const margin = work({
    says: "room for the pin beyond twice its usual error",
    unit: "mm",
    formula: "a = m − 2·s",
    inputs: { m, s },
    value: mm(m.value - 2 * s.value),
    source: derived("one pin in twenty strays further than about twice its usual error"),
  });
  const isTight = margin.value < -HAIR;
  return told({
    ...{ id: id("pin"), group: "Can this shop make it", margin, lights },
    verdict: isTight ? "watch" : "ok",
    severity: isTight ? 1 - margin.value / (2 * s.value) : 0,
    says: isTight
      ? `A pin ${show(m.value)} too high makes the leaf bind, and yours stray by up to ${show(2 * s.value)}: widen the gap, or set the hinges a shaving less deep.`
      : "The pin may stray as yours do before the leaf binds.",
  });
}
