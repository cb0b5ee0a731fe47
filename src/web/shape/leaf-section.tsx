import { type RefObject, useId, useLayoutEffect, useRef, useState } from "react";
import type { LeafJoint, Piece } from "../../piece/index.ts";
import { type LiveSection, liveSection } from "../../sheets/index.ts";
import { deg, type LengthUnit, type Mm, mm, printLength } from "../../units/index.ts";
import { DrawingMarks } from "../controls/drawing-marks.tsx";
import { Typeset } from "../controls/typeset.tsx";

/** Drawings' figures are legible where so many pixels go to a millimetre. */
const PX_PER_MM = 3.6;
/** Narrower, and its figures would run into each other [mm]. */
const NARROWEST = 104;

/** The first leaf's joint in section as it is being written, its leaf to be turned. */
export function LeafSection(props: { readonly piece: Piece; readonly units: LengthUnit }) {
  const { piece, units } = props;
  const joint = piece.joints.find(({ kind }) => kind === "leaf");
  return joint?.kind === "leaf" ? <Section piece={piece} leaf={joint.leaf} units={units} /> : null;
}

function Section(props: {
  readonly piece: Piece;
  readonly leaf: LeafJoint;
  readonly units: LengthUnit;
}) {
  const { piece, leaf, units } = props;
  const [turn, setTurn] = useState(0);
  const figure = useRef<HTMLElement>(null);
  const wide = useWidth(figure);
  const slider = useId();
  const live = liveSection(piece, leaf, { units, wide, swing: deg(turn) });
  const { section, region, tight, height, rest } = live;
  const most = Math.round(rest);
  const down = Math.min(Math.round(turn), most);
  const words = down === 0 ? "level" : down === most ? "at rest" : `${down}° down`;
  return (
    <figure className="leaf-section" ref={figure}>
      <svg
        viewBox={`0 0 ${wide} ${height}`}
        role="img"
        aria-label={`${section.drawing.says}. ${saysOf(live, units)}`}
      >
        <DrawingMarks placed={[section]} height={height} />
        {region && (
          <g className="leaf-region">
            <DrawingMarks placed={[region]} height={height} />
          </g>
        )}
        {tight && (
          <g className={tight.place.isBinding ? "leaf-binds" : "leaf-tight"}>
            <DrawingMarks placed={[tight]} height={height} />
          </g>
        )}
      </svg>
      <div className="leaf-turn">
        <label htmlFor={slider}>Turn the leaf</label>
        <input
          id={slider}
          type="range"
          min={0}
          max={most}
          value={down}
          aria-valuetext={words}
          onChange={(event) => setTurn(Number(event.target.value))}
        />
        <b aria-hidden="true">{words}</b>
      </div>
      <figcaption>
        <p className={tight?.place.isBinding ? "leaf-says-binds" : undefined} aria-live="polite">
          <Typeset text={saysOf(live, units)} />{" "}
          {tight && tight.place.swing > 0.5 && (
            <button type="button" className="in-line" onClick={() => setTurn(tight.place.swing)}>
              Turn it there
            </button>
          )}
        </p>
        <p className="leaf-legend">
          {region
            ? "Within the green line the pin may stand and the leaf swings free."
            : tight && "No place near it for the pin frees the leaf."}
        </p>
      </figcaption>
    </figure>
  );
}

function saysOf({ tight }: LiveSection, units: LengthUnit): string {
  if (!tight) return "Square edges: the leaf turns about a pin over the gap.";
  const { gap, swing, contact, isBinding } = tight.place;
  const at = swing < 0.5 ? "level" : `${swing.toFixed(0)}° down`;
  return isBinding
    ? `Binds ${at}, at the ${contact}.`
    : `Swings free. It is tightest ${at}, at the ${contact}: ${printLength(gap, { units })}.`;
}

/** How many millimetres a drawing's paper is wide, as the place for it changes. */
function useWidth(figure: RefObject<HTMLElement | null>): Mm {
  const [wide, setWide] = useState<Mm>(mm(NARROWEST));
  useLayoutEffect(() => {
    const place = figure.current;
    const picture = place?.querySelector("svg");
    if (!place || !picture) return;
    const measure = () => {
      const px = picture.getBoundingClientRect().width;
      if (px > 0) setWide(mm(Math.max(NARROWEST, Math.round(px / PX_PER_MM))));
    };
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(place);
    return () => watcher.disconnect();
  }, [figure]);
  return wide;
}
