import type { Edit, PieceDocument } from "../../piece/index.ts";
import { Mark } from "../controls/finding-line.tsx";
import { Typeset } from "../controls/typeset.tsx";
import { kindKnown } from "./kind-known.ts";
import type { Refusal } from "./talk.ts";

type Props = {
  readonly refusals: readonly Refusal[];
  readonly document: PieceDocument;
  readonly commit: (edit: Edit) => void;
  readonly hasOld: boolean;
};

/** Why the piece cannot be made as it stands, and the change that would put each right. */
export function RefusalLines({ refusals, document, commit, hasOld }: Props) {
  if (refusals.length === 0) return null;
  return (
    <div className="complaints" role="status">
      {refusals.map((refusal) => (
        <div key={`${refusal.code} ${refusal.place}`} className="finding" data-verdict="stopped">
          <Mark of="stopped" />
          <div>
            <p>
              <b>{subjectOf(document, refusal.place)}:</b> <Typeset text={refusal.reason} />{" "}
              {!refusal.mend && <Typeset text={refusal.remedy} />}
            </p>
            {refusal.mend && (
              <button
                type="button"
                className="remedy"
                onClick={() =>
                  refusal.mend &&
                  commit({
                    says: `${subjectOf(document, refusal.place)}: ${refusal.remedy}`,
                    changes: [refusal.mend],
                  })
                }
              >
                <Typeset text={refusal.remedy.replace(/\.$/, "")} />
              </button>
            )}
          </div>
        </div>
      ))}
      {hasOld && (
        <p className="aside">The model and the figures are the last that could be made.</p>
      )}
    </div>
  );
}

/** What a refusal speaks of, in the words of the sheet. */
function subjectOf(document: PieceDocument, place: string): string {
  const [, assembly = "", name = ""] = place.split(/, | › /);
  const texts = document.assemblies[assembly];
  if (!place.startsWith("assemblies") || !texts) return place.replace(/ › /g, ", ");
  const says = kindKnown(texts.kind)?.asks[name]?.says ?? name;
  return says.charAt(0).toUpperCase() + says.slice(1);
}
