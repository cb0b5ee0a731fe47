import { Arrow, Dimension } from "./kit.tsx";
import { Lettering, widthOf } from "./lettering.tsx";
import { Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

/** A table from its end: feet, top, where somebody leans, and the line it turns about. */
export function TipDrawing({ view }: { readonly view: View }) {
  const plate = usePlate();
  const size = (name: string, least: number) => Math.max(least, view.value(name) ?? 1);
  const [feet, top, height] = [size("feet", 1), size("top", 1), size("height", 1)];
  const offset = view.value("offset") ?? 0;
  const scale = Math.min((plate.width - 220) / Math.max(top, feet), 130 / height);
  const [f, t, h] = [feet * scale, top * scale, height * scale];
  const [ground, middle] = [218, plate.width / 2 + 10];
  const deck = ground - h;
  const leg = Math.min(14, f / 5);
  const load = middle + t / 2 - (view.value("inset") ?? 0) * scale;
  const label = view.resultLabel("edge") || "does not tip";
  const isRoomy = t > widthOf(label, plate.letter) + 60;
  const [cx, cy] = [middle + offset * scale, deck + h * 0.35];
  return (
    <Plate
      says={`A table ${view.label("top")} wide on feet ${view.label("feet")} apart; a load of ${view.resultLabel("edge") || "any size"} on its edge ${view.resultLabel("edge") ? "tips it" : "does not tip it"}.`}
    >
      <path className="ground" d={`M70 ${ground}H${plate.width - 60}`} />
      {[middle - f / 2, middle + f / 2 - leg].map((x) => (
        <rect
          key={x}
          className="wood wood-2 outlined"
          x={x}
          y={deck + 8}
          width={leg}
          height={Math.max(0, h - 8)}
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
      <circle className="centre" cx={cx} cy={cy} r={6} />
      <path className="centre" d={`M${cx - 10} ${cy}h20M${cx} ${cy - 10}v20`} />
      <Arrow at={[load, deck - 1]} />
      {/* Between the arrow and the far extension line, or past the near one: never across them. */}
      <Lettering
        at={isRoomy ? [load - 10, deck - 16] : [middle + t / 2 + 14, deck - 16]}
        anchor={isRoomy ? "end" : "start"}
        text={label}
      />
      <Dimension
        from={[middle - f / 2, ground]}
        to={[middle + f / 2, ground]}
        off={30}
        label={view.label("feet")}
        isTouched={view.touched === "feet"}
      />
      <Dimension
        from={[middle - t / 2, deck]}
        to={[middle + t / 2, deck]}
        off={-50}
        label={view.label("top")}
        isTouched={view.touched === "top"}
      />
      <Dimension
        from={[middle - Math.max(t, f) / 2, deck]}
        to={[middle - Math.max(t, f) / 2, ground]}
        off={-34}
        label={view.label("height")}
        isTouched={view.touched === "height"}
      />
    </Plate>
  );
}
