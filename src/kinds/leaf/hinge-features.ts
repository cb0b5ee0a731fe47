import type { Bore, Feature, HingeRecess, KnuckleGroove } from "../../piece/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import { coveHeight, type PlainSizes, plainSizes } from "./plain-sizes.ts";
import type { JointSizes } from "./settle-joint.ts";

/** Room round a barrel, and at a plate's ends; common practice [mm]. */
export const ROOM = 0.5;
/** How far a leaf's recess is begun within what its cove takes away [mm]. */
const WITHIN = 1;
/** Of a screw's length in the wood so much is bored before. */
const BORED = 0.9;
/** Wood left over a lead hole's end at least [mm]. */
const COVER = 2;

/** Where a hinge lies on a part: its middle along the grain, and its pin and the way to its plate's end across. */
export type On = {
  /** middle along the part's x [mm] */
  readonly x: number;
  /** the visible edge's place in the part's y [mm] */
  readonly edge: number;
  /** 1 where the section's x runs with the part's y */
  readonly way: 1 | -1;
  /** of the part [mm] */
  readonly thickness: number;
  readonly name: string;
};

/** Two places across the section, as a stretch of the part's width. */
const stretch = ({ edge, way }: On, a: number, b: number): readonly [Mm, Mm] => {
  const ends = [edge + way * a, edge + way * b].sort((p, q) => p - q);
  return [mm(ends[0] ?? 0), mm(ends[1] ?? 0)];
};

const along = ({ x }: On, length: number): readonly [Mm, Mm] => [
  mm(x - length / 2 - ROOM),
  mm(x + length / 2 + ROOM),
];

/** How deep plates lie in the underside; 0 when they are laid on it. */
const recessDepth = ({ h, e, plate }: PlainSizes): number => Math.max(0, h - e + plate);

/** What a hinge asks of the fixed top: room for its barrel, its short plate's bed and screws. */
export function onTop(joint: JointSizes, on: On): readonly Feature[] {
  const s = plainSizes(joint);
  const { hinge } = joint;
  const edge = s.rule ? s.rule.R : 0;
  const inner = s.dx - Math.max(s.e, s.barrel) - ROOM;
  const outer = s.rule ? s.dx + s.barrel + ROOM : 0;
  const groove = grooveOf(s, on, along(on, hinge.length), stretch(on, inner, outer));
  const recess = recessOf(s, on, along(on, hinge.length), [s.dx - hinge.short.reach - ROOM, edge]);
  return [...groove, ...recess, ...screws(joint, on, "short", -1)];
}

/** What a hinge asks of its leaf: the long plate's bed and screws, and between square edges the barrel's room. */
export function onLeaf(joint: JointSizes, on: On): readonly Feature[] {
  const s = plainSizes(joint);
  const { hinge } = joint;
  const from = s.rule ? s.g + s.rule.Rc - (coveHeight(s) >= recessDepth(s) ? WITHIN : 0) : s.g;
  const groove = s.rule
    ? []
    : grooveOf(
        s,
        on,
        along(on, hinge.length),
        stretch(on, s.g, s.dx + Math.max(s.e, s.barrel) + ROOM),
      );
  const recess = recessOf(s, on, along(on, hinge.length), [from, s.dx + hinge.long.reach + ROOM]);
  return [...groove, ...recess, ...screws(joint, on, "long", 1)];
}

type Span = readonly [Mm, Mm];

function grooveOf(s: PlainSizes, { name }: On, x: Span, y: Span): readonly KnuckleGroove[] {
  const depth = s.h + s.barrel + ROOM;
  if (!(depth > 0)) return [];
  return [{ feature: "knuckle-groove", key: `groove-${name}`, x, y, depth: mm(depth) }];
}

function recessOf(
  s: PlainSizes,
  on: On,
  x: Span,
  [from, to]: readonly [number, number],
): readonly HingeRecess[] {
  const depth = recessDepth(s);
  if (!(depth > 0.05)) return [];
  const y = stretch(on, from, to);
  return [{ feature: "hinge-recess", key: `recess-${on.name}`, x, y, depth: mm(depth) }];
}

/** Lead holes from the plates' bed; under a cove there is no wood to bore. */
function screws(joint: JointSizes, on: On, plate: "short" | "long", out: 1 | -1): readonly Bore[] {
  const s = plainSizes(joint);
  const { hinge } = joint;
  const bed = recessDepth(s);
  const inWood = hinge.screwLength - s.plate;
  const depth = Math.min(BORED * inWood, on.thickness - bed - COVER);
  const hollow = plate === "long" && s.rule ? s.g + s.rule.Rc : Number.NEGATIVE_INFINITY;
  return hinge[plate].holes.flatMap(({ from, along: aside }, i): readonly Bore[] => {
    const at = s.dx + out * from;
    if (at - hinge.lead / 2 < hollow || !(depth > 1)) return [];
    return [
      {
        feature: "bore",
        key: `screw-${on.name}-${i + 1}`,
        from: [on.x + on.way * aside, on.edge + on.way * at, bed],
        along: [0, 0, 1],
        diameter: hinge.lead,
        depth: mm(depth),
        isThrough: false,
      },
    ];
  });
}
