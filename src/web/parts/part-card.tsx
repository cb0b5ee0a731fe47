import { markCut, measure, override, unmarkCut } from "../../kinds/index.ts";
import type { Face, Part, Value } from "../../piece/index.ts";
import { printLength, printQuantity } from "../../units/index.ts";
import type { Workup } from "../../workup/index.ts";
import { Typeset } from "../controls/typeset.tsx";
import { refusalAt } from "../piece/refusal-at.ts";
import type { Refusal } from "../piece/talk.ts";
import type { OpenPiece } from "../piece/use-piece.ts";
import { OwnValue } from "../shape/own-value.tsx";

type Props = {
  readonly part: Part;
  readonly workup: Workup;
  readonly piece: OpenPiece;
  readonly refusals: readonly Refusal[];
  readonly close: () => void;
};

const faceSays: Readonly<Record<Face, string>> = {
  show: "show face",
  back: "back",
  upper: "upper edge",
  lower: "lower edge",
  left: "left end",
  right: "right end",
};
const sawnSays = { flat: "flatsawn", rift: "riftsawn", quarter: "quartersawn" } as const;

/** All about one part: how it is marked, what it was made to, and what the wood says of it. */
export function PartCard({ part, workup, piece, refusals, close }: Props) {
  const { units } = workup.piece;
  const { document } = piece;
  const isCut = document !== undefined && Object.hasOwn(document.cut, part.key);
  const twin = workup.piece.parts.find((one) => one.key === part.mirrorOf);
  const mass = workup.weighing.parts[part.key]?.mass;
  const { length, width, thickness } = part.blank;
  const size = [length, width, thickness]
    .map((l) => printLength(l, { units, purpose: "layout" }))
    .join(" × ");
  return (
    <section className="part-card" aria-label={`Part ${part.mark}`}>
      <h2>
        {part.mark} <span>{part.name}</span>
      </h2>
      <p>
        <b>
          <Typeset text={size} />
        </b>
        {mass && <> · {printQuantity(mass.value, mass.unit, units, "about")}</>} ·{" "}
        {sawnSays[part.sawn]}
      </p>
      <p>
        Measured from its {faceSays[part.reference.face]} and {faceSays[part.reference.edge]}
        {part.isMirrored && twin ? `; the mirror of ${twin.mark}` : ""}
        {part.triangle ? `; triangle ${part.triangle.place} of ${part.triangle.of}` : ""}.
      </p>
      {document && <Sizes {...{ part, workup, piece, refusals }} />}
      <p className="piece-doings">
        <button
          type="button"
          className="remedy"
          onClick={() =>
            piece.commit(
              isCut ? unmarkCut(workup.piece, part.key) : markCut(workup.piece, part.key),
            )
          }
        >
          {isCut ? "To be cut anew" : "It is cut"}
        </button>
        <button type="button" className="in-line" onClick={close}>
          Back to the list
        </button>
      </p>
      {isCut && (
        <p className="tells">It keeps the sizes it was cut to, whatever the design does.</p>
      )}
    </section>
  );
}

/** The part's own sizes, to be entered as they are taken off the wood, and those of its joints. */
function Sizes({ part, workup, piece, refusals }: Omit<Props, "close">) {
  const { joints, values } = workup.piece;
  const own = values.filter(({ key }) => key.startsWith(`${part.key}.`));
  const owners = joints.filter((j) => j.parts.includes(part.key)).map((j) => j.key);
  const ofJoints = values.filter(({ key }) => owners.includes(key.slice(0, key.lastIndexOf("."))));
  return (
    <>
      <div className="own-values">
        {own.map((value) => (
          <SizeField key={value.key} {...{ value, workup, piece, refusals }} />
        ))}
      </div>
      {ofJoints.length > 0 && (
        <details className="own-values">
          <summary>Its joints ({ofJoints.length} sizes)</summary>
          {ofJoints.map((value) => (
            <SizeField key={value.key} {...{ value, workup, piece, refusals }} isWhole />
          ))}
        </details>
      )}
    </>
  );
}

function SizeField(props: {
  readonly value: Value;
  readonly workup: Workup;
  readonly piece: OpenPiece;
  readonly refusals: readonly Refusal[];
  /** whether its label is all of what it is called, and not only what differs within a part */
  readonly isWhole?: boolean;
}) {
  const { value, workup, piece, refusals, isWhole = false } = props;
  const { document, preview, commit } = piece;
  if (!document) return null;
  const isOfWood = /\.(length|width|thickness)$/.test(value.key) && !isWhole;
  const make = isOfWood ? measure : override;
  const table = isOfWood ? document.measured : document.overrides;
  return (
    <OwnValue
      value={value}
      label={isWhole ? capital(value.says) : labelOf(value, isOfWood)}
      units={workup.piece.units}
      own={Object.hasOwn(table, value.key) ? table[value.key] : undefined}
      refusal={refusalAt(refusals, isOfWood ? "measured" : "overrides", value.key)}
      preview={(text) => preview(text === undefined ? undefined : make(document, value, text))}
      keep={(text) => commit(make(document, value, text))}
      takeBack={() => Object.hasOwn(table, value.key) && commit(make(document, value))}
    />
  );
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function labelOf({ says }: Value, isOfWood: boolean): string {
  const what = says.split(", ").slice(1).join(", ") || says;
  return isOfWood ? `${capital(what)}, as measured` : capital(what);
}
