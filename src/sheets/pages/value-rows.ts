import type { Piece, Value } from "../../piece/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { drawnLength } from "../figures.ts";
import { shortened, sizes, wrapped } from "../lettering.ts";
import { cell, type Row, row } from "./flow.ts";

const words: Readonly<Record<Exclude<Value["stands"], "computed">, string>> = {
  override: "the maker’s own",
  measured: "measured",
  cut: "cut",
};

/**
 * Every value that is not the computed one, with both figures; and entries that name nothing any more.
 *
 * @param wide  length of a line [mm]
 */
export function valueRows(
  { values, strays }: Piece,
  wide: number,
  units: LengthUnit,
): readonly Row[] {
  const { body, heading, small } = sizes;
  const own = values.filter((value) => value.stands !== "computed");
  const title = row(
    [cell(0, "Figures that are not the computed ones", { size: heading, isBold: true })],
    13,
    {
      isHead: true,
    },
  );
  if (own.length === 0 && strays.length === 0) {
    const says = "None: nothing is overridden, measured or cut.";
    return [title, row([cell(0, says, { size: body })], 6)];
  }
  const heads = ["What", "", "In force", "Computed"].map((says, i) =>
    cell(places(wide)[i] ?? 0, says, { size: body, isBold: true, anchor: i > 1 ? "end" : "start" }),
  );
  return [
    title,
    row(heads, 6.5, { isHead: true, isRuled: true }),
    ...own.map((value) => valueRow(value, wide, units)),
    ...strays.flatMap(({ table, key, text }) =>
      wrapped(`Kept, though it names nothing now: ${table}, ${key}: ${text}`, small, wide).map(
        (says) => row([cell(0, says, { size: small, tone: "ochre" })], 4.5),
      ),
    ),
  ];
}

const places = (wide: number) => [0, 0.52 * wide, 0.82 * wide, wide] as const;

function valueRow(
  { says, inForce, stands, computed }: Value,
  wide: number,
  units: LengthUnit,
): Row {
  const { body } = sizes;
  const [at, word, force, worked] = places(wide);
  const figure = (value: Value["inForce"]) => drawnLength(value, units, "fit");
  return row(
    [
      cell(at, shortened(says, body, word - 4), { size: body }),
      cell(word, stands === "computed" ? "" : words[stands], { size: body }),
      cell(force, figure(inForce), { size: body, anchor: "end" }),
      cell(worked, figure(computed.value), { size: body, anchor: "end" }),
    ],
    5.4,
    { isRuled: true },
  );
}
