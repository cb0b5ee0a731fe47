import { mcPct, mm, perPct, readTable } from "../../src/units/index.ts";
import { type BoardSection, boardCup, faceWidthChange, ringRadius } from "../../src/wood/index.ts";
import { type Check, exact, series, share } from "./check.ts";
import { cupBoards } from "./data/cup-boards.ts";

const AREA = "Cup of one board";
const reference = series(AREA, "cup cases");
/** The printed nine figures of a closed form. */
const CLOSED_FORM = share(1e-6);

const boards = readTable(cupBoards).flatMap((row): readonly Check[] => {
  const [width, thick, pith] = [Number(row.width), Number(row.thick), Number(row.pith)];
  const heartUp = row.heart === "up";
  const face = (distance: number): BoardSection => ({
    width: mm(width),
    pithDistance: mm(distance),
    radial: perPct(0.00158),
    tangential: perPct(0.00369),
    from: mcPct(12),
    to: mcPct(8),
  });
  const top = face(heartUp ? pith : pith + thick);
  const bottom = face(heartUp ? pith + thick : pith);
  // Ours is positive when the bark side goes hollow, theirs when the top does; with the heart up
  // the top is the heart's side.
  const hollowTop = (section: BoardSection) => (heartUp ? -1 : 1) * boardCup(section).value;
  const board = `${width} × ${thick} mm, heart ${row.heart}, ${pith} mm from the pith`;
  return [
    reference(`top of ${board}`, row.cup_top ?? "", "mm", () => hollowTop(top), CLOSED_FORM),
    reference(
      `bottom of ${board}`,
      row.cup_bottom ?? "",
      "mm",
      () => hollowTop(bottom),
      CLOSED_FORM,
    ),
    reference(
      `width of the top of ${board}`,
      row.width_top ?? "",
      "mm",
      () => faceWidthChange(top).value,
      CLOSED_FORM,
    ),
  ];
});

const geometry = series(AREA, "textbook");
const rings = [
  geometry(
    "radius of an arc of chord 6 and rise 1 (sides 3, 4, 5)",
    "5",
    "mm",
    () => ringRadius(mm(6), mm(1)).value,
    exact,
  ),
  geometry(
    "radius of an arc of chord 8 and rise 2 (sides 3, 4, 5)",
    "5",
    "mm",
    () => ringRadius(mm(8), mm(2)).value,
    exact,
  ),
];

export const cupChecks: readonly Check[] = [...boards, ...rings];
