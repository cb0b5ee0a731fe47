import { useId } from "react";
import { Dimension, Lettering, Plate, pathOf } from "./kit.tsx";
import type { View } from "./view.ts";

/** A screw through one piece into another, with the two holes. */
export function ScrewDrawing({ view }: { readonly view: View }) {
  const grip = view.value("grip") ?? 25;
  const lead = view.result("lead-hole") ?? 2;
  const shank = view.result("shank-hole") ?? 4;
  const scale = Math.min(5.5, 120 / grip);
  const [joint, middle] = [98, 355];
  const [g, r, s] = [grip * scale, (lead * scale) / 2, (shank * scale) / 2];
  const over = 44;
  const threads = Math.max(3, Math.round(g / 9));
  const turns = Array.from({ length: threads }, (_, i) => joint + 4 + ((g - 10) * i) / threads);
  return (
    <Plate
      says={`A screw with ${view.label("grip")} of thread in the lower piece; lead hole ${view.resultLabel("lead-hole")}, shank hole ${view.resultLabel("shank-hole")}.`}
    >
      <rect className="wood outlined" x={220} y={joint - over} width={270} height={over} />
      <rect
        className="wood wood-2 outlined"
        x={220}
        y={joint}
        width={270}
        height={Math.min(150, g + 22)}
      />
      <rect className="bore" x={middle - s} y={joint - over} width={2 * s} height={over} />
      <rect className="bore" x={middle - r} y={joint} width={2 * r} height={g} />
      <path
        className="steel"
        d={pathOf(
          [
            [middle - 2.1 * s, joint - over],
            [middle + 2.1 * s, joint - over],
            [middle + s * 0.96, joint - over + s * 1.2],
            [middle + s * 0.96, joint],
            [middle + r * 1.1, joint + 6],
            [middle + r * 1.1, joint + g - 10],
            [middle, joint + g],
            [middle - r * 1.1, joint + g - 10],
            [middle - r * 1.1, joint + 6],
            [middle - s * 0.96, joint],
            [middle - s * 0.96, joint - over + s * 1.2],
          ],
          true,
        )}
      />
      {turns.map((y) => (
        <path key={y} className="thread" d={`M${middle - s} ${y + 4}L${middle + s} ${y}`} />
      ))}
      <Dimension
        from={[490, joint]}
        to={[490, joint + g]}
        off={34}
        label={view.label("grip")}
        isTouched={view.touched === "grip"}
      />
      <Lettering
        at={[210, joint - over / 2 + 5]}
        anchor="end"
        text={`shank hole ${view.resultLabel("shank-hole")}`}
      />
      <Lettering
        at={[210, joint + 30]}
        anchor="end"
        text={`lead hole ${view.resultLabel("lead-hole")}`}
      />
      <path
        className="leader"
        d={`M216 ${joint - over / 2}H${middle - s}M216 ${joint + 25}H${middle - r}`}
      />
    </Plate>
  );
}

/** A square on its end, with the corners to take off and the circle to keep. */
export function OctagonDrawing({ view }: { readonly view: View }) {
  const square = view.value("square") ?? 1;
  const x = view.result("mark") ?? 0;
  const diameter = view.value("diameter");
  const k = 168 / square;
  const [left, top, s] = [236, 62, 168];
  const m = x * k;
  const right = left + s;
  const bottom = top + s;
  const eight = [
    [left + m, top],
    [right - m, top],
    [right, top + m],
    [right, bottom - m],
    [right - m, bottom],
    [left + m, bottom],
    [left, bottom - m],
    [left, top + m],
  ] as const;
  return (
    <Plate
      says={`A square of ${view.label("square")}; mark ${view.resultLabel("mark")} from each corner and take ${view.resultLabel("depth")} off.`}
    >
      <rect className="waste" x={left} y={top} width={s} height={s} />
      <path className="wood" d={pathOf(eight, true)} />
      <g className="rings">
        {[14, 28, 42, 56, 70].map((r) => (
          <circle key={r} cx={left + s / 2} cy={top + s / 2} r={r} />
        ))}
      </g>
      <rect className="ghost" x={left} y={top} width={s} height={s} />
      <path className="outline" d={pathOf(eight, true)} />
      {diameter !== undefined && (
        <circle className="keep" cx={left + s / 2} cy={top + s / 2} r={(diameter * k) / 2} />
      )}
      <Dimension
        from={[left, top]}
        to={[right, top]}
        off={-30}
        label={view.label("square")}
        isTouched={view.touched === "square"}
      />
      <Dimension
        from={[left, bottom]}
        to={[left + m, bottom]}
        off={26}
        label={view.resultLabel("mark")}
      />
      <path
        className="leader"
        d={pathOf([
          [right - m / 2, top + m / 2],
          [right + 50, top + m / 2],
        ])}
      />
      <Lettering
        at={[right + 56, top + m / 2 + 5]}
        anchor="start"
        text={`${view.resultLabel("depth")} off`}
      />
      {diameter !== undefined && (
        <Lettering
          at={[right + 56, bottom - 20]}
          anchor="start"
          text={`Ø ${view.label("diameter")}`}
          className={view.touched === "diameter" ? "lettering touched" : "lettering"}
        />
      )}
    </Plate>
  );
}

/** A spindle between centres. */
export function LatheDrawing({ view }: { readonly view: View }) {
  const length = view.value("length") ?? 1;
  const swing = view.value("diameter") ?? 1;
  const thin = Math.min(view.value("thinnest") ?? 1, swing);
  const scale = Math.min(400 / length, 120 / swing);
  const [L, D, d] = [length * scale, swing * scale, thin * scale];
  const left = 320 - L / 2;
  const axis = 132;
  const half = [
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
  const radius = (u: number) => d / 2 + (D / 2 - d / 2) * u;
  const upper = half.map(([u, v]) => [left + L * u, axis - radius(v)] as const);
  const lower = half.toReversed().map(([u, v]) => [left + L * u, axis + radius(v)] as const);
  return (
    <Plate
      says={`A spindle ${view.label("length")} between centres, swing ${view.label("diameter")}, thinnest ${view.label("thinnest")}.`}
    >
      <path className="axis" d={`M${left - 44} ${axis}H${left + L + 44}`} />
      <path className="steel" d={`M${left - 40} ${axis - 9}h28l12 9l-12 9h-28z`} />
      <path className="steel" d={`M${left + L + 40} ${axis - 9}h-28l-12 9l12 9h28z`} />
      <path className="wood outlined" d={pathOf([...upper, ...lower], true)} />
      <Dimension
        from={[left, axis - D / 2]}
        to={[left, axis + D / 2]}
        off={-52}
        label={view.label("diameter")}
        isTouched={view.touched === "diameter"}
      />
      <Dimension
        from={[left + L, axis - d / 2]}
        to={[left + L, axis + d / 2]}
        off={56}
        label={view.label("thinnest")}
        isTouched={view.touched === "thinnest"}
      />
      <Dimension
        from={[left, axis + D / 2]}
        to={[left + L, axis + D / 2]}
        off={38}
        label={view.label("length")}
        isTouched={view.touched === "length"}
      />
    </Plate>
  );
}

/** A cutter in section, and the passes to its depth. */
export function RouterDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const diameter = view.value("diameter") ?? 1;
  const depth = view.value("depth") ?? 1;
  const passes = Math.min(40, view.result("passes") ?? 1);
  const scale = Math.min(150 / diameter, 110 / depth);
  const [w, h] = [diameter * scale, depth * scale];
  const [top, middle] = [112, 320];
  const lines = Array.from({ length: passes - 1 }, (_, i) => top + (h * (i + 1)) / passes);
  return (
    <Plate
      says={`A cutter of ${view.label("diameter")} to a depth of ${view.label("depth")} in ${view.resultLabel("passes")} passes.`}
    >
      <path
        className="wood"
        d={`M130 ${top}H${middle - w / 2}V${top + h}H${middle + w / 2}V${top}H510V${top + 138}H130Z`}
      />
      <path
        className="outline"
        d={`M130 ${top}H${middle - w / 2}V${top + h}H${middle + w / 2}V${top}H510`}
      />
      <clipPath id={clip}>
        <rect x={middle - w / 2} y={top} width={w} height={h} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        {lines.map((y) => (
          <path key={y} className="pass" d={`M${middle - w / 2} ${y}h${w}`} />
        ))}
      </g>
      <path
        className="steel see-through"
        d={`M${middle - w / 2} ${top - 14}V${top + h}H${middle + w / 2}V${top - 14}L${middle + 9} ${top - 26}V42H${middle - 9}V${top - 26}Z`}
      />
      <Dimension
        from={[middle - w / 2, top + h]}
        to={[middle + w / 2, top + h]}
        off={26}
        label={view.label("diameter")}
        isTouched={view.touched === "diameter"}
      />
      <Dimension
        from={[510, top]}
        to={[510, top + h]}
        off={34}
        label={view.label("depth")}
        isTouched={view.touched === "depth"}
      />
      <Lettering
        at={[120, top + 6]}
        anchor="end"
        className="aside"
        text={`${view.resultLabel("passes")} passes`}
      />
      <Lettering at={[middle + 24, 60]} anchor="start" text={view.resultLabel("speed")} />
    </Plate>
  );
}

/** A panel in its clamps, the force fanning out at 45°. */
export function ClampsDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const length = view.value("length") ?? 1;
  const edge = view.value("edge") ?? 1;
  const pad = view.value("pad") ?? 0;
  const count = Math.max(1, Math.min(60, view.result("by-reach") ?? 1));
  const scale = 440 / length;
  const [left, top] = [100, 78];
  const e = Math.min(80, edge * scale);
  const p = Math.min(30, pad * scale);
  const panel = Math.max(130, Math.min(150, e * 3));
  const at = Array.from({ length: count }, (_, i) => left + (440 * (i + 0.5)) / count);
  return (
    <Plate says={`A panel ${view.label("length")} long in ${count} clamps.`}>
      {p > 0 && <rect className="pad outlined" x={left} y={top - p} width={440} height={p} />}
      <rect className="wood outlined" x={left} y={top} width={440} height={panel} />
      <path
        className="joint"
        d={`M${left} ${top + e}h440${e * 2 < panel ? `M${left} ${top + panel - e}h440` : ""}`}
      />
      <clipPath id={clip}>
        <rect x={left} y={top - p} width={440} height={p + e} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        {at.map((x) => (
          <path key={x} className="fan" d={`M${x} ${top - p}l${p + e} ${p + e}h${-2 * (p + e)}z`} />
        ))}
      </g>
      {at.map((x) => (
        <path key={x} className="steel" d={`M${x - 5} ${top - p - 16}h10v16h-10z`} />
      ))}
      <Dimension
        from={[left, top + panel]}
        to={[left + 440, top + panel]}
        off={32}
        label={view.label("length")}
        isTouched={view.touched === "length"}
      />
      <Dimension
        from={[left, top]}
        to={[left, top + e]}
        off={-28}
        label={view.label("edge")}
        isTouched={view.touched === "edge"}
      />
    </Plate>
  );
}
