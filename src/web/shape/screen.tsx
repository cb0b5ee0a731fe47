import { useState } from "react";
import { timber } from "../../asking/index.ts";
import { answer, homeAsks, override, writeField, writeHome } from "../../kinds/index.ts";
import type { PieceDocument, Value } from "../../piece/index.ts";
import type { Workup } from "../../workup/index.ts";
import { kindKnown } from "../piece/kind-known.ts";
import { refusalAt } from "../piece/refusal-at.ts";
import type { Refusal } from "../piece/talk.ts";
import type { OpenPiece } from "../piece/use-piece.ts";
import { AnswerField } from "./answer-field.tsx";
import { Diagram } from "./diagram.tsx";
import { NameField } from "./name-field.tsx";
import { OwnValue } from "./own-value.tsx";

type Props = {
  readonly document: PieceDocument;
  readonly piece: OpenPiece;
  readonly workup: Workup | undefined;
  readonly refusals: readonly Refusal[];
};

/** The piece's dimensions as a maker thinks of them. */
export function ShapeScreen({ document, piece, workup, refusals }: Props) {
  const [touched, setTouched] = useState<string>();
  const [first] = Object.entries(document.assemblies);
  if (!first) return null;
  const [assembly, texts] = first;
  const kind = kindKnown(texts.kind);
  const { units } = document;
  const { preview, commit } = piece;
  return (
    <div className="shape">
      <h1>{kind?.title ?? document.name}</h1>
      {kind && <Diagram dimension={touched} texts={texts} />}
      <form onSubmit={(event) => event.preventDefault()}>
        {kind?.groups.map((group) => (
          <section key={group.title} aria-label={group.title}>
            <h2>{group.title}</h2>
            {group.asks
              .filter((name) => !isIdle(name, texts))
              .map((name) => {
                const question = kind.asks[name];
                if (!question) throw new Error(`${kind.name} is not asked ${name}`);
                return (
                  <AnswerField
                    key={name}
                    question={question}
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
            {group.title === "Joints" && workup && (
              <JointValues
                document={document}
                values={workup.piece.values}
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

/** A square leg has no foot to be asked about. */
const isIdle = (name: string, texts: Readonly<Record<string, string>>): boolean =>
  texts["leg-form"] === "square" && (name === "foot" || name === "taper-start");

/** What all joints of the long rails share, and all of the end rails; worked out unless the maker says otherwise. */
function JointValues(props: {
  readonly document: PieceDocument;
  readonly values: readonly Value[];
  readonly piece: OpenPiece;
  readonly refusals: readonly Refusal[];
}) {
  const { document, values, piece, refusals } = props;
  const shared = values.filter(({ key }) => /\/tenons\/(long|end)\./.test(key));
  return shared.map((value) => (
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
