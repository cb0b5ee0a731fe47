import { useId } from "react";
import { Dimension } from "./kit.tsx";
import { Lettering } from "./lettering.tsx";
import { type At, pathOf } from "./path.ts";
import { PLATE_HEIGHT, Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

const TOP = 34;
const BOTTOM = 216;

/** An arm in its rail seen from above, closed, and dashed turned out under its leaf. */
export function SwingArmDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const plate = usePlate();
  const of = (name: string) => view.value(name) ?? 0;
  const [reach, tail, w] = [of("reach"), of("tail"), of("thickness")].map((n) =>
    Math.max(1, n),
  ) as [number, number, number];
  const [outer, inner] = [w / 2 - of("offset"), w / 2 + of("offset")];
  const slope = Math.tan((of("angle") * Math.PI) / 180);
  const joint = outer + of("overhang");
  const up = Math.max(reach + outer * slope, joint);
  const scale = Math.min(
    (BOTTOM - TOP) / (up + tail + inner * slope),
    (plate.width - 230) / (reach + tail),
  );
  const [x0, y0] = [plate.width / 2 + ((tail - reach) / 2) * scale, TOP + up * scale];
  const place = ([x, y]: At): At => [x0 + x * scale, y0 - y * scale];
  const kerf = of("kerf");
  const [from, to] = [70, plate.width - 70];
  const [face, back] = [y0 - outer * scale, y0 + inner * scale];
  const arm = pathOf(
    (
      [
        [reach + outer * slope, outer],
        [reach - inner * slope, -inner],
        [-tail - inner * slope, -inner],
        [-tail + outer * slope, outer],
      ] as const
    ).map(place),
    true,
  );
  const past = reach + kerf * Math.hypot(1, slope);
  const before = tail + kerf * Math.hypot(1, slope);
  const restOfRail = (...points: readonly At[]) => pathOf(points.map(place), true);
  const [west, east] = [(from - x0) / scale, (to - x0) / scale];
  const seam = y0 - joint * scale;
  const edge = Math.max(12, y0 - (joint + of("leaf")) * scale);
  return (
    <Plate
      says={`An arm of ${view.label("reach")} and ${view.label("tail")} in a rail ${view.label("thickness")} thick, seen from above; it needs a cut of ${view.resultLabel("cut")} and bears ${view.resultLabel("borne")} of the leaf.`}
    >
      <rect
        className="wood wood-3"
        x={from}
        y={edge}
        width={to - from}
        height={Math.max(0, seam - edge)}
        opacity={0.45}
      />
      <path className="joint" d={`M${from} ${seam}H${to}`} />
      <clipPath id={clip}>
        <rect x={from} y={face} width={to - from} height={Math.max(1, back - face)} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        <path
          className="wood outlined"
          d={restOfRail(
            [past + outer * slope, outer],
            [past - inner * slope, -inner],
            [Math.max(east, past) + w, -inner],
            [Math.max(east, past) + w, outer],
          )}
        />
        <path
          className="wood outlined"
          d={restOfRail(
            [-before + outer * slope, outer],
            [-before - inner * slope, -inner],
            [Math.min(west, -before) - w, -inner],
            [Math.min(west, -before) - w, outer],
          )}
        />
      </g>
      <path className="wood wood-2 outlined" d={arm} />
      <path className="ghost" d={arm} transform={`rotate(-90 ${x0.toFixed(2)} ${y0.toFixed(2)})`} />
      <circle className="pivot" cx={x0} cy={y0} r={4} />
      <Dimension
        from={[x0, back]}
        to={[x0 + reach * scale, back]}
        off={24}
        label={view.label("reach")}
        isTouched={view.touched === "reach"}
      />
      <Dimension
        from={[x0 - tail * scale, back]}
        to={[x0, back]}
        off={24}
        label={view.label("tail")}
        isTouched={view.touched === "tail"}
      />
      <Dimension
        from={[to, face]}
        to={[to, back]}
        off={22}
        label={view.label("thickness")}
        isTouched={view.touched === "thickness"}
      />
      <Lettering
        at={[to - 6, Math.max(28, seam - 8)]}
        anchor="end"
        text={`bears ${view.resultLabel("borne")} of the leaf`}
      />
      <Lettering
        at={[plate.width / 2, PLATE_HEIGHT - 8]}
        kind="aside"
        text={`dashed: turned out; cut needed at its ends ${view.resultLabel("cut")}`}
      />
    </Plate>
  );
}
