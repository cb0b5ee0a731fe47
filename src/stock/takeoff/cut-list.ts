import type { Key, Part, Piece, Weighing } from "../../piece/index.ts";
import { shapeKey } from "../../piece/index.ts";
import type { Shop } from "../../shop/index.ts";
import {
  type BoardFeet,
  boardFeet,
  type Count,
  count,
  type Kg,
  kg,
  type Mm,
  mm,
} from "../../units/index.ts";
import type { Worked } from "../../worked/index.ts";
import { boardFeetOf, countedThickness } from "../board-measure.ts";
import { type Quarter, quarterFor, quarters } from "./thickness.ts";

/** Length along the grain, width, thickness. */
export type Size = {
  /** [mm] */
  readonly length: Mm;
  /** [mm] */
  readonly width: Mm;
  /** [mm] */
  readonly thickness: Mm;
};

/** Equal parts together, as they are got out of boards. */
export type CutRow = {
  readonly keys: readonly Key[];
  readonly marks: readonly string[];
  /** those of them that are mirrors of the others */
  readonly mirrored: readonly string[];
  readonly name: string;
  /** how many pieces of wood: strips and laminations counted each [pieces] */
  readonly pieces: number;
  readonly finished: Size;
  /** between the shoulders of its tenons, where it has one at each end [mm] */
  readonly between: Mm | undefined;
  /** of each piece of wood, as it is sawn out */
  readonly rough: Size;
  /** what it is sawn from; named by the marks of other parts where it comes out of those */
  readonly quarter: Quarter;
  /** laid one on another to make the thickness [pieces] */
  readonly layers: number;
  /** of all pieces, at their rough sizes [bd ft] */
  readonly boardFeet: Worked<BoardFeet>;
  /** of all parts, finished [kg] */
  readonly mass: Kg;
  readonly isGluedUp: boolean;
};

export type CutList = {
  readonly rows: readonly CutRow[];
  /** by thickness sold, thinnest first */
  readonly byThickness: readonly {
    readonly quarter: string;
    /** at the rough sizes [bd ft] */
    readonly boardFeet: BoardFeet;
  }[];
  /** bought things that its joints take, each with how many */
  readonly hardware: readonly {
    readonly what: string;
    /** how many [pieces] */
    readonly count: Count;
  }[];
  /** of all thicknesses [bd ft] */
  readonly boardFeet: BoardFeet;
  /** [kg] */
  readonly mass: Kg;
};

/**
 * Every part, equal ones together, with the size it is sawn out at.
 *
 * @param piece  its parts
 * @param weighing  what they weigh
 * @param shop  whose allowances are added
 */
export function cutList(piece: Piece, weighing: Weighing, shop: Shop): CutList {
  const groups = new Map<string, Part[]>();
  for (const part of piece.parts) {
    // Mirrored or not, it is sawn out alike.
    const alike = `${part.role} ${shapeKey({ ...part, isMirrored: false })}`;
    groups.set(alike, [...(groups.get(alike) ?? []), part]);
  }
  const rows = [...groups.values()].map((parts) => rowOf(parts, piece, weighing, shop));
  const feetOf = (sold: Quarter) =>
    rows
      .filter(({ quarter }) => quarter === sold)
      .reduce((sum, row) => sum + row.boardFeet.value, 0);
  return {
    rows,
    byThickness: quarters
      .filter((sold) => rows.some(({ quarter }) => quarter === sold))
      .map((sold) => ({ quarter: sold.name, boardFeet: boardFeet(feetOf(sold)) })),
    hardware: hardwareOf(piece),
    boardFeet: boardFeet(rows.reduce((sum, row) => sum + row.boardFeet.value, 0)),
    mass: weighing.mass.value,
  };
}

function rowOf(parts: readonly Part[], piece: Piece, weighing: Weighing, shop: Shop): CutRow {
  const [first] = parts;
  if (!first) throw new Error("a row of the cut list has no part");
  const { blank, strips } = first;
  const isGluedUp = strips.length > 1;
  const widest = isGluedUp ? Math.max(...strips.map((s) => s.width)) : blank.width;
  const { quarter, layers } = stockFor(blank.thickness);
  const pieces = parts.length * strips.length * layers;
  const givers = giversOf(parts, piece);
  const rough: Size = givers
    ? blank
    : {
        length: mm(blank.length + shop.extraLength),
        width: mm(widest + shop.extraWidth + (first.sawnWider ?? 0)),
        thickness: quarter.rough,
      };
  const counted = countedThickness(rough.thickness);
  return {
    keys: parts.map((p) => p.key),
    marks: parts.map((p) => p.mark),
    mirrored: parts.filter((p) => p.isMirrored !== first.isMirrored).map((p) => p.mark),
    name: rowName(parts),
    pieces,
    between: betweenShoulders(first),
    finished: isGluedUp ? { ...blank, width: mm(widest) } : blank,
    rough,
    quarter: givers ? { ...quarter, name: givers } : quarter,
    layers,
    boardFeet: boardFeetOf(counted, rough.width, rough.length, count(givers ? 0 : pieces)),
    mass: kg(parts.reduce((sum, p) => sum + (weighing.parts[p.key]?.mass.value ?? 0), 0)),
    isGluedUp,
  };
}

/** Marks of the parts that these are sawn out of; their wood is counted with those. */
function giversOf(parts: readonly Part[], piece: Piece): string | undefined {
  const keys = parts.flatMap(({ outOf }) => outOf ?? []);
  const marks = piece.parts.filter(({ key }) => keys.includes(key)).map(({ mark }) => mark);
  return marks.length > 0 ? marks.join(", ") : undefined;
}

/** A joint says what it takes as `1 wood screw …`; equal things are counted together. */
function hardwareOf({ joints }: Piece): CutList["hardware"] {
  const counts = new Map<string, number>();
  for (const taken of joints.flatMap(({ takes }) => takes)) {
    const [, number = "1", what = taken] = /^(\d+) (.*)$/.exec(taken) ?? [];
    counts.set(what, (counts.get(what) ?? 0) + Number(number));
  }
  return [...counts].map(([what, n]) => ({ what, count: count(n) }));
}

/** What a stop is set to. */
function betweenShoulders({ blank, features }: Part): Mm | undefined {
  const tenons = features.flatMap((f) => (f.feature === "tenon" ? [f] : []));
  if (new Set(tenons.map(({ end }) => end)).size < 2) return undefined;
  return mm(blank.length - tenons.reduce((sum, { length }) => sum + length, 0));
}

/** One board thick enough, or as few layers as the thickest board allows. */
function stockFor(thickness: Mm): { readonly quarter: Quarter; readonly layers: number } {
  for (let layers = 1; ; layers++) {
    const quarter = quarterFor(mm(thickness / layers));
    if (quarter) return { quarter, layers };
  }
}

const roleNames: Readonly<Record<Part["role"], readonly [one: string, many: string]>> = {
  leg: ["leg", "legs"],
  rail: ["rail", "rails"],
  top: ["top", "tops"],
  leaf: ["leaf", "leaves"],
  arm: ["arm", "arms"],
  "corner-block": ["corner block", "corner blocks"],
  button: ["button", "buttons"],
};

/** `front and back rails`; the single name where there is one. */
function rowName(parts: readonly Part[]): string {
  const [first] = parts;
  if (!first) return "";
  if (parts.length === 1) return first.strips.length > 1 ? `${first.name}, strips` : first.name;
  const [, many] = roleNames[first.role];
  const sides = first.role === "rail" ? parts.map((p) => p.name.replace(" rail", "")) : [];
  return sides.length > 0 ? `${sides.join(" and ")} ${many}` : many;
}
