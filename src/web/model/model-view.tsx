import { useEffect, useEffectEvent, useId, useRef, useState } from "react";
import type { DrawnPart, Shape } from "../../workup/index.ts";
import { createPicture, type Picture } from "./picture.ts";
import type { Way } from "./view.ts";

type Props = {
  readonly parts: readonly DrawnPart[];
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
  const { parts, shapes, lifted, chosen, theme, label } = props;
  const ground = useRef<HTMLDivElement>(null);
  const picture = useRef<Picture>(undefined);
  const [canDraw, setCanDraw] = useState(true);
  const [isApart, setApart] = useState(false);
  const hint = useId();
  const choose = useEffectEvent((key: string | undefined) => props.choose(key));
  const hover = useEffectEvent((key: string | undefined) => props.hover(key));

  // First of all, for those below draw in it. A canvas of its own each time: a context that was
  // given back cannot be had again from the same one.
  useEffect(() => {
    if (!ground.current) throw new Error("the picture has no ground");
    const made = createPicture(ground.current, { choose, hover });
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
  useEffect(() => picture.current?.show(parts, shapes, isApart), [parts, shapes, isApart]);
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
        <div className="model-looks">
          <p className="model-hint" id={hint}>
            Arrows turn it, with Shift they move it; + and − bring it nearer and farther; 0 fits it.
          </p>
          <button type="button" onClick={() => picture.current?.fit()}>
            Fit
          </button>
          {looks.map(([way, word]) => (
            <button key={way} type="button" onClick={() => picture.current?.lookFrom(way)}>
              {word}
            </button>
          ))}
          <button type="button" aria-pressed={isApart} onClick={() => setApart(!isApart)}>
            Draw apart
          </button>
        </div>
      )}
    </div>
  );
}
