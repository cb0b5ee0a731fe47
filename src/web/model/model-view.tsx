import { useEffect, useEffectEvent, useId, useMemo, useRef, useState } from "react";
import type { Motion } from "../../piece/index.ts";
import type { DrawnPart, Shape } from "../../workup/index.ts";
import { Movers } from "./movers.tsx";
import { createPicture, type Picture } from "./picture.ts";
import { moved, type Stance, stanceOf, stateFrom, turnsOf } from "./stance.ts";
import type { Way } from "./view.ts";
import { Warnings } from "./warnings.tsx";

type Props = {
  /** their poses with every motion at 0 */
  readonly parts: readonly DrawnPart[];
  readonly motions: readonly Motion[];
  /** by `DrawnPart.shape`; a part whose shape has not come yet is left out until it does */
  readonly shapes: ReadonlyMap<string, Shape>;
  /** keys of parts that are pointed at or chosen elsewhere */
  readonly lifted: ReadonlySet<string>;
  readonly chosen: string | undefined;
  readonly choose: (key: string | undefined) => void;
  readonly hover: (key: string | undefined) => void;
  readonly theme: "day" | "evening";
  /** what the picture is called where it cannot be seen */
  readonly label: string;
};

const looks: readonly (readonly [Way, string])[] = [
  ["front", "Front"],
  ["side", "Side"],
  ["above", "Above"],
  ["corner", "Corner"],
];

/** The piece as it stands, or drawn apart; still until it is touched. */
export function ModelView(props: Props) {
  const { parts, motions, shapes, lifted, chosen, theme, label } = props;
  const ground = useRef<HTMLDivElement>(null);
  const picture = useRef<Picture>(undefined);
  const [canDraw, setCanDraw] = useState(true);
  const [isApart, setApart] = useState(false);
  // Kept here and nowhere above: a leaf that is moved changes the picture and no panel.
  const [stance, setStance] = useState<Stance>({});
  const turns = useMemo(() => turnsOf(motions, stance), [motions, stance]);
  const hint = useId();
  const choose = useEffectEvent((key: string | undefined) => props.choose(key));
  const hover = useEffectEvent((key: string | undefined) => props.hover(key));
  const step = useEffectEvent((by: 1 | -1) => {
    const next = stateFrom(motions, turns, by);
    if (next) setStance(stanceOf(motions, next));
  });

  // First of all, for those below draw in it. A canvas of its own each time: a context that was
  // given back cannot be had again from the same one.
  useEffect(() => {
    if (!ground.current) throw new Error("the picture has no ground");
    const made = createPicture(ground.current, { choose, hover, step });
    setCanDraw(made !== undefined);
    if (!made) return;
    const { canvas } = made;
    canvas.setAttribute("role", "img");
    canvas.setAttribute("aria-describedby", hint);
    canvas.tabIndex = 0;
    picture.current = made;
    return () => {
      picture.current = undefined;
      made.dispose();
    };
  }, [hint]);
  useEffect(() => picture.current?.canvas.setAttribute("aria-label", label), [label]);
  useEffect(
    () => picture.current?.show({ parts, motions, turns, shapes, isApart }),
    [parts, motions, turns, shapes, isApart],
  );
  useEffect(() => picture.current?.lift(lifted, chosen), [lifted, chosen]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the theme changes the page's tokens
  useEffect(() => picture.current?.repaint(), [theme]);

  return (
    <div className="model">
      <div className="model-ground" ref={ground}>
        {!canDraw && (
          <p className="model-none">
            This browser cannot draw the model; the list of parts says the same.
          </p>
        )}
      </div>
      {canDraw && (
        <div className="model-tools">
          <div className="model-over">
            <p className="model-hint" id={hint}>
              Arrows turn it, with Shift they move it; + and − bring it nearer and farther; 0 fits
              it.
              {motions.length > 0 && " L goes on to the next way it may stand, Shift L back."}
            </p>
            {motions.length > 0 && <Warnings motions={motions} turns={turns} />}
          </div>
          {motions.length > 0 && (
            <Movers
              motions={motions}
              turns={turns}
              move={(of, to) => setStance((before) => moved(before, of, to))}
              stand={(state) => setStance(stanceOf(motions, state))}
            />
          )}
          <div className="model-row">
            <button type="button" onClick={() => picture.current?.fit()}>
              Fit
            </button>
            {looks.map(([way, word]) => (
              <button key={way} type="button" onClick={() => picture.current?.lookFrom(way)}>
                {word}
              </button>
            ))}
            <button
              type="button"
              className="model-last"
              aria-pressed={isApart}
              onClick={() => setApart(!isApart)}
            >
              Draw apart
            </button>
          </div>
        </div>
      )}
    </div>
  );
}
