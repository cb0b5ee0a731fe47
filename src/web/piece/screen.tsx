import { useCallback, useEffect, useMemo, useState } from "react";
import { turnTo } from "../../kinds/index.ts";
import type { Motion } from "../../piece/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { Head, type Theme } from "../head.tsx";
import { ModelView } from "../model/index.ts";
import { PapersScreen } from "../papers/screen.tsx";
import { PartsScreen } from "../parts/screen.tsx";
import { ProofScreen } from "../proof/screen.tsx";
import { ShapeScreen } from "../shape/screen.tsx";
import { KeepingLine } from "./keeping-line.tsx";
import { Notices } from "./notices.tsx";
import { RefusalLines } from "./refusal-lines.tsx";
import { StationStick } from "./station-stick.tsx";
import { type StationName, titleOf } from "./stations.ts";
import { TitleStrip } from "./title-strip.tsx";
import type { Worked } from "./told.ts";
import { useUndoKeys } from "./undo-keys.ts";
import { type OpenPiece, usePiece } from "./use-piece.ts";
import { type ShopRead, useShop } from "./use-shop.ts";
import { useWorkup } from "./use-workup.ts";

type Props = {
  readonly id: string;
  readonly station: StationName;
  readonly theme: Theme;
  readonly setTheme: (theme: Theme) => void;
};

/** What lies on the bench: one piece, at one of its stations. */
export function PieceScreen({ id, station, theme, setTheme }: Props) {
  const piece = usePiece(id);
  const shop = useShop();
  const worked = useWorkup(piece.shown, shop.shop);
  const { document: doc } = piece;
  useUndoKeys(piece);
  useEffect(() => {
    document.title = doc ? `Latewood: ${doc.name}` : "Latewood";
  }, [doc]);
  const units: LengthUnit = doc?.units ?? "inch";
  const closed = [...piece.closed, ...shop.closed];
  return (
    <>
      <Head
        where={doc?.name ?? ""}
        aside={doc && <KeepingLine keeping={piece.keeping} isDemo={doc.demo} retry={piece.retry} />}
        units={units}
        setUnits={(side) => piece.commit((latest) => turnTo(latest, side))}
        theme={theme}
        setTheme={setTheme}
        skipTo="writing"
        skipWord="To the writing"
      >
        <StepButton word="Undo" says={piece.undoSays} step={piece.undo} />
        <StepButton word="Redo" says={piece.redoSays} step={piece.redo} />
      </Head>
      {closed.length > 0 ? (
        <main className="closed" id="writing" tabIndex={-1}>
          <h1>This piece cannot be opened</h1>
          {closed.map(({ code, reason, remedy }) => (
            <p key={code}>
              {reason} {remedy}
            </p>
          ))}
          <p>
            <a href="#/pieces">All pieces</a>
          </p>
        </main>
      ) : (
        <Bench {...{ id, station, theme, piece, shop, worked }} />
      )}
    </>
  );
}

function StepButton(props: {
  readonly word: string;
  readonly says: string | undefined;
  readonly step: () => void;
}) {
  const { word, says, step } = props;
  return (
    <button
      type="button"
      className="head-step"
      disabled={says === undefined}
      title={says}
      onClick={step}
    >
      {word}
      {says !== undefined && <span className="spoken">: {says}</span>}
    </button>
  );
}

function Bench(props: {
  readonly id: string;
  readonly station: StationName;
  readonly theme: Theme;
  readonly piece: OpenPiece;
  readonly shop: ShopRead;
  readonly worked: Worked;
}) {
  const { id, station, theme, piece, shop, worked } = props;
  const { document: doc } = piece;
  const { workup, parts, shapes, refusals, fault } = worked;
  const [pointed, setPointed] = useState<readonly string[]>([]);
  const [chosen, setChosen] = useState<string>();
  const [view, setView] = useState<"sizes" | "parts">("sizes");
  const lifted = useMemo(
    () => new Set([...pointed, ...(chosen ? [chosen] : [])]),
    [pointed, chosen],
  );
  const point = useCallback((keys: readonly string[]) => setPointed(keys), []);
  const hover = useCallback((key: string | undefined) => setPointed(key ? [key] : []), []);
  const pick = useCallback(
    (key: string | undefined) => {
      setChosen(key);
      if (key !== undefined) {
        setView("parts");
        if (station !== "shape") window.location.hash = `#/piece/${id}/shape`;
      }
    },
    [id, station],
  );
  const isOld = refusals.length > 0 || fault !== undefined;
  return (
    <div className="piece" data-station={station}>
      <StationStick id={id} current={station} says={settled(worked)} />
      <main
        className="writing"
        id="writing"
        tabIndex={-1}
        aria-label={titleOf(station)}
        data-stale={isOld}
      >
        <Notices piece={piece} shop={shop} fault={fault} />
        {doc && (
          <RefusalLines
            refusals={refusals}
            document={doc}
            commit={piece.commit}
            hasOld={workup !== undefined}
          />
        )}
        {station === "shape" && (
          <fieldset className="views" aria-label="What the sheet shows">
            {(["sizes", "parts"] as const).map((name) => (
              <button
                key={name}
                type="button"
                aria-pressed={view === name}
                onClick={() => setView(name)}
              >
                {name === "sizes" ? "Sizes" : "Parts"}
              </button>
            ))}
          </fieldset>
        )}
        {doc && station === "shape" && view === "sizes" && (
          <ShapeScreen
            document={doc}
            piece={piece}
            shop={shop.shop}
            workup={workup}
            refusals={refusals}
          />
        )}
        {doc && workup && station === "shape" && view === "parts" && (
          <PartsScreen
            workup={workup}
            piece={piece}
            refusals={refusals}
            chosen={chosen}
            choose={setChosen}
            point={point}
            lifted={lifted}
          />
        )}
        {workup && station === "proof" && (
          <ProofScreen workup={workup} units={workup.piece.units} point={point} lifted={lifted} />
        )}
        {doc && station === "papers" && (
          <PapersScreen
            id={id}
            document={doc}
            shop={shop.shop}
            isKept={piece.keeping.is === "kept"}
          />
        )}
      </main>
      <section
        className="sheet-model"
        aria-label="Model"
        data-stale={isOld}
        data-worked={worked.drawn}
      >
        <ModelView
          parts={parts}
          motions={workup?.piece.motions ?? still}
          shapes={shapes}
          lifted={lifted}
          chosen={chosen}
          choose={pick}
          hover={hover}
          theme={theme}
          label={doc ? `Model of ${doc.name}` : "Model"}
        />
        {workup && <TitleStrip workup={workup} />}
      </section>
    </div>
  );
}

/** Nothing is worked out yet, so nothing moves. */
const still: readonly Motion[] = [];

/** What the stick says of how far each station is. */
function settled({ workup, refusals }: Worked) {
  if (refusals.length > 0) return { shape: "cannot be made so", proof: "" };
  if (!workup) return {};
  const count = (verdict: string) => workup.findings.filter((f) => f.verdict === verdict).length;
  const [fails, watch] = [count("fails"), count("watch")];
  return {
    shape: `${workup.piece.parts.length} parts`,
    proof:
      fails > 0
        ? `${fails} ${fails === 1 ? "stops" : "stop"}${watch > 0 ? `, ${watch} to watch` : ""}`
        : watch > 0
          ? `${watch} to watch`
          : "nothing stops",
  };
}
