import { useCallback, useEffect, useRef, useState } from "react";
import { type Kind, kinds } from "../../kinds/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { api, type Listed, type Said, saidBy } from "../api/index.ts";
import { Head, type Theme } from "../head.tsx";

type Props = {
  readonly units: LengthUnit;
  readonly setUnits: (units: LengthUnit) => void;
  readonly theme: Theme;
  readonly setTheme: (theme: Theme) => void;
};

const day = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });

/** Every piece that is kept here. */
export function PiecesScreen({ units, setUnits, theme, setTheme }: Props) {
  const { pieces, away, said, tell, read } = usePieces();
  useEffect(() => {
    document.title = "Latewood: pieces";
  }, []);
  const change = (work: Promise<unknown>) => void work.then(read, tell);
  return (
    <>
      <Head
        where="Pieces"
        units={units}
        setUnits={setUnits}
        theme={theme}
        setTheme={setTheme}
        skipTo="pieces"
        skipWord="To the pieces"
      />
      <main className="pieces" id="pieces" tabIndex={-1}>
        <h1>Pieces</h1>
        {said.map(({ code, place, reason, remedy }) => (
          <p className="repair" role="alert" key={`${code} ${place}`}>
            <b>{place}:</b> {reason} {remedy}
          </p>
        ))}
        {pieces && <List pieces={pieces} change={change} />}
        <NewPiece units={units} tell={tell} />
        {away.length > 0 && (
          <details className="put-away">
            <summary>Put away ({away.length})</summary>
            <ul>
              {away.map(({ id, name }) => (
                <li key={id}>
                  {name}{" "}
                  <button
                    type="button"
                    className="in-line"
                    onClick={() => change(api.bringBack(id))}
                  >
                    Bring back<span className="spoken"> {name}</span>
                  </button>
                </li>
              ))}
            </ul>
          </details>
        )}
      </main>
    </>
  );
}

function usePieces() {
  const [pieces, setPieces] = useState<readonly Listed[]>();
  const [away, setAway] = useState<readonly Listed[]>([]);
  const [said, setSaid] = useState<readonly Said[]>([]);
  const tell = useCallback((fault: unknown) => setSaid(saidBy(fault)), []);
  const read = useCallback(() => {
    Promise.all([api.pieces(), api.away()]).then(([here, there]) => {
      setPieces(here.pieces);
      setAway(there.pieces);
      setSaid([]);
    }, tell);
  }, [tell]);
  useEffect(read, [read]);
  return { pieces, away, said, tell, read };
}

function List(props: {
  readonly pieces: readonly Listed[];
  readonly change: (work: Promise<unknown>) => void;
}) {
  const { pieces, change } = props;
  if (pieces.length === 0) return <p className="tells">No piece is kept here yet.</p>;
  return (
    <ul className="piece-list">
      {pieces.map(({ id, name, client, demo, changed, steps }) => (
        <li key={id}>
          <a href={`#/piece/${id}/shape`}>
            <b>{name}</b>
            <span>{client}</span>
          </a>
          <small>
            {demo ? "invented demo piece · " : ""}
            {steps === 0 ? "as it was made" : `${steps} ${steps === 1 ? "step" : "steps"}`} ·{" "}
            {day.format(new Date(changed))}
          </small>
          <span className="piece-doings">
            <a href={api.fileOf(id)} download>
              Save as a file<span className="spoken">: {name}</span>
            </a>
            <button type="button" className="in-line" onClick={() => change(api.putAway(id))}>
              Put away<span className="spoken"> {name}</span>
            </button>
          </span>
        </li>
      ))}
    </ul>
  );
}

function NewPiece({
  units,
  tell,
}: {
  readonly units: LengthUnit;
  readonly tell: (fault: unknown) => void;
}) {
  const [name, setName] = useState("");
  const file = useRef<HTMLInputElement>(null);
  const open = ({ id }: { readonly id: string }) => {
    window.location.hash = `#/piece/${id}/shape`;
  };
  const begin = ({ name: kind, title }: Kind) =>
    void api.make(kind, name.trim() || title, units).then(open, tell);
  return (
    <form
      className="new-piece"
      onSubmit={(event) => {
        event.preventDefault();
        const { submitter } = event.nativeEvent as SubmitEvent;
        const kind = kinds.find((one) => one.name === submitter?.getAttribute("value"));
        if (kind) begin(kind);
      }}
    >
      <h2>A new piece</h2>
      <div className="field">
        <label htmlFor="new-name">What it is called</label>
        <div className="field-line">
          <input
            id="new-name"
            value={name}
            maxLength={120}
            placeholder="Its kind, unless it has a name"
            autoComplete="off"
            onChange={(event) => setName(event.target.value)}
          />
        </div>
      </div>
      <p className="piece-doings">
        {kinds.map(({ name: kind, title }) => (
          <button key={kind} type="submit" value={kind} className="remedy">
            Begin a {title.toLowerCase()}
          </button>
        ))}
        <button type="button" className="remedy" onClick={() => file.current?.click()}>
          Take in a file
        </button>
      </p>
      <input
        ref={file}
        type="file"
        accept=".json,application/json"
        className="spoken"
        tabIndex={-1}
        aria-label="A piece’s file"
        onChange={async (event) => {
          const [chosen] = event.target.files ?? [];
          event.target.value = "";
          if (chosen) await api.takeIn(await chosen.text()).then(open, tell);
        }}
      />
    </form>
  );
}
