import { type Piece, posedAt, type State, statesOf } from "../../piece/index.ts";
import type { Solids } from "../../solid/index.ts";
import { type Kg, printQuantity } from "../../units/index.ts";
import type { Lettering } from "../drawing.ts";
import { setFractions } from "../figures.ts";
import { lettering, sizes, textLength, wrapped } from "../lettering.ts";
import { type Area, fieldOf, type Placed } from "../sheet.ts";
import { viewNames } from "../views/camera.ts";
import { foldingView, type PieceView, pieceDrawing, pieceView, ROWS } from "../views/overall.ts";
import type { Extent } from "../views/view.ts";
import { type Page, type Setting, writing } from "./page.ts";
import { scaleFor, scaleText } from "./scales.ts";

/** Kept round the views: dimension rows, names, and air between [mm]. */
const PAD = { left: ROWS.first + 6, below: 4, between: 30, above: 15 } as const;

const wide = ({ left, right }: Extent) => right - left;
const high = ({ bottom, top }: Extent) => top - bottom;

/** The ways a piece stands on the title sheet: all up, folded, and for the general view one leaf down. */
function stancesOf(piece: Piece) {
  const { motions, parts } = piece;
  const states = statesOf(motions);
  const [folded, open] = [states[0], states.at(-1)];
  const first = motions.find(({ kind }) => kind === "leaf");
  const isOneDown = ({ turns }: State) =>
    motions.every(({ key, kind }) => kind !== "leaf" || !turns[key] === (key !== first?.key));
  const shown = states.find(isOneDown) ?? folded;
  const standing = (state: State | undefined): Piece => ({
    ...piece,
    parts: state ? posedAt(parts, motions, state.turns) : parts,
  });
  return {
    ...{ open: standing(open), folded: standing(folded), shown: standing(shown) },
    says: first && shown ? `, ${shown.says}` : "",
  };
}

/**
 * The piece from the front, the end and above, and in a general view, with its overall dimensions. A
 * piece that folds stands open, its leaves as they hang thin in the end view.
 *
 * @param mass  of the piece [kg]
 */
export function titlePage(
  piece: Piece,
  solids: Solids,
  mass: Kg,
  hidden: boolean,
  { paper, units }: Setting,
): Page {
  const field = fieldOf(paper);
  const stances = stancesOf(piece);
  const { open } = stances;
  const [front, above] = (["front", "above"] as const).map((name) =>
    pieceView(open, solids, name),
  ) as [PieceView, PieceView];
  const end = foldingView(open, stances.folded, solids, "end");
  const general = pieceView(stances.shown, solids, "general");
  const below = PAD.below + (end.folded ? ROWS.third : ROWS.second);
  const room = {
    across: field.right - field.left - PAD.left - PAD.between - 4,
    up: field.top - field.bottom - below - PAD.above - 5,
  };
  const scale = scaleFor(
    units,
    (s) =>
      (wide(front.extent) + wide(end.extent)) / s <= room.across &&
      (high(front.extent) + high(above.extent)) / s <= room.up,
  );
  const shown = { units, scale, hidden };
  const at = (view: PieceView, left: number, bottom: number): Placed => ({
    drawing: pieceDrawing(open, view, shown),
    at: [left - view.extent.left / scale, bottom - view.extent.bottom / scale],
  });
  // What is left over goes between and round the views.
  const spare = room.up - (high(front.extent) + high(above.extent)) / scale;
  const left = field.left + PAD.left;
  const base = field.bottom + below + Math.min(spare / 2, 10);
  const planBase = base + high(front.extent) / scale + PAD.above + Math.min(spare / 3, 8);
  const endLeft = left + wide(front.extent) / scale + PAD.between;
  const words = facts(piece, mass, { ...field, left: endLeft - 8 });
  const endRight = endLeft + wide(end.extent) / scale;
  const under = { right: field.right, top: words.below - 8 };
  // Over the end view or beside it, wherever the picture comes out larger.
  const picture = pictured(stances.shown, general, [
    { ...under, left: endLeft - 8, bottom: base + high(end.extent) / scale + 11 },
    { ...under, left: endRight + 14, bottom: field.bottom + 6 },
  ]);
  const name = (says: string, x: number, y: number): Lettering =>
    lettering([x, y + 3], says, { size: sizes.body, isBold: true });
  const top = (view: PieceView, bottom: number) => bottom + high(view.extent) / scale;
  const generalSays = `${viewNames.general}${stances.says}`;
  const nameLength = textLength(generalSays, sizes.body, true);
  const endSays = `${viewNames.end}${end.folded ? "; thin, as it is folded" : ""}`;
  return {
    id: "title",
    shows: "Views of the whole piece",
    scale: scaleText(scale),
    placed: [
      at(above, left, planBase),
      at(front, left, base),
      at(end, endLeft, base),
      picture.placed,
      writing("names", [
        name(viewNames.above, left, top(above, planBase)),
        name(viewNames.front, left, top(front, base)),
        name(endSays, endLeft, top(end, base)),
        name(generalSays, Math.min(picture.left, field.right - nameLength), picture.top),
        ...words.texts,
      ]),
    ],
  };
}

/** The general view, as large as the best of some places allows. */
function pictured(piece: Piece, view: PieceView, places: readonly Area[]) {
  const sized = places
    .filter((place) => place.right - place.left > 20 && place.top - place.bottom > 20)
    .map((place) => ({
      place,
      scale: Math.max(
        wide(view.extent) / (place.right - place.left),
        high(view.extent) / (place.top - place.bottom),
      ),
    }));
  const best = sized.sort((a, b) => a.scale - b.scale)[0];
  if (!best) throw new Error("the title sheet has no place for the general view");
  const { place, scale } = best;
  const { left, right, bottom } = view.extent;
  const spare = place.top - place.bottom - high(view.extent) / scale;
  const drawing = pieceDrawing(piece, view, { units: "mm", scale, hidden: false });
  const placed: Placed = {
    drawing: { ...drawing, isFine: true },
    at: [
      (place.left + place.right) / 2 - (left + right) / 2 / scale,
      place.bottom + spare * 0.6 - bottom / scale,
    ],
  };
  const [x, y] = placed.at;
  return { placed, left: x + left / scale, top: y + view.extent.top / scale };
}

/** Whose it is, what it is made of, and for which air. */
function facts({ document, species, seasons, units }: Piece, mass: Kg, { left, right, top }: Area) {
  const { title, body } = sizes;
  const room = right - left;
  const figure = (value: number, unit: "kg" | "% MC") =>
    setFractions(printQuantity(value, unit, units, "about")).replaceAll(" ", "\u00a0");
  const lines = [
    document.client,
    `${species.name}, about ${figure(mass, "kg")}; made at ${figure(seasons.made.value, "% MC")}, for a home of ${figure(seasons.driest.value, "% MC")} to ${figure(seasons.dampest.value, "% MC")}.`,
    document.note,
  ].flatMap((says) => wrapped(says, body, room));
  const head = wrapped(document.name, title, room, true).slice(0, 2);
  let y = top;
  const texts = [
    ...head.map((says) => {
      y -= title * 1.1;
      return lettering([left, y], says, { size: title, isBold: true });
    }),
    ...lines.slice(0, 6).map((says, i) => {
      y -= i === 0 ? body * 1.7 : body * 1.35;
      return lettering([left, y], says, { size: body });
    }),
  ];
  return { texts, below: y - 2 };
}
