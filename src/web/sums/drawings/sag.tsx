import { Arrow, Dimension } from "./kit.tsx";
import { Lettering } from "./lettering.tsx";
import { magnified, pathOf } from "./path.ts";
import { Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

/**
 * The shape alone of a loaded board, 1 in the middle, nothing at the ends: how much it sags is the
 * core's to say.
 */
const shapes = {
  spread: (u: number) => 3.2 * (u - 2 * u ** 3 + u ** 4),
  middle: (u: number) => {
    const v = Math.min(u, 1 - u);
    return 3 * v - 4 * v ** 3;
  },
};

/** A board on two supports, straight and sagged. */
export function SagDrawing({ view }: { readonly view: View }) {
  const plate = usePlate();
  const span = view.value("span") ?? 1;
  const isMiddle = view.word("where") === "middle";
  const [left, top, length] = [96, 88, plate.width - 192];
  const scale = length / span;
  const h = Math.min(44, Math.max(4, (view.value("thickness") ?? 1) * scale));
  const { drawn, says } = magnified((view.result("after-years") ?? 0) * scale, 48);
  const shape = isMiddle ? shapes.middle : shapes.spread;
  const us = Array.from({ length: 41 }, (_, i) => i / 40);
  const upper = us.map((u) => [left + length * u, top + drawn * shape(u)] as const);
  const board = pathOf(
    [...upper, ...upper.toReversed().map(([x, y]) => [x, y + h] as const)],
    true,
  );
  const loads = isMiddle ? [0.5] : [0.08, 0.22, 0.36, 0.5, 0.64, 0.78, 0.92];
  return (
    <Plate
      says={`A board over a span of ${view.label("span")}; after years it sags ${view.resultLabel("after-years")}, ${says}.`}
    >
      <path className="ghost" d={`M${left} ${top}h${length}v${h}h${-length}Z`} />
      <path className="wood" d={board} />
      <path className="outline" d={board} />
      {[left, left + length].map((x) => (
        <path key={x} className="support" d={`M${x} ${top + h}l-11 20h22z`} />
      ))}
      {loads.map((u) => (
        <Arrow key={u} at={[left + length * u, top + drawn * shape(u) - 2]} length={26} />
      ))}
      <Lettering
        at={[plate.width / 2, top - 40]}
        text={view.label("load")}
        isTouched={view.touched === "load"}
      />
      <Dimension
        from={[left, top + h + 22]}
        to={[left + length, top + h + 22]}
        off={60}
        label={view.label("span")}
        isTouched={view.touched === "span"}
      />
      <Dimension
        from={[left + length, top]}
        to={[left + length, top + h]}
        off={26}
        label={view.label("thickness")}
        isTouched={view.touched === "thickness"}
      />
      <Lettering at={[plate.width / 2, top + h + 112]} kind="aside" text={`after years, ${says}`} />
    </Plate>
  );
}
