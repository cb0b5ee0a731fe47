import { Arrow, Dimension, Lettering, magnified, Plate, pathOf } from "./kit.tsx";
import type { View } from "./view.ts";

/** A board on two supports, straight and sagged. */
export function SagDrawing({ view }: { readonly view: View }) {
  const span = view.value("span") ?? 1;
  const thickness = view.value("thickness") ?? 1;
  const sag = view.result("after-years") ?? 0;
  const scale = 420 / span;
  const h = Math.min(46, Math.max(4, thickness * scale));
  const [left, top] = [110, 116];
  const times = magnified(sag * scale, 56);
  const drop = (u: number) => sag * scale * times * (3.2 * u * (1 - u) * (1 + u - u * u));
  const us = Array.from({ length: 41 }, (_, i) => i / 40);
  const lower = us.map((u) => [left + 420 * u, top + drop(u)] as const);
  const loads = view.word("where") === "middle" ? [0.5] : [0.08, 0.22, 0.36, 0.5, 0.64, 0.78, 0.92];
  return (
    <Plate
      says={`A board over a span of ${view.label("span")}; after years it sags ${view.resultLabel("after-years")}, drawn ${times} times as much.`}
    >
      <path className="ghost" d={`M${left} ${top}H${left + 420}V${top + h}H${left}Z`} />
      <path
        className="wood"
        d={pathOf([...lower, ...lower.toReversed().map(([x, y]) => [x, y + h] as const)], true)}
      />
      <path
        className="outline"
        d={pathOf([...lower, ...lower.toReversed().map(([x, y]) => [x, y + h] as const)], true)}
      />
      {[left, left + 420].map((x) => (
        <path key={x} className="support" d={`M${x} ${top + h}l-11 20h22z`} />
      ))}
      {loads.map((u) => (
        <Arrow key={u} at={[left + 420 * u, top + drop(u) - 2]} length={26} />
      ))}
      <Lettering
        at={[left + 210, top - 36]}
        text={view.label("load")}
        className={view.touched === "load" ? "lettering touched" : "lettering"}
      />
      <Dimension
        from={[left, top + h + 24]}
        to={[left + 420, top + h + 24]}
        off={46}
        label={view.label("span")}
        isTouched={view.touched === "span"}
      />
      <Dimension
        from={[left + 420, top]}
        to={[left + 420, top + h]}
        off={30}
        label={view.label("thickness")}
        isTouched={view.touched === "thickness"}
      />
      <Lettering
        at={[320, top + h + 102]}
        className="aside"
        text={`drawn after years, ×${times}`}
      />
    </Plate>
  );
}

/** A table from its end: feet, top, where somebody leans, and the line it turns about. */
export function TipDrawing({ view }: { readonly view: View }) {
  const feet = view.value("feet") ?? 1;
  const top = view.value("top") ?? 1;
  const height = view.value("height") ?? 1;
  const inset = view.value("inset") ?? 0;
  const offset = view.value("offset") ?? 0;
  const scale = Math.min(380 / Math.max(top, feet), 150 / height);
  const [f, t, h] = [feet * scale, top * scale, height * scale];
  const [ground, middle] = [226, 320];
  const deck = ground - h;
  const leg = Math.min(14, f / 5);
  const load = middle + t / 2 - inset * scale;
  return (
    <Plate
      says={`A table ${view.label("top")} wide on feet ${view.label("feet")} apart; a load of ${view.resultLabel("edge") || "any size within the feet"} on its edge tips it.`}
    >
      <path className="ground" d={`M90 ${ground}H550`} />
      {[middle - f / 2, middle + f / 2 - leg].map((x) => (
        <rect
          key={x}
          className="wood wood-2 outlined"
          x={x}
          y={deck + 8}
          width={leg}
          height={h - 8}
        />
      ))}
      <rect
        className="wood wood-2 outlined"
        x={middle - f / 2 + leg}
        y={deck + 8}
        width={Math.max(0, f - 2 * leg)}
        height={Math.min(26, h / 4)}
      />
      <rect className="wood outlined" x={middle - t / 2} y={deck} width={t} height={8} />
      <path className="pivot" d={`M${middle + f / 2} ${ground}l-7 12h14z`} />
      <circle className="centre" cx={middle + offset * scale} cy={deck + h * 0.35} r={6} />
      <path
        className="centre"
        d={`M${middle + offset * scale - 10} ${deck + h * 0.35}h20M${middle + offset * scale} ${deck + h * 0.35 - 10}v20`}
      />
      <Arrow at={[load, deck - 1]} />
      <Lettering
        at={[load + 10, deck - 22]}
        anchor="start"
        text={view.resultLabel("edge") || "does not tip"}
      />
      <Dimension
        from={[middle - f / 2, ground]}
        to={[middle + f / 2, ground]}
        off={34}
        label={view.label("feet")}
        isTouched={view.touched === "feet"}
      />
      <Dimension
        from={[middle - t / 2, deck]}
        to={[middle + t / 2, deck]}
        off={-44}
        label={view.label("top")}
        isTouched={view.touched === "top"}
      />
      <Dimension
        from={[middle - t / 2, deck]}
        to={[middle - t / 2, ground]}
        off={-34}
        label={view.label("height")}
        isTouched={view.touched === "height"}
      />
    </Plate>
  );
}
