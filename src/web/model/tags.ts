import { Vector3 } from "three";
import type { Standing } from "./standing.ts";
import { type Size, type Spot, spotOf, type View } from "./view.ts";

/** The marks of lifted parts, flown over the picture as flags on poles; the chosen one has its name too. */
export type Tags = {
  readonly write: (
    standing: readonly Standing[],
    lifted: ReadonlySet<string>,
    chosen: string | undefined,
  ) => void;
  /** @param partAt  key of what is seen at a place, counted from the upper left corner */
  readonly place: (view: View, size: Size, partAt: (at: Spot) => string | undefined) => void;
  readonly dispose: () => void;
};

type Tag = {
  readonly element: HTMLElement;
  readonly key: string;
  /** where its pole may stand, the best first */
  readonly feet: readonly Vector3[];
  readonly pole: number;
};

/** Height of a pole, and of the chosen part's; least room left at the picture's edge [px]. */
const POLE = 16;
const TALL_POLE = 36;
const EDGE = 6;

export function createTags(host: HTMLElement): Tags {
  const layer = document.createElement("div");
  layer.className = "model-tags";
  // The list of parts says the same.
  layer.setAttribute("aria-hidden", "true");
  host.append(layer);
  let tags: readonly Tag[] = [];
  return {
    write: (standing, lifted, chosen) => {
      tags = standing
        .filter(({ part }) => lifted.has(part.key))
        .map((each): Tag => {
          const { part } = each;
          const isChosen = part.key === chosen;
          return {
            element: elementFor(part, isChosen),
            key: part.key,
            feet: feetOn(each),
            pole: isChosen ? TALL_POLE : POLE,
          };
        });
      layer.replaceChildren(...tags.map(({ element }) => element));
    },
    place: (view, size, partAt) => {
      for (const tag of tags) fly(tag, view, size, partAt);
    },
    dispose: () => layer.remove(),
  };
}

function elementFor({ mark, name }: Standing["part"], isChosen: boolean): HTMLElement {
  const element = document.createElement("span");
  element.className = isChosen ? "model-tag model-tag-chosen" : "model-tag";
  const bold = document.createElement("b");
  bold.textContent = mark;
  element.append(bold);
  if (isChosen) element.append(` ${name}`);
  return element;
}

/** Shares of a part's length and width. */
const ALONG = [0.5, 0.3, 0.7, 0.12, 0.88];
const ACROSS = [0.5, 0.15, 0.85];

/** Places in a part, its middle first, in the piece. */
function feetOn({ part: { blank }, faces }: Standing): readonly Vector3[] {
  const { length, width, thickness } = blank;
  return ACROSS.flatMap((w) =>
    ALONG.map((l) => new Vector3(l * length, w * width, thickness / 2).applyMatrix4(faces.matrix)),
  );
}

function fly(
  { element, key, feet, pole }: Tag,
  view: View,
  size: Size,
  partAt: (at: Spot) => string | undefined,
): void {
  const spots = feet.map(({ x, y, z }): Spot => {
    const spot = spotOf(view, [x, y, z]);
    return { x: size.width / 2 + spot.x, y: size.height / 2 - spot.y };
  });
  const inside = spots.filter(({ x, y }) => x > 0 && y > 0 && x < size.width && y < size.height);
  // On the part where it is seen; where it is hidden, over its middle.
  const foot = inside.find((spot) => partAt(spot) === key) ?? inside[0];
  element.hidden = foot === undefined;
  if (!foot) return;
  const { offsetWidth: wide, offsetHeight: high } = element;
  // The flag flies to the side where there is room, and its pole is shorter near the upper edge.
  const isLeft = foot.x + wide + EDGE > size.width;
  const top = Math.round(Math.max(EDGE, foot.y - pole - high));
  const left = Math.round(isLeft ? foot.x - wide : foot.x);
  element.classList.toggle("model-tag-left", isLeft);
  element.style.setProperty("--pole", `${Math.max(0, Math.round(foot.y) - top - high)}px`);
  element.style.transform = `translate(${left}px, ${top}px)`;
}
