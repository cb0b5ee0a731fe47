import type { CutRow, Size } from "../../stock/index.ts";
import { type Mm, printLength, printQuantity } from "../../units/index.ts";
import type { Workup } from "../../workup/index.ts";
import { Typeset } from "../controls/typeset.tsx";
import type { Refusal } from "../piece/talk.ts";
import type { OpenPiece } from "../piece/use-piece.ts";
import { PartCard } from "./part-card.tsx";

type Props = {
  readonly workup: Workup;
  readonly piece: OpenPiece;
  readonly refusals: readonly Refusal[];
  readonly chosen: string | undefined;
  readonly choose: (key: string | undefined) => void;
  readonly point: (keys: readonly string[]) => void;
  readonly lifted: ReadonlySet<string>;
};

/** The cut list; a row lifts its parts in the model, and a part picked there opens here. */
export function PartsScreen(props: Props) {
  const { workup, piece, refusals, chosen, choose, point, lifted } = props;
  const { cutList, piece: made } = workup;
  const { units } = made;
  const part = made.parts.find((one) => one.key === chosen);
  const isCut = (key: string) => Object.hasOwn(made.document.cut, key);
  return (
    <div className="parts">
      <h1>Parts</h1>
      <p className="tells">
        Finished sizes along the grain × width × thickness; under them what each is sawn out at.
      </p>
      {part && <PartCard {...{ part, workup, piece, refusals }} close={() => choose(undefined)} />}
      <div className="cut-list-wrap">
        <table className="cut-list">
          <thead>
            <tr>
              <th scope="col">Mark</th>
              <th scope="col">Part</th>
              <th scope="col" className="number">
                No.
              </th>
            </tr>
          </thead>
          <tbody>
            {cutList.rows.map((row) => (
              <Row
                key={row.keys.join()}
                row={row}
                {...{ units, chosen, choose, point, lifted, isCut }}
              />
            ))}
          </tbody>
        </table>
      </div>
      {cutList.hardware.length > 0 && (
        <section aria-label="Bought things">
          <h2 className="parts-sum">Bought</h2>
          <ul className="sums-list">
            {cutList.hardware.map(({ what, count }) => (
              <li key={what}>
                <span>{what}</span>
                <b>{count}</b>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section aria-label="Timber to saw">
        <h2 className="parts-sum">To be sawn, with nothing for waste</h2>
        <ul className="sums-list">
          {cutList.byThickness.map(({ quarter, boardFeet }) => (
            <li key={quarter}>
              <span>{quarter}</span>
              <b>{printQuantity(boardFeet, "bd ft", units, "enough")}</b>
            </li>
          ))}
          <li>
            <span>Together</span>
            <b>{printQuantity(cutList.boardFeet, "bd ft", units, "enough")}</b>
          </li>
          <li>
            <span>Finished, about</span>
            <b>{printQuantity(cutList.mass, "kg", units, "about")}</b>
          </li>
        </ul>
      </section>
    </div>
  );
}

type RowProps = Omit<Props, "workup" | "piece" | "refusals"> & {
  readonly row: CutRow;
  readonly units: Workup["piece"]["units"];
  readonly isCut: (key: string) => boolean;
};

function Row({ row, units, chosen, choose, point, lifted, isCut }: RowProps) {
  const { keys, marks, mirrored, name, pieces, finished, rough, quarter, layers, isGluedUp } = row;
  const { between } = row;
  const cut = marks.filter((_, i) => isCut(keys[i] ?? ""));
  const isChosen = chosen !== undefined && keys.includes(chosen);
  const size = (s: Size, purpose: "layout" | "enough", sizes = 3) =>
    [s.length, s.width, s.thickness]
      .slice(0, sizes)
      .map((l: Mm) => printLength(l, { units, purpose }))
      .join(" × ");
  return (
    <tr
      data-lifted={keys.some((key) => lifted.has(key))}
      data-chosen={isChosen}
      onPointerEnter={() => point(keys)}
      onPointerLeave={() => point([])}
    >
      <td className="marks">
        {keys.map((key, i) => (
          <button
            key={key}
            type="button"
            className="mark-button"
            aria-pressed={key === chosen}
            onFocus={() => point([key])}
            onBlur={() => point([])}
            onClick={() => choose(key === chosen ? undefined : key)}
          >
            {marks[i]}
          </button>
        ))}
      </td>
      <td>
        <span className="part-name">{name}</span>
        {mirrored.length > 0 && <small>{mirrored.join(", ")} mirrored</small>}
        {cut.length > 0 && <small className="is-cut">✓ cut: {cut.join(", ")}</small>}
        <span className="part-size">
          <Typeset text={size(finished, "layout")} />
        </span>
        {between !== undefined && (
          <small>
            <Typeset
              text={`${printLength(between, { units, purpose: "layout" })} between shoulders`}
            />
          </small>
        )}
        <small>
          {isGluedUp ? "strips, each " : ""}
          {layers > 1 ? `${layers} layers, each ` : ""}
          <Typeset text={`sawn ${size(rough, "enough", 2)}`} /> from {quarter.name}
        </small>
      </td>
      <td className="number">{pieces}</td>
    </tr>
  );
}
