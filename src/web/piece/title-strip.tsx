import { printLength, printQuantity } from "../../units/index.ts";
import type { Workup } from "../../workup/index.ts";
import { Typeset } from "../controls/typeset.tsx";

/** The strip that stands on every drawing: what it is, of what, how large, how heavy. */
export function TitleStrip({ workup }: { readonly workup: Workup }) {
  const { piece, weighing } = workup;
  const { units } = piece;
  const top = piece.parts.find((part) => part.role === "top");
  const size = (length: Parameters<typeof printLength>[0]) =>
    printLength(length, { units, purpose: "layout" });
  const over = top
    ? `${size(top.blank.length)} × ${size(top.blank.width)} × ${size((top.pose.origin[2] + top.blank.thickness) as typeof top.blank.length)}`
    : "";
  const { mass } = weighing;
  return (
    <dl className="title-strip">
      <div>
        <dt>Piece</dt>
        <dd>{piece.document.name}</dd>
      </div>
      <div>
        <dt>Timber</dt>
        <dd>{piece.species.name}</dd>
      </div>
      <div>
        <dt>Over all</dt>
        <dd>
          <Typeset text={over} />
        </dd>
      </div>
      <div>
        <dt>About</dt>
        <dd>{printQuantity(mass.value, mass.unit, units, "about")}</dd>
      </div>
    </dl>
  );
}
