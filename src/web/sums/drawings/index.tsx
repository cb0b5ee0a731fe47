import type { ReactNode } from "react";
import type { Outcome } from "../../../reckon/index.ts";
import type { LengthUnit } from "../../../units/index.ts";
import {
  ClampsDrawing,
  LatheDrawing,
  OctagonDrawing,
  RouterDrawing,
  ScrewDrawing,
} from "./bench.tsx";
import { EmcDrawing } from "./emc-curve.tsx";
import { SagDrawing, TipDrawing } from "./statics.tsx";
import { BoardDrawing, CupDrawing, MovementDrawing } from "./timber.tsx";
import { type View, viewOf } from "./view.ts";

const drawings: Readonly<Record<string, (props: { readonly view: View }) => ReactNode>> = {
  emc: EmcDrawing,
  movement: MovementDrawing,
  cup: CupDrawing,
  "board-feet": BoardDrawing,
  weight: BoardDrawing,
  finish: BoardDrawing,
  sag: SagDrawing,
  tip: TipDrawing,
  screw: ScrewDrawing,
  octagon: OctagonDrawing,
  "lathe-speed": LatheDrawing,
  router: RouterDrawing,
  clamps: ClampsDrawing,
};

/** The drawing that goes with a topic, to the sizes given. */
export function Drawing(props: {
  readonly topic: string;
  readonly good: Extract<Outcome, { ok: true }>;
  readonly units: LengthUnit;
  readonly touched: string | undefined;
}) {
  const One = drawings[props.topic];
  if (!One) return null;
  return (
    <figure className="drawing">
      <One view={viewOf(props.good, props.units, props.touched)} />
    </figure>
  );
}
