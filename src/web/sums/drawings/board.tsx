import { useId } from "react";
import { Dimension, Rings } from "./kit.tsx";
import { Lettering } from "./lettering.tsx";
import { type At, pathOf } from "./path.ts";
import { Plate, usePlate } from "./plate.tsx";
import type { View } from "./view.ts";

/** A board lying, seen from a corner: its front left corner, its sides, and how far back it goes. */
type Box = {
  readonly at: At;
  readonly length: number;
  readonly height: number;
  readonly back: At;
};

/** A board with its three sizes; only lettered where its amount is given instead of them. */
export function BoardDrawing({ view }: { readonly view: View }) {
  const amount = ["volume", "area"].find((name) => view.value(name) !== undefined);
  if (amount) return <AmountDrawing view={view} amount={amount} />;
  return <SizedDrawing view={view} />;
}

function AmountDrawing({ view, amount }: { readonly view: View; readonly amount: string }) {
  const { width } = usePlate();
  const says = amount === "area" ? "to be finished" : "of wood";
  return (
    <Plate says={`${view.label(amount)} ${says}; no sizes are used.`}>
      <BoxDrawing box={boxIn(width, 180, 46, 8)} />
      <Lettering
        at={[width / 2, 248]}
        text={`${view.label(amount)} ${says}`}
        isTouched={view.touched === amount}
      />
    </Plate>
  );
}

function SizedDrawing({ view }: { readonly view: View }) {
  const plate = usePlate();
  const [length, width, thickness] = ["length", "width", "thickness"].map(view.value);
  if (length === undefined || width === undefined || thickness === undefined) return null;
  const box = boxIn(plate.width, length, width, thickness);
  const { at, back, height } = box;
  const [left, front] = at;
  const pieces = view.value("pieces") ?? 1;
  return (
    <Plate
      says={`A board ${view.label("length")} long, ${view.label("width")} wide, ${view.label("thickness")} thick.`}
    >
      <BoxDrawing box={box} />
      <Dimension
        from={[left, front + height]}
        to={[left + box.length, front + height]}
        off={28}
        label={view.label("length")}
        isTouched={view.touched === "length"}
      />
      <Dimension
        from={[left, front]}
        to={[left, front + height]}
        off={-22}
        label={view.label("thickness")}
        isTouched={view.touched === "thickness"}
      />
      <g className="dimension" data-touched={view.touched === "width"}>
        <path
          d={pathOf([
            [left - 10, front - 6],
            [left + back[0] - 10, front + back[1] - 6],
          ])}
        />
        <Lettering
          at={[left + back[0] / 2 - 18, front + back[1] / 2 - 10]}
          anchor="end"
          text={view.label("width")}
          isTouched={view.touched === "width"}
        />
      </g>
      {pieces > 1 && (
        <Lettering
          at={[plate.width / 2, 264]}
          kind="aside"
          text={`${pieces} of them`}
          isTouched={view.touched === "pieces"}
        />
      )}
    </Plate>
  );
}

/** A box of these proportions in the middle of the plate, never thinner than can be seen. */
function boxIn(plateWidth: number, length: number, width: number, thickness: number): Box {
  const scale = Math.min(
    (plateWidth - 230) / (length + width * 0.5),
    150 / (thickness + width * 0.34),
  );
  const [l, w, h] = [
    Math.max(20, length * scale),
    Math.max(12, width * scale),
    Math.max(5, thickness * scale),
  ];
  const back: At = [w * 0.5, -w * 0.34];
  const left = plateWidth / 2 - (l + back[0]) / 2 + 20;
  return { at: [left, 122 + (-back[1] - h) / 2], length: l, height: h, back };
}

function BoxDrawing({ box }: { readonly box: Box }) {
  const clip = useId();
  const { at, length, height, back } = box;
  const along = (x: number, y: number, depth: number): At => [
    at[0] + x + depth * back[0],
    at[1] + y + depth * back[1],
  ];
  const face = [along(0, 0, 0), along(0, 0, 1), along(length, 0, 1), along(length, 0, 0)];
  const edge = [along(0, 0, 0), along(length, 0, 0), along(length, height, 0), along(0, height, 0)];
  const end = [
    along(length, 0, 0),
    along(length, 0, 1),
    along(length, height, 1),
    along(length, height, 0),
  ];
  return (
    <>
      <clipPath id={clip}>
        <path d={pathOf(end, true)} />
      </clipPath>
      <path className="wood" d={pathOf(face, true)} />
      <path className="wood wood-2" d={pathOf(edge, true)} />
      <path className="wood wood-3" d={pathOf(end, true)} />
      <Rings clip={clip} pith={along(length, height + 60, 0.55)} from={30} to={130} every={5} />
      {[face, edge, end].map((side) => (
        <path key={pathOf(side)} className="outline" d={pathOf(side, true)} />
      ))}
    </>
  );
}
