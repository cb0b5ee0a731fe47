import { useId } from "react";
import { Dimension } from "./kit.tsx";
import { Lettering } from "./lettering.tsx";
import type { At } from "./path.ts";
import { PLATE_HEIGHT, Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

const FACE = 62;

/** The section in millimetres from the round-over's centre, as the answers and results give it. */
function sectionOf(view: View) {
  const of = (name: string) => view.value(name) ?? 0;
  const [R, t] = [Math.max(1, of("radius")), Math.max(1, of("thickness"))];
  const f = Math.max(0, view.result("fillet") ?? 0);
  const b = t - R - f;
  const Rc = view.value("cove") ?? R;
  const [g, k, u] = [of("set-out"), of("crown"), Math.min(of("bevel"), R)];
  const pin: At = [of("pin-out"), (view.result("pin") ?? b) - b];
  return { R, Rc, t, f, b, g, k, u, pin, centre: [g, k - (Rc - R)] as At };
}
type Section = ReturnType<typeof sectionOf>;

/** Where cove and round-over come closest at a swing: between them, or at an end of what faces. */
function tightSpot({ R, Rc, pin, centre }: Section, swingDeg: number): At {
  const swing = (swingDeg * Math.PI) / 180;
  const [x, y] = [centre[0] - pin[0], centre[1] - pin[1]];
  const [cos, sin] = [Math.cos(swing), Math.sin(swing)];
  const at: At = [pin[0] + x * cos + y * sin, pin[1] - x * sin + y * cos];
  const most = Math.PI / 2 - swing;
  const middle = Math.atan2(-at[1], -at[0]);
  const gap = (phi: number) =>
    Rc - Math.hypot(R * Math.cos(phi) - at[0], R * Math.sin(phi) - at[1]);
  const found = [0, most, Math.max(0, Math.min(most, middle))].reduce((least, phi) =>
    gap(phi) < gap(least) ? phi : least,
  );
  return [R * Math.cos(found), R * Math.sin(found)];
}

/** A rule joint in section, closed, and dashed with its leaf down; the tightest place marked. */
export function LeafJointDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const below = useId();
  const plate = usePlate();
  const section = sectionOf(view);
  const { R, Rc, t, f, b, g, k, u, pin, centre } = section;
  const scale = Math.min(88 / t, (plate.width * 0.3) / Math.max(R, Rc));
  const [left, right] = [74, plate.width - 66];
  const [x0, y0] = [plate.width * 0.4, FACE + (f + R) * scale];
  const place = ([x, y]: At): At => [x0 + x * scale, y0 - y * scale];
  const [px, py] = place(pin);
  const under = FACE + t * scale;
  const line = (...points: readonly At[]) =>
    points
      .map((p) =>
        place(p)
          .map((n) => n.toFixed(2))
          .join(" "),
      )
      .join("L");
  const arc = (r: number, sweep: 0 | 1, to: At) =>
    `A${(r * scale).toFixed(2)} ${(r * scale).toFixed(2)} 0 0 ${sweep} ${line(to)}`;
  const top = `M${left} ${FACE}L${line([0, f + R], [0, R])}${arc(R, 1, [R, 0])}L${line([R - u, -b])}L${left} ${under}`;
  const leaf = `M${right} ${FACE}L${line([g, f + R], [g, R + k])}${arc(Rc, 1, [g + Rc, centre[1]])}L${line([g + Rc, -b])}L${right} ${under}`;
  const isCove = view.result("tightest") !== undefined;
  const [tx, ty] = place(isCove ? tightSpot(section, view.result("tightest") ?? 0) : [R - u, -b]);
  const room = right - (x0 + g * scale);
  return (
    <Plate
      says={`A rule joint in ${view.label("thickness")} wood, radius ${view.label("radius")}; fillet ${view.resultLabel("fillet")}, pin ${view.resultLabel("pin")} over the underside; least clearance ${view.resultLabel("clearance")}, leaf down a gap of ${view.resultLabel("gap-down")}.`}
    >
      <clipPath id={clip}>
        <rect x={x0 + g * scale} y={FACE} width={Math.max(1, room)} height={t * scale} />
      </clipPath>
      <clipPath id={below}>
        <rect x={0} y={FACE} width={plate.width} height={PLATE_HEIGHT - FACE - 34} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        <path className="wood" d={`${leaf}Z`} />
        <path className="outline" d={leaf} />
      </g>
      <path className="wood wood-2" d={`${top}Z`} />
      <path className="outline" d={top} />
      <g clipPath={`url(#${below})`}>
        <g transform={`rotate(90 ${px.toFixed(2)} ${py.toFixed(2)})`}>
          <path className="ghost" clipPath={`url(#${clip})`} d={leaf} />
        </g>
      </g>
      <circle className="pivot" cx={px} cy={py} r={4} />
      <path className="centre" d={`M${px - 9} ${py}h18M${px} ${py - 9}v18`} />
      <path className="leader" d={`M${tx} ${ty}L${tx + 18} ${FACE - 14}h8`} />
      <circle className="leader-dot" cx={tx} cy={ty} r={3} />
      <Lettering
        at={[tx + 32, FACE - 10]}
        anchor="start"
        text={`${view.resultLabel("clearance")} least`}
      />
      <Dimension
        from={[left, FACE]}
        to={[left, FACE + f * scale]}
        off={-26}
        label={view.resultLabel("fillet")}
        isTouched={view.touched === "fillet"}
      />
      <Dimension
        from={[right, FACE]}
        to={[right, under]}
        off={26}
        label={view.label("thickness")}
        isTouched={view.touched === "thickness"}
      />
      <Lettering
        at={[x0 - 14, FACE - 10]}
        anchor="end"
        text={`R ${view.label("radius")}`}
        isTouched={view.touched === "radius"}
      />
      <Lettering
        at={[plate.width / 2, PLATE_HEIGHT - 8]}
        kind="aside"
        text={`dashed: leaf down, gap from above ${view.resultLabel("gap-down")}`}
      />
    </Plate>
  );
}
