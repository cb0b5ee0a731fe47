import { useId } from "react";
import { Dimension } from "./kit.tsx";
import { Lettering } from "./lettering.tsx";
import { Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

/** More lines than this could not be told apart. */
const MOST_LINES = 40;

/** A cutter in section, and the passes to its depth. */
export function RouterDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const plate = usePlate();
  const diameter = view.value("diameter") ?? 1;
  const depth = view.value("depth") ?? 1;
  const passes = Math.min(MOST_LINES, view.result("passes") ?? 1);
  const scale = Math.min(150 / diameter, 104 / depth);
  const [w, h] = [Math.max(1, diameter * scale), Math.max(1, depth * scale)];
  const [top, middle] = [104, plate.width / 2];
  const [left, right] = [110, plate.width - 110];
  const [a, b] = [middle - w / 2, middle + w / 2];
  const lines = Array.from({ length: passes - 1 }, (_, i) => top + (h * (i + 1)) / passes);
  return (
    <Plate
      says={`A cutter of ${view.label("diameter")} to a depth of ${view.label("depth")} in ${view.resultLabel("passes")} passes.`}
    >
      <path
        className="wood"
        d={`M${left} ${top}H${a}V${top + h}H${b}V${top}H${right}V${top + 134}H${left}Z`}
      />
      <path className="outline" d={`M${left} ${top}H${a}V${top + h}H${b}V${top}H${right}`} />
      <clipPath id={clip}>
        <rect x={a} y={top} width={w} height={h} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        {lines.map((y) => (
          <path key={y} className="pass" d={`M${a} ${y}h${w}`} />
        ))}
      </g>
      <path
        className="steel see-through"
        d={`M${a} ${top - 14}V${top + h}H${b}V${top - 14}L${middle + 9} ${top - 26}V36H${middle - 9}V${top - 26}Z`}
      />
      <Dimension
        from={[a, top]}
        to={[b, top]}
        off={-38}
        label={view.label("diameter")}
        isPast
        isTouched={view.touched === "diameter"}
      />
      <Dimension
        from={[right, top]}
        to={[right, top + h]}
        off={30}
        label={view.label("depth")}
        isTouched={view.touched === "depth"}
      />
      <Lettering
        at={[left - 8, top + h / 2 + 6]}
        anchor="end"
        kind="aside"
        text={`${view.resultLabel("passes")} passes`}
      />
      <Lettering at={[middle, 26]} text={view.resultLabel("speed")} />
    </Plate>
  );
}
