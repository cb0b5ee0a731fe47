import { overAll } from "../../piece/index.ts";
import { type Mm, printLength, printQuantity } from "../../units/index.ts";
import type { Workup } from "../../workup/index.ts";
import { Typeset } from "../controls/typeset.tsx";

/** The strip that stands on every drawing: what it is, of what, how large, how heavy. */
export function TitleStrip({ workup }: { readonly workup: Workup }) {
  const { piece, weighing } = workup;
  const { units } = piece;
  const size = (length: Mm) => printLength(length, { units, purpose: "layout" });
  const { open, closed } = overAll(piece.parts, piece.motions);
  const over = [open.length, open.width, open.height].map(size).join(" × ");
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
          <Typeset text={closed ? `${over}, closed ${size(closed.width)} wide` : over} />
        </dd>
      </div>
      <div>
        <dt>About</dt>
        <dd>{printQuantity(mass.value, mass.unit, units, "about")}</dd>
      </div>
    </dl>
  );
}
