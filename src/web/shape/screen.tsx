import { useState } from "react";
import { timber } from "../../asking/index.ts";
import { answer, homeAsks, idleAsks, override, writeField, writeHome } from "../../kinds/index.ts";
import type { PieceDocument, Value } from "../../piece/index.ts";
import type { Shop } from "../../shop/index.ts";
import type { Workup } from "../../workup/index.ts";
import { kindKnown } from "../piece/kind-known.ts";
import { refusalAt } from "../piece/refusal-at.ts";
import type { Refusal } from "../piece/talk.ts";
import type { OpenPiece } from "../piece/use-piece.ts";
import { AnswerField } from "./answer-field.tsx";
import { Diagram } from "./diagram.tsx";
import { LeafSection } from "./leaf-section.tsx";
import { NameField } from "./name-field.tsx";
import { OwnValue } from "./own-value.tsx";

type Props = {
  readonly document: PieceDocument;
  readonly piece: OpenPiece;
  /** whose things may be chosen; undefined until it is read */
  readonly shop: Shop | undefined;
  readonly workup: Workup | undefined;
  readonly refusals: readonly Refusal[];
};

/** The piece's dimensions as a maker thinks of them. */
export function ShapeScreen({ document, piece, shop, workup, refusals }: Props) {
  const [touched, setTouched] = useState<string>();
  const [first] = Object.entries(document.assemblies);
  if (!first) return null;
  const [assembly, texts] = first;
  const kind = kindKnown(texts.kind);
  const idle = kind ? idleAsks(kind, texts) : [];
  const { units } = document;
  const { preview, commit } = piece;
  return (
    <div className="shape">
      <h1>{kind?.title ?? document.name}</h1>
      {kind && <Diagram kind={kind.name} dimension={touched} texts={texts} />}
      <form onSubmit={(event) => event.preventDefault()}>
        {kind?.groups.map((group) => (
          <section key={group.title} aria-label={group.title}>
            <h2>{group.title}</h2>
            {group.asks
              .filter((name) => !idle.includes(name))
              .map((name) => {
                const question = kind.asks[name];
                if (!question) throw new Error(`${kind.name} is not asked ${name}`);
                return (
                  <AnswerField
                    key={name}
                    question={question}
                    shop={shop}
                    stands={texts[name]}
                    units={units}
                    refusal={refusalAt(refusals, "assemblies", assembly, name)}
                    preview={(text) =>
                      preview(
                        text === undefined ? undefined : answer(document, assembly, name, text),
                      )
                    }
                    keep={(text) => commit(answer(document, assembly, name, text))}
                    touch={(isTouched) => setTouched(isTouched ? name : undefined)}
                  />
                );
              })}
            {workup && group.title === "Leaf joint" && (
              <LeafSection piece={workup.piece} units={units} />
            )}
            {workup && (
              <SharedValues
                document={document}
                values={workup.piece.values.filter(({ key }) => sharedIn[group.title]?.test(key))}
                piece={piece}
                refusals={refusals}
              />
            )}
          </section>
        ))}
        <section aria-label="Timber and home">
          <h2>Timber and home</h2>
          <AnswerField
            question={timber()}
            stands={document.timber}
            units={units}
            refusal={refusalAt(refusals, "timber")}
            preview={() => undefined}
            keep={(text) => commit(writeField("timber", text))}
            touch={() => undefined}
          />
          {Object.entries(homeAsks).map(([name, question]) => {
            const at = name as keyof PieceDocument["home"];
            return (
              <AnswerField
                key={name}
                question={question}
                stands={document.home[at]}
                units={units}
                refusal={refusalAt(refusals, "home", name)}
                preview={(text) =>
                  preview(text === undefined ? undefined : writeHome(document, at, text))
                }
                keep={(text) => commit(writeHome(document, at, text))}
                touch={() => undefined}
              />
            );
          })}
        </section>
        <section aria-label="Title">
          <h2>Title</h2>
          <NameField
            label="Name of the piece"
            stands={document.name}
            isNeeded
            keep={(text) => commit(writeField("name", text))}
          />
          <NameField
            label="Client"
            stands={document.client}
            keep={(text) => commit(writeField("client", text))}
          />
        </section>
      </form>
    </div>
  );
}

/**
 * What several joints, leaves or arms share and is not asked outright, by the group that it stands in:
 * all tenons of the long rails, and of the end rails; hinges and mouldings; openings of the arms.
 */
const sharedIn: Readonly<Record<string, RegExp>> = {
  Joints: /\/tenons\/(long|end)\./,
  "Leaf joint": /\/leaf-joint\.(pin-over-face|plate|pin-height|radius|cove|fillet)$/,
  "Swing arms": /\/arms\.(offset|kerf|opening)$/,
};

/** Worked out unless the maker says otherwise. */
function SharedValues(props: {
  readonly document: PieceDocument;
  readonly values: readonly Value[];
  readonly piece: OpenPiece;
  readonly refusals: readonly Refusal[];
}) {
  const { document, values, piece, refusals } = props;
  return values.map((value) => (
    <OwnValue
      key={value.key}
      value={value}
      label={value.says.charAt(0).toUpperCase() + value.says.slice(1)}
      units={document.units}
      own={document.overrides[value.key]}
      refusal={refusalAt(refusals, "overrides", value.key)}
      preview={(text) =>
        piece.preview(text === undefined ? undefined : override(document, value, text))
      }
      keep={(text) => piece.commit(override(document, value, text))}
      takeBack={() =>
        Object.hasOwn(document.overrides, value.key) && piece.commit(override(document, value))
      }
    />
  ));
}
