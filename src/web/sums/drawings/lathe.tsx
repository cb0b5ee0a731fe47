import { Dimension } from "./kit.tsx";
import { pathOf } from "./path.ts";
import { Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

/** A leg's outline, thinnest at 0 and of full swing at 1, along its length. */
const outline = [
  [0, 0.92],
  [0.2, 0.92],
  [0.21, 0.5],
  [0.24, 0.8],
  [0.27, 0.5],
  [0.4, 0.86],
  [0.62, 0.5],
  [0.86, 0],
  [0.9, 0.3],
  [0.94, 0.1],
  [1, 0.06],
] as const;

/** A spindle between centres. */
export function LatheDrawing({ view }: { readonly view: View }) {
  const plate = usePlate();
  const length = view.value("length") ?? 1;
  const swing = view.value("diameter") ?? 1;
  const thin = Math.min(view.value("thinnest") ?? 1, swing);
  const scale = Math.min((plate.width - 240) / length, 116 / swing);
  const [l, d1, d2] = [length * scale, swing * scale, thin * scale];
  const [left, axis] = [plate.width / 2 - l / 2, 124];
  const radius = (u: number) => d2 / 2 + (d1 / 2 - d2 / 2) * u;
  const upper = outline.map(([u, v]) => [left + l * u, axis - radius(v)] as const);
  const lower = outline.toReversed().map(([u, v]) => [left + l * u, axis + radius(v)] as const);
  return (
    <Plate
      says={`A spindle ${view.label("length")} between centres, swing ${view.label("diameter")}, thinnest ${view.label("thinnest")}.`}
    >
      <path className="axis" d={`M${left - 40} ${axis}H${left + l + 40}`} />
      <path className="steel" d={`M${left - 36} ${axis - 9}h25l11 9l-11 9h-25z`} />
      <path className="steel" d={`M${left + l + 36} ${axis - 9}h-25l-11 9l11 9h25z`} />
      <path className="wood outlined" d={pathOf([...upper, ...lower], true)} />
      <Dimension
        from={[left, axis - d1 / 2]}
        to={[left, axis + d1 / 2]}
        off={-50}
        label={view.label("diameter")}
        isTouched={view.touched === "diameter"}
      />
      <Dimension
        from={[left + l, axis - d2 / 2]}
        to={[left + l, axis + d2 / 2]}
        off={50}
        label={view.label("thinnest")}
        isTouched={view.touched === "thinnest"}
      />
      <Dimension
        from={[left, axis + d1 / 2]}
        to={[left + l, axis + d1 / 2]}
        off={38}
        label={view.label("length")}
        isTouched={view.touched === "length"}
      />
    </Plate>
  );
}
