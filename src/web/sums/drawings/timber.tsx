import { useId } from "react";
import { Dimension, Lettering, magnified, Plate, pathOf, Rings } from "./kit.tsx";
import type { View } from "./view.ts";

/** A board seen on its end: where it lies before, and its width after. */
export function MovementDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const width = view.value("width") ?? 1;
  const change = view.result("movement") ?? 0;
  const angle = view.value("rings") ?? 0;
  const [left, top, w, h] = [110, 92, 420, 60];
  const times = magnified((change / width) * w, 46);
  const grown = ((change * times) / width) * w;
  const tilt = Array.from({ length: 60 }, (_, i) => (i - 30) * 13);
  return (
    <Plate
      says={`End of a board ${view.label("width")} wide; it changes by ${view.resultLabel("movement")}, drawn ${times} times as much.`}
    >
      <clipPath id={clip}>
        <rect x={left} y={top} width={w} height={h} />
      </clipPath>
      <rect className="wood" x={left} y={top} width={w} height={h} />
      <g clipPath={`url(#${clip})`} className="rings">
        {tilt.map((d) => (
          <path
            key={d}
            transform={`rotate(${-angle} ${left + w / 2} ${top + h / 2})`}
            d={`M${left - 300} ${top + h / 2 + d + 60}Q${left + w / 2} ${top + h / 2 + d - 60 * Math.cos((angle * Math.PI) / 180)} ${left + w + 300} ${top + h / 2 + d + 60}`}
          />
        ))}
      </g>
      <rect className="outline" x={left} y={top} width={w} height={h} />
      <rect className="ghost" x={left - grown / 2} y={top - 7} width={w + grown} height={h + 14} />
      <Dimension
        from={[left, top]}
        to={[left + w, top]}
        off={-38}
        label={view.label("width")}
        isTouched={view.touched === "width"}
      />
      <Dimension
        from={[left + Math.min(w, w + grown / 2), top + h]}
        to={[left + Math.max(w, w + grown / 2), top + h]}
        off={42}
        label={`half of ${view.resultLabel("movement")}`}
      />
      <Lettering
        at={[left, top + h + 62]}
        anchor="start"
        className="aside"
        text={`dashed: at ${view.label("to")}, drawn ×${times}`}
      />
    </Plate>
  );
}

/** A flatsawn board on its end, bark side up, before and after. */
export function CupDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const width = view.value("width") ?? 1;
  const thickness = view.value("thickness") ?? 1;
  const isHeart = view.word("face") === "heart";
  const scale = Math.min(380 / width, 90 / thickness);
  const [w, h] = [width * scale, thickness * scale];
  const [left, top] = [320 - w / 2, 112];
  const chord = view.value("chord") ?? 0;
  const rise = view.value("rise") ?? 0;
  const pithMm = view.value("pith") ?? (rise > 0 ? chord ** 2 / (8 * rise) + rise / 2 : 100);
  const pith = [320, top + h + pithMm * scale] as const;
  const cup = view.result("cup") ?? 0;
  const times = magnified(cup * scale, 34);
  const bend = (x: number) => -cup * scale * times * ((2 * (x - 320)) / w) ** 2;
  const xs = Array.from({ length: 31 }, (_, i) => left + (w * i) / 30);
  const shape = [
    ...xs.map((x) => [x, top + bend(x)] as const),
    ...xs.toReversed().map((x) => [x, top + h + bend(x)] as const),
  ];
  const reach = Math.hypot(w / 2, h + pithMm * scale);
  return (
    <Plate
      says={`End of a board ${view.label("width")} by ${view.label("thickness")}, bark side up; its face cups by ${view.resultLabel("cup")}, drawn ${times} times as much.`}
    >
      <clipPath id={clip}>
        <rect x={left} y={top} width={w} height={h} />
      </clipPath>
      <rect className="wood" x={left} y={top} width={w} height={h} />
      <Rings
        clip={clip}
        pith={pith}
        from={Math.max(6, pithMm * scale)}
        to={reach}
        every={Math.max(7, (reach - pithMm * scale) / 40)}
      />
      <rect className="outline" x={left} y={top} width={w} height={h} />
      <path className="ghost" d={pathOf(shape, true)} />
      <Dimension
        from={[left, top]}
        to={[left + w, top]}
        off={-52}
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
        at={[320, top + h + 52]}
        className="aside"
        text={`dashed: at ${view.label("to")}, drawn ×${times}; ${isHeart ? "heart" : "bark"} face asked`}
      />
    </Plate>
  );
}

/** A board lying, seen from a corner, with its three sizes. */
export function BoardDrawing({ view }: { readonly view: View }) {
  const clip = useId();
  const sizes = ["length", "width", "thickness"].map((name) => view.value(name));
  const [length, width, thickness] = sizes;
  if (length === undefined || width === undefined || thickness === undefined) return null;
  const scale = Math.min(400 / (length + width * 0.5), 170 / (thickness + width * 0.34));
  const l = Math.max(20, length * scale);
  const w = Math.max(12, width * scale);
  const h = Math.max(5, thickness * scale);
  const [kx, ky] = [w * 0.5, w * 0.34];
  const left = 320 - (l + kx) / 2;
  const top = 140 - (h + ky) / 2;
  const pieces = view.value("pieces") ?? 1;
  return (
    <Plate
      says={`A board ${view.label("length")} long, ${view.label("width")} wide, ${view.label("thickness")} thick.`}
    >
      <path
        className="wood"
        d={pathOf(
          [
            [left, top + ky],
            [left + kx, top],
            [left + kx + l, top],
            [left + l, top + ky],
          ],
          true,
        )}
      />
      <path
        className="wood wood-2"
        d={pathOf(
          [
            [left, top + ky],
            [left + l, top + ky],
            [left + l, top + ky + h],
            [left, top + ky + h],
          ],
          true,
        )}
      />
      <clipPath id={clip}>
        <path
          d={pathOf(
            [
              [left + l, top + ky],
              [left + l + kx, top],
              [left + l + kx, top + h],
              [left + l, top + ky + h],
            ],
            true,
          )}
        />
      </clipPath>
      <path
        className="wood wood-3"
        d={pathOf(
          [
            [left + l, top + ky],
            [left + l + kx, top],
            [left + l + kx, top + h],
            [left + l, top + ky + h],
          ],
          true,
        )}
      />
      <Rings
        clip={clip}
        pith={[left + l + kx * 0.55, top + ky + h + 60]}
        from={30}
        to={130}
        every={5}
      />
      <path
        className="outline"
        d={pathOf(
          [
            [left, top + ky],
            [left + kx, top],
            [left + kx + l, top],
            [left + kx + l, top + h],
            [left + l, top + ky + h],
            [left, top + ky + h],
          ],
          true,
        )}
      />
      <path
        className="outline"
        d={pathOf([
          [left, top + ky],
          [left + l, top + ky],
          [left + kx + l, top],
        ])}
      />
      <path
        className="outline"
        d={pathOf([
          [left + l, top + ky],
          [left + l, top + ky + h],
        ])}
      />
      <Dimension
        from={[left, top + ky + h]}
        to={[left + l, top + ky + h]}
        off={30}
        label={view.label("length")}
        isTouched={view.touched === "length"}
      />
      <Dimension
        from={[left, top + ky]}
        to={[left, top + ky + h]}
        off={-22}
        label={view.label("thickness")}
        isTouched={view.touched === "thickness"}
      />
      <g className="dimension" data-touched={view.touched === "width"}>
        <path
          d={pathOf([
            [left - 10, top + ky - 6],
            [left + kx - 10, top - 6],
          ])}
        />
        <Lettering
          at={[left + kx / 2 - 18, top + ky / 2 - 8]}
          anchor="end"
          text={view.label("width")}
        />
      </g>
      {pieces > 1 && (
        <Lettering at={[320, top - 18]} className="aside" text={`${pieces} of them`} />
      )}
    </Plate>
  );
}
