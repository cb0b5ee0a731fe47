import type { Framed } from "../frame/framed.ts";
import type { Making } from "../kind.ts";
import { SLACK } from "../slack.ts";
import { shortestEnd } from "./lay-arms.ts";
import type { ArmSizes } from "./settle-arms.ts";

/** Least of a rail under an arm's opening that still is a rail; more is judged further on [mm]. */
const LEAST_UNDER = 15;

/** Arms for which the rail has no wood, and ends too short to turn. */
export function refuseArms(
  arms: ArmSizes,
  { asked, rails }: Framed,
  sides: readonly ("front" | "back")[],
  { refuse }: Making,
): void {
  for (const side of sides) {
    const { width, thickness } = rails[side];
    const short = arms.opening.value + LEAST_UNDER - width;
    if (short > SLACK) {
      refuse({
        code: "no-rail-under-arm",
        question: "rail-width",
        reason: (show) =>
          `Under an arm’s opening of ${show(arms.opening.value)} the ${side} rail would have ${show(Math.max(0, width - arms.opening.value))} left; ${show(LEAST_UNDER)} are needed.`,
        atLeast: asked.railWidth + short,
        values: [
          { key: `rail/${side}.width`, atLeast: width + short },
          { key: "arms.opening", atMost: arms.opening.value - short },
          { key: "arms.height", atMost: arms.height.value - short },
        ],
      });
    }
    const least = shortestEnd(arms, thickness);
    for (const end of ["reach", "tail"] as const) {
      if (arms[end].value >= least - SLACK) continue;
      refuse({
        code: "arm-too-short",
        question: `arm-${end}`,
        reason: (show) =>
          `An end of ${show(arms[end].value)} cannot turn out of a rail ${show(thickness)} thick.`,
        atLeast: least,
        values: [{ key: `arms.${end}`, atLeast: least }],
      });
    }
    const off = Math.abs(arms.offset.value) - (thickness - arms.hole.value) / 2 + 2;
    if (off > SLACK) {
      refuse({
        code: "pivot-outside-rail",
        question: "rail-thickness",
        reason: (show) =>
          `Its pivot would break out of the ${side} rail, ${show(thickness)} thick.`,
        atLeast: asked.railThickness + 2 * off,
        values: [
          { key: "arms.offset", ...(arms.offset.value > 0 ? { atMost: 0 } : { atLeast: 0 }) },
          { key: `rail/${side}.thickness`, atLeast: thickness + 2 * off },
        ],
      });
    }
  }
}
