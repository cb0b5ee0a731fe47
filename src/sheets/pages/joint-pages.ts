import type { Piece } from "../../piece/index.ts";
import type { Solids } from "../../solid/index.ts";
import type { CutList } from "../../stock/index.ts";
import { lettering, sizes, wrapped } from "../lettering.ts";
import { type Area, fieldOf } from "../sheet.ts";
import { jointSection } from "../views/joint-section.ts";
import { paperBox } from "../writers/box-of.ts";
import { type Page, type Setting, writing } from "./page.ts";
import { scaleFor, scaleText } from "./scales.ts";

/** Between two sections, and for the lines over them [mm]. */
const GUTTER = 10;
const HEAD = 16;

/** A leg of each sort cut through its joints: two on a sheet, at true size where there is room. */
export function jointPages(
  piece: Piece,
  { rows }: CutList,
  solids: Solids,
  setting: Setting,
): readonly Page[] {
  const legs = rows.flatMap(({ keys }) => {
    const leg = piece.parts.find(({ key, role }) => role === "leg" && key === keys[0]);
    return leg && jointSection(piece, leg, solids, 1) ? [leg] : [];
  });
  const pairs = legs.flatMap((_, i) => (i % 2 === 0 ? [legs.slice(i, i + 2)] : []));
  const field = fieldOf(setting.paper);
  const wide = (field.right - field.left - GUTTER) / 2;
  return pairs.map((pair, n): Page => {
    const shown = pair.map((leg, i) => {
      const left = field.left + i * (wide + GUTTER);
      return section(piece, leg, solids, { ...field, left, right: left + wide }, setting);
    });
    const scales = [...new Set(shown.map(({ scale }) => scaleText(scale)))];
    return {
      id: n === 0 ? "joints" : `joints-${n + 1}`,
      shows: "Joints in the legs",
      scale: scales.length === 1 ? (scales[0] ?? "") : "as noted",
      placed: [
        ...shown.map(({ placed }) => placed),
        writing(
          "joint-names",
          shown.flatMap(({ texts }) => texts),
        ),
      ],
    };
  });
}

function section(
  piece: Piece,
  leg: Piece["parts"][number],
  solids: Solids,
  area: Area,
  { units }: Setting,
) {
  const drawn = (scale: number) => {
    const drawing = jointSection(piece, leg, solids, scale);
    if (!drawing) throw new Error(`${leg.name} has no joint to cut through`);
    return { drawing, box: paperBox(drawing) };
  };
  const room = { wide: area.right - area.left, high: area.top - area.bottom - HEAD };
  const scale = scaleFor(units, (s) => {
    const { box } = drawn(s);
    return box.right - box.left <= room.wide && box.top - box.bottom <= room.high;
  });
  const { drawing, box } = drawn(scale);
  const { heading, body } = sizes;
  const name = `${leg.mark}: ${leg.name}`;
  const says = `Cut level through the middle of its mortises, seen from above, ${scaleText(scale)}.`;
  return {
    scale,
    placed: { drawing, at: [area.left - box.left, area.top - HEAD - box.top] as const },
    texts: [
      lettering([area.left, area.top - heading * 1.15], name, { size: heading, isBold: true }),
      ...wrapped(says, body, room.wide).map((line, i) =>
        lettering([area.left, area.top - heading * 1.15 - body * (1.6 + 1.35 * i)], line),
      ),
    ],
  };
}
