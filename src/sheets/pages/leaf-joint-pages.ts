import { hangsAt, ruleJointCautions } from "../../motion/index.ts";
import type { LeafJoint, Piece } from "../../piece/index.ts";
import { deg, mm } from "../../units/index.ts";
import type { Drawing, Lettering } from "../drawing.ts";
import { lettering, sizes, textLength } from "../lettering.ts";
import { type Area, fieldOf, type Placed } from "../sheet.ts";
import { type LeafSectionAsked, leafSection, wholeHinge } from "../views/leaf-section.ts";
import { pinRegion, regionDrawing, tightDrawing, tightPlace } from "../views/pin-region.ts";
import { sized } from "../views/sized.ts";
import { paperBox } from "../writers/box-of.ts";
import { cautionRows, figureRows } from "./figure-rows.ts";
import { leafJointFigures } from "./leaf-joint-figures.ts";
import { type Page, type Setting, writing } from "./page.ts";
import { enlargedFor, scaleText } from "./scales.ts";

/** The column of figures, and what is kept between it and the drawings [mm]. */
const COLUMN = { wide: 76, gutter: 8 } as const;
/** Over a drawing for its name, and between the two [mm]. */
const NAME = 6;
/** A hanging leaf is shown so far from its lip's end, past its cove [mm]. */
const HANGING = 8;

/** The joints of the leaves in section, at true size and enlarged: one sheet for those that are alike. */
export function leafJointPages(piece: Piece, setting: Setting): readonly Page[] {
  const kinds = new Map<string, LeafJoint[]>();
  for (const joint of piece.joints) {
    if (joint.kind !== "leaf") continue;
    const alike = likeness(piece, joint.leaf);
    kinds.set(alike, [...(kinds.get(alike) ?? []), joint.leaf]);
  }
  return [...kinds.values()].map((alike, i) =>
    leafJointPage(piece, alike, i === 0 ? "leaf-joint" : `leaf-joint-${i + 1}`, setting),
  );
}

/** Joints that draw and swing alike have this alike. */
function likeness(piece: Piece, leaf: LeafJoint): string {
  const asked = { ...plain, id: "", units: "mm", scale: 1, shown: wholeHinge(leaf) } as const;
  const { strokes } = leafSection(piece, leaf, { ...asked, sizes: "none" });
  const says = [leaf.hinge.name, leaf.mounting, leaf.rule?.cutters, hangsAt(leaf).value.toFixed(3)];
  return `${rounded(strokes)} ${says.join(" ")}`;
}

const rounded = (strokes: Drawing["strokes"]): string =>
  JSON.stringify(strokes, (_, value) =>
    typeof value === "number" ? Math.round(value * 1e6) / 1e6 + 0 : value,
  );

const plain = { swing: deg(0) } as const;

function leafJointPage(
  piece: Piece,
  alike: readonly LeafJoint[],
  id: string,
  setting: Setting,
): Page {
  const [leaf] = alike;
  if (!leaf) throw new Error("a sheet of a leaf's joint has a leaf");
  const field = fieldOf(setting.paper);
  const column: Area = { ...field, left: field.right - COLUMN.wide };
  const drawn: Area = { ...field, right: column.left - COLUMN.gutter };
  const names = alike.map(({ leaf: key }) => piece.parts.find((part) => part.key === key)?.name);
  const head = lettering(
    [field.left, field.top - sizes.heading * 1.15],
    `${leaf.rule ? "Rule joint" : "Joint"} of the ${names.join(" and the ")}`,
    { size: sizes.heading, isBold: true },
  );
  const whole = trueSize(piece, leaf, id, { ...drawn, top: drawn.top - 8 }, setting);
  const large = enlarged(piece, leaf, id, { ...drawn, top: whole.below - 5 }, setting);
  const words = wordsOf(piece, leaf, column, setting);
  return {
    id,
    shows: "Joint of the leaves in section",
    scale: large.scale === 1 ? scaleText(1) : `1:1, ${scaleText(large.scale)}`,
    placed: [
      whole.placed,
      ...large.placed,
      writing(`${id}-words`, [head, whole.name, ...large.texts, ...words.texts], words.rules),
    ],
  };
}

const name = (says: string, { left, top }: Area): Lettering =>
  lettering([left, top - sizes.body], says, { size: sizes.body, isBold: true });

/** The whole hinge at true size, and the leaf dashed where it hangs. */
function trueSize(piece: Piece, leaf: LeafJoint, id: string, area: Area, setting: Setting) {
  const whole = wholeHinge(leaf);
  const room = area.right - area.left - 16;
  const shown = { ...whole, leaf: mm(Math.min(whole.leaf, room - whole.top)) };
  const cove = leaf.rule ? sized(leaf.rule.cove) : 0;
  const drawing: Drawing = {
    ...leafSection(piece, leaf, {
      ...{ ...plain, id: `${id}-true`, units: setting.units, scale: 1, shown },
      ...{ sizes: "thickness" },
      ghost: { swing: hangsAt(leaf).value, leaf: mm(cove + HANGING) },
    }),
    isFine: true,
  };
  const box = paperBox(drawing);
  const placed: Placed = { drawing, at: [area.left - box.left, area.top - NAME - box.top] };
  const says = "True size, through the middle of a hinge; dashed, the leaf where it hangs";
  return { placed, name: name(says, area), below: area.top - NAME - (box.top - box.bottom) };
}

/** What lies round the pin, as large as its area lets it, with the region the pin may stand in. */
function enlarged(piece: Piece, leaf: LeafJoint, id: string, area: Area, { units }: Setting) {
  const { rule, thickness } = leaf;
  const round = rule ? sized(rule.radius) : sized(thickness);
  const cove = rule ? sized(rule.cove) : sized(thickness) / 2;
  const asked = (scale: number): LeafSectionAsked => ({
    ...{ ...plain, id: `${id}-large`, units, scale, sizes: "all" },
    shown: { top: mm(Math.max(0.9 * round, 36 * scale)), leaf: mm(cove + 9) },
  });
  const drawn = (scale: number) => {
    const drawing = leafSection(piece, leaf, asked(scale));
    return { drawing, box: paperBox(drawing) };
  };
  const [wide, high] = [area.right - area.left, area.top - area.bottom - NAME];
  const scale = enlargedFor((s) => {
    const { box } = drawn(s);
    return box.right - box.left <= wide && box.top - box.bottom <= high;
  });
  const { drawing, box } = drawn(scale);
  const at = [area.left - box.left, area.top - NAME - box.top] as const;
  const [region, tight] = [pinRegion(leaf), tightPlace(leaf)];
  const drawings = [
    drawing,
    ...(region ? [regionDrawing(`${id}-region`, region, scale)] : []),
    ...(tight ? [tightDrawing(`${id}-tight`, leaf, tight, scale)] : []),
  ];
  const says = `Enlarged, ${scaleText(scale)}`;
  const after = area.left + textLength(says, sizes.body, true) + 4;
  return {
    scale,
    placed: drawings.map((one): Placed => ({ drawing: one, at })),
    texts: [
      name(says, area),
      lettering([after, area.top - sizes.body], legendOf(region !== undefined, tight), {
        ...{ size: sizes.small, tone: "graphite" },
      }),
    ],
  };
}

/** What the thin line and the ring mean. */
function legendOf(hasRegion: boolean, tight: ReturnType<typeof tightPlace>): string {
  const line = hasRegion ? ["thin line round the pin: where it may stand"] : [];
  if (!tight) return line.join("");
  return [...line, `ring: ${tight.isBinding ? "where it binds" : "where it is tightest"}`].join(
    "; ",
  );
}

/** Figures in rows, then what to mind. */
function wordsOf(piece: Piece, leaf: LeafJoint, area: Area, { units }: Setting) {
  const figures = figureRows(leafJointFigures(piece, leaf, units), area);
  const cautions = cautionRows(
    // The first is for whatever turns; the others are for mouldings.
    (leaf.rule ? ruleJointCautions : ruleJointCautions.slice(0, 1)).map(({ says }) => says),
    { ...area, top: figures.below },
  );
  return { texts: [...figures.texts, ...cautions.texts], rules: figures.rules };
}
