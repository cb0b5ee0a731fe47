import { useId } from "react";
import { Dimension, Rings } from "./kit.tsx";
import { Lettering } from "./lettering.tsx";
import { pathOf } from "./path.ts";
import { Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

const SIDE = 140;

/** A square on its end, with the corners to take off and the circle to keep. */
export function OctagonDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const plate = usePlate();
  const scale = SIDE / (view.value("square") ?? 1);
  const m = Math.min(SIDE / 2, (view.result("mark") ?? 0) * scale);
  const diameter = view.value("diameter");
  const [left, top] = [plate.width / 2 - SIDE / 2 - 20, 64];
  const [right, bottom] = [left + SIDE, top + SIDE];
  const [cx, cy] = [left + SIDE / 2, top + SIDE / 2];
  const eight = pathOf(
    [
      [left + m, top],
      [right - m, top],
      [right, top + m],
      [right, bottom - m],
      [right - m, bottom],
      [left + m, bottom],
      [left, bottom - m],
      [left, top + m],
    ],
    true,
  );
  const beside = right + 44;
  return (
    <Plate
      says={`A square of ${view.label("square")}; mark ${view.resultLabel("mark")} from each corner and take ${view.resultLabel("depth")} off.`}
    >
      <clipPath id={clip}>
        <path d={eight} />
      </clipPath>
      <rect className="waste" x={left} y={top} width={SIDE} height={SIDE} />
      <path className="wood" d={eight} />
      <Rings clip={clip} pith={[cx, cy]} from={12} to={SIDE * 0.7} every={12} />
      <rect className="ghost" x={left} y={top} width={SIDE} height={SIDE} />
      <path className="outline" d={eight} />
      <Dimension
        from={[left, top]}
        to={[right, top]}
        off={-28}
        label={view.label("square")}
        isTouched={view.touched === "square"}
      />
      <Dimension
        from={[left, bottom]}
        to={[left + m, bottom]}
        off={24}
        label={view.resultLabel("mark")}
      />
      <path className="leader" d={`M${right - m / 2} ${top + m / 2}H${beside - 6}`} />
      <Lettering
        at={[beside, top + m / 2 + 5]}
        anchor="start"
        text={`${view.resultLabel("depth")} off`}
      />
      {diameter !== undefined && (
        <Turned at={[cx, cy]} radius={(diameter * scale) / 2} beside={beside} view={view} />
      )}
    </Plate>
  );
}

/** The circle to be turned, named by a leader from its lower right. */
function Turned(props: {
  readonly at: readonly [number, number];
  readonly radius: number;
  readonly beside: number;
  readonly view: View;
}) {
  const { at, radius, beside, view } = props;
  const [x, y] = [at[0] + radius * 0.8, at[1] + radius * 0.6];
  return (
    <>
      <circle className="keep" cx={at[0]} cy={at[1]} r={radius} />
      <path className="leader" d={`M${x} ${y}L${beside - 20} ${y + 14}H${beside - 6}`} />
      <circle className="leader-dot" cx={x} cy={y} r={2.5} />
      <Lettering
        at={[beside, y + 19]}
        anchor="start"
        text={`Ø ${view.label("diameter")}`}
        isTouched={view.touched === "diameter"}
      />
    </>
  );
}
