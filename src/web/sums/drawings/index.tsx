import { type ReactNode, useRef } from "react";
import type { Outcome } from "../../../reckon/index.ts";
import type { LengthUnit } from "../../../units/index.ts";
import { BoardDrawing } from "./board.tsx";
import { ClampsDrawing } from "./clamps.tsx";
import { CupDrawing } from "./cup.tsx";
import { EmcDrawing } from "./emc-curve.tsx";
import { LatheDrawing } from "./lathe.tsx";
import { LeafJointDrawing } from "./leaf-joint.tsx";
import { MovementDrawing } from "./movement.tsx";
import { OctagonDrawing } from "./octagon.tsx";
import { PlateSizing, usePlateSize } from "./plate.tsx";
import { RouterDrawing } from "./router.tsx";
import { SagDrawing } from "./sag.tsx";
import { ScrewDrawing } from "./screw.tsx";
import { SwingArmDrawing } from "./swing-arm.tsx";
import { TipDrawing } from "./tip.tsx";
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
  "leaf-joint": LeafJointDrawing,
  "swing-arm": SwingArmDrawing,
  screw: ScrewDrawing,
  octagon: OctagonDrawing,
  "lathe-speed": LatheDrawing,
  router: RouterDrawing,
  clamps: ClampsDrawing,
};

type Props = {
  readonly topic: string;
  readonly good: Extract<Outcome, { ok: true }>;
  readonly units: LengthUnit;
  readonly touched: string | undefined;
};

/** What is drawn for a topic, on whatever plate there is. */
export function TopicDrawing({ topic, good, units, touched }: Props) {
  const One = drawings[topic];
  return One ? <One view={viewOf(good, units, touched)} /> : null;
}

/** The drawing that goes with a topic, to the sizes given, in its place on the sheet. */
export function Drawing(props: Props) {
  const figure = useRef<HTMLElement>(null);
  const size = usePlateSize(figure);
  return (
    <figure className="drawing" ref={figure}>
      <PlateSizing value={size}>
        <TopicDrawing {...props} />
      </PlateSizing>
    </figure>
  );
}
