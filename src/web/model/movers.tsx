import { useId, useState } from "react";
import { type Motion, type State, statesOf, type Turns } from "../../piece/index.ts";
import { type Mover, moversOf, standsAt, stateAt, stepOf, stepsOf } from "./stance.ts";

type Props = {
  readonly motions: readonly Motion[];
  readonly turns: Turns;
  readonly move: (of: Mover, step: number) => void;
  readonly stand: (state: State) => void;
};

/** The ways the piece may be left standing, and its leaves and arms to be moved one by one. */
export function Movers({ motions, turns, move, stand }: Props) {
  const [isByHand, setByHand] = useState(() => window.matchMedia("(min-width: 900px)").matches);
  const id = useId();
  const now = stateAt(motions, turns);
  return (
    <div className="model-movers">
      <fieldset className="model-row" aria-label="How it stands">
        {statesOf(motions).map((state) => (
          <button
            key={state.key}
            type="button"
            aria-pressed={state.key === now?.key}
            onClick={() => stand(state)}
          >
            {capital(state.says)}
          </button>
        ))}
        <button
          type="button"
          className="model-last"
          aria-expanded={isByHand}
          aria-controls={id}
          onClick={() => setByHand(!isByHand)}
        >
          By hand
        </button>
      </fieldset>
      <div className="model-scrubbers" id={id} hidden={!isByHand}>
        {moversOf(motions).map((one) => (
          <Scrubber key={one.key} of={one} turns={turns} move={move} />
        ))}
      </div>
    </div>
  );
}

function Scrubber({ of, turns, move }: { readonly of: Mover } & Pick<Props, "turns" | "move">) {
  const id = useId();
  const words = standsAt(of, turns);
  return (
    <div className="scrubber" data-kind={of.kind}>
      <label htmlFor={id}>{capital(of.says)}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={stepsOf(of)}
        value={stepOf(of, turns)}
        aria-valuetext={words}
        onChange={(event) => move(of, Number(event.target.value))}
      />
      <b aria-hidden="true">{words}</b>
    </div>
  );
}

const capital = (says: string) => says.charAt(0).toUpperCase() + says.slice(1);
