import { useId } from "react";
import { Dimension, Rings } from "./kit.tsx";
import { Lettering } from "./lettering.tsx";
import { magnified, pathOf } from "./path.ts";
import { Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

/** A flatsawn board on its end, bark side up, before and after. */
export function CupDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const plate = usePlate();
  const width = view.value("width") ?? 1;
  const thickness = view.value("thickness") ?? 1;
  const scale = Math.min((plate.width - 260) / width, 86 / thickness);
  const [w, h] = [Math.max(3, width * scale), Math.max(3, thickness * scale)];
  const middle = plate.width / 2;
  const [left, top] = [middle - w / 2, 104];
  const below = (view.result("pith") ?? view.value("pith") ?? 100) * scale;
  const { drawn, says } = magnified((view.result("cup") ?? 0) * scale, 32);
  const bend = (x: number) => -drawn * ((2 * (x - middle)) / w) ** 2;
  const xs = Array.from({ length: 31 }, (_, i) => left + (w * i) / 30);
  const shape = [
    ...xs.map((x) => [x, top + bend(x)] as const),
    ...xs.toReversed().map((x) => [x, top + h + bend(x)] as const),
  ];
  const reach = Math.hypot(w / 2, h + below);
  return (
    <Plate
      says={`End of a board ${view.label("width")} by ${view.label("thickness")}, bark side up; its ${view.word("face")} face cups by ${view.resultLabel("cup")}, ${says}.`}
    >
      <clipPath id={clip}>
        <rect x={left} y={top} width={w} height={h} />
      </clipPath>
      <rect className="wood" x={left} y={top} width={w} height={h} />
      <Rings
        clip={clip}
        pith={[middle, top + h + below]}
        from={Math.max(6, below)}
        to={reach}
        every={Math.max(7, (reach - below) / 40)}
      />
      <rect className="outline" x={left} y={top} width={w} height={h} />
      <path className="ghost" d={pathOf(shape, true)} />
      <Dimension
        from={[left, top]}
        to={[left + w, top]}
        off={-50}
        label={view.label("width")}
        isTouched={view.touched === "width"}
      />
      <Dimension
        from={[left + w, top]}
        to={[left + w, top + h]}
        off={34}
        label={view.label("thickness")}
        isTouched={view.touched === "thickness"}
      />
      <Lettering
        at={[middle, Math.min(266, top + h + 64)]}
        kind="aside"
        text={`dashed: at ${view.label("to")}, ${says}; ${view.word("face")} face asked`}
      />
    </Plate>
  );
}
