import { useId } from "react";
import { Dimension } from "./kit.tsx";
import { Lettering } from "./lettering.tsx";
import { Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

/** More clamps than this could not be told apart. */
const MOST_DRAWN = 40;

/** A panel in as many clamps as it wants, the force fanning out at 45°. */
export function ClampsDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const plate = usePlate();
  const count = Math.max(1, view.result("clamps") ?? 1);
  const drawn = Math.min(MOST_DRAWN, count);
  const [left, top, width] = [90, 66, plate.width - 120];
  const scale = width / (view.value("length") ?? 1);
  const e = Math.max(4, Math.min(76, (view.value("edge") ?? 1) * scale));
  const p = Math.min(26, (view.value("pad") ?? 0) * scale);
  const panel = Math.max(120, Math.min(144, e * 3));
  const at = Array.from({ length: drawn }, (_, i) => left + (width * (i + 0.5)) / drawn);
  const half = Math.min(5, width / drawn / 3);
  return (
    <Plate says={`A panel ${view.label("length")} long in ${count} clamps.`}>
      {p > 0 && <rect className="pad outlined" x={left} y={top - p} width={width} height={p} />}
      <rect className="wood outlined" x={left} y={top} width={width} height={panel} />
      <path
        className="joint"
        d={`M${left} ${top + e}h${width}${e * 2 < panel ? `M${left} ${top + panel - e}h${width}` : ""}`}
      />
      <clipPath id={clip}>
        <rect x={left} y={top - p} width={width} height={p + e} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        {at.map((x) => (
          <path key={x} className="fan" d={`M${x} ${top - p}l${p + e} ${p + e}h${-2 * (p + e)}z`} />
        ))}
      </g>
      {at.map((x) => (
        <path
          key={x}
          className="steel"
          d={`M${x - half} ${top - p - 15}h${2 * half}v15h${-2 * half}z`}
        />
      ))}
      <Dimension
        from={[left, top + panel]}
        to={[left + width, top + panel]}
        off={34}
        label={view.label("length")}
        isTouched={view.touched === "length"}
      />
      <Dimension
        from={[left, top]}
        to={[left, top + e]}
        off={-26}
        label={view.label("edge")}
        isTouched={view.touched === "edge"}
      />
      <Lettering
        at={[left + width / 2, 272]}
        kind="aside"
        text={`${view.resultLabel("clamps")} clamps${count > drawn ? `, ${drawn} drawn` : ""}`}
      />
    </Plate>
  );
}
