import { Color } from "three";

/** The colours of the picture, as the page's tokens have them, and how dark a shadow is [0 to 1]. */
export type Tones = {
  readonly wood: Color;
  readonly wood2: Color;
  readonly wood3: Color;
  readonly ring: Color;
  readonly line: Color;
  readonly blue: Color;
  readonly wash: Color;
  readonly shadow: Color;
  readonly shade: number;
};

/** The tokens that hold where an element stands. */
export function tonesAt(element: Element): Tones {
  const style = getComputedStyle(element);
  const token = (name: string) => {
    const text = style.getPropertyValue(name).trim();
    if (text === "") throw new Error(`the page has no token ${name}`);
    return text;
  };
  const color = (name: string) => new Color(token(name));
  return {
    wood: color("--wood"),
    wood2: color("--wood-2"),
    wood3: color("--wood-3"),
    ring: color("--ring"),
    line: color("--line"),
    blue: color("--blue"),
    wash: color("--model-wash"),
    shadow: color("--model-shadow"),
    shade: Number(token("--model-shade")),
  };
}
