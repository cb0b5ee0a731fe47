import { useId } from "react";
import { Dimension } from "./kit.tsx";
import { Lettering } from "./lettering.tsx";
import { magnified } from "./path.ts";
import { Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

/** A board seen on its end: where it lies before, and its width after. */
export function MovementDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const plate = usePlate();
  const width = view.value("width") ?? 1;
  const change = view.result("movement") ?? 0;
  const angle = view.value("rings") ?? 0;
  const [left, top, w, h] = [110, 88, plate.width - 220, 60];
  const { drawn, says } = magnified((change / width) * w, 46);
  const [middle, waist] = [left + w / 2, top + h / 2];
  const arch = 60 * Math.cos((angle * Math.PI) / 180);
  const lines = Array.from({ length: 60 }, (_, i) => waist + (i - 30) * 13);
  return (
    <Plate
      says={`End of a board ${view.label("width")} wide; it changes by ${view.resultLabel("movement")}, ${says}.`}
    >
      <clipPath id={clip}>
        <rect x={left} y={top} width={w} height={h} />
      </clipPath>
      <rect className="wood" x={left} y={top} width={w} height={h} />
      <g clipPath={`url(#${clip})`} className="rings">
        {lines.map((y) => (
          <path
            key={y}
            transform={`rotate(${-angle} ${middle} ${waist})`}
            d={`M${left - 300} ${y + 60}Q${middle} ${y - arch} ${left + w + 300} ${y + 60}`}
          />
        ))}
      </g>
      <rect className="outline" x={left} y={top} width={w} height={h} />
      <rect className="ghost" x={left - drawn / 2} y={top - 7} width={w + drawn} height={h + 14} />
      <Dimension
        from={[left, top]}
        to={[left + w, top]}
        off={-38}
        label={view.label("width")}
        isTouched={view.touched === "width"}
      />
      {drawn !== 0 && (
        <Dimension
          from={[left + Math.min(w, w + drawn / 2), top + h + 8]}
          to={[left + Math.max(w, w + drawn / 2), top + h + 8]}
          off={32}
          label={`half of ${view.resultSize("movement")}`}
        />
      )}
      <Lettering at={[middle, 252]} kind="aside" text={`dashed: at ${view.label("to")}, ${says}`} />
    </Plate>
  );
}
