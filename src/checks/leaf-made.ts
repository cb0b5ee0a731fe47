import { type SetOutError, type Spreads, safeRadius, toleranceStudy } from "../motion/index.ts";
import type { Shop } from "../shop/index.ts";
import { mm } from "../units/index.ts";
import { derived, type Finding, given, type Worked, work } from "../worked/index.ts";
import { type Alike, waits } from "./leaf-alike.ts";
import { told } from "./told.ts";

const GROUP = "Can this shop make it";
/** Of a hundred joints made so; past it a shop would rather aim better. */
const MANY = 10;
const TRIALS = 2000;
const SEED = 1;

/** Whether the pin has room to stray as pins of this shop do. */
export function leafPin(alike: Alike, shop: Shop): readonly Finding[] {
  const { section, first, id, lights, show } = alike;
  if (!section) return [];
  if (first) return [waits(alike, "pin", GROUP, "It binds with the pin where it is planned.")];
  const r = safeRadius(section);
  const s = usualError(shop);
  const margin = work({
    says: "room for the pin beyond twice its usual error",
    unit: "mm",
    formula: "a = r − 2·s",
    inputs: { r, s },
    value: mm(r.value - 2 * s.value),
    source: derived("one pin in twenty strays further than about twice its usual error"),
  });
  const isTight = margin.value < 0;
  return [
    told({
      ...{ id: id("pin"), group: GROUP, verdict: isTight ? "watch" : "ok", margin, lights },
      severity: isTight ? 1 - margin.value / (2 * s.value) : 0,
      says: isTight
        ? `A pin off its place by ${show(r.value)} the wrong way makes the leaf bind, and yours stray by up to ${show(2 * s.value)}: set the hinges on a sample joint first, or aim where there is more room.`
        : `The pin may be off by ${show(r.value)} whichever way before the leaf binds, more than twice your usual error.`,
    }),
  ];
}

const usualError = ({ pinError, isDemo }: Shop) =>
  given(
    "how far a pin usually comes out off its place",
    pinError,
    "mm",
    derived(isDemo ? "the demo shop’s, invented" : "the shop’s own"),
  );

const spreadsOf = (shop: Shop): Spreads => ({
  "pin across": shop.pinError,
  "pin height": shop.pinError,
  "round-over": shop.cutterError,
  cove: shop.cutterError,
  thickness: shop.thicknessError,
  "set-out": shop.setOutError,
});

/** What each error is called in a sentence. */
const names: Readonly<Record<SetOutError, string>> = {
  "pin across": "how far out the pin stands",
  "pin height": "the pin’s height",
  "round-over": "the round-over’s radius",
  cove: "the cove’s radius",
  thickness: "the thickness of top and leaf",
  "set-out": "how far the leaf is set out",
};

/** How often the joint would bind, made many times with the shop's errors. */
export function leafErrors(alike: Alike, shop: Shop): readonly Finding[] {
  const { section, first, id, lights } = alike;
  if (!section) return [];
  if (first) return [waits(alike, "errors", GROUP, "It binds as planned already.")];
  const { binding, errors } = toleranceStudy(section, spreadsOf(shop), TRIALS, SEED);
  const isOften = binding.value > MANY;
  const [weighty] = errors;
  const most = weighty
    ? ` Most depends on ${names[weighty.error]}: of those that bind ${weighty.frees.toFixed(0)} in a hundred would swing free had it been exact.`
    : "";
  const share = binding.value < 1 ? "fewer than one" : `about ${binding.value.toFixed(0)}`;
  return [
    told({
      ...{ id: id("errors"), group: GROUP, lights },
      margin: leftOf(binding),
      verdict: isOften ? "watch" : shop.isDemo ? "not-judged" : "ok",
      severity: isOften ? binding.value / MANY : 0,
      says: isOften
        ? `Made with errors of your shop’s size, ${share} in a hundred such joints would bind: make a sample joint, and aim where there is more room.${most}`
        : `Made with errors of ${shop.isDemo ? "the demo shop’s" : "your shop’s"} size, ${share} in a hundred such joints would bind.${shop.isDemo ? " How large yours are, only sample joints tell." : ""}${most}`,
    }),
  ];
}

function leftOf(p: Worked): Worked {
  const m = given("most that may bind", MANY, "%", derived("our own measure"));
  return work({
    says: "fewer bind than would be too many, by",
    unit: "%",
    formula: "a = m − p",
    inputs: { m, p },
    value: MANY - p.value,
    source: derived("arithmetic"),
  });
}
