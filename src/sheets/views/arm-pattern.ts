import { into, outOf } from "../../geometry/index.ts";
import type { ArmPivot, Feature, Part, Piece } from "../../piece/index.ts";
import { deg, mm } from "../../units/index.ts";
import type { Point, Stroke } from "../drawing.ts";
import { sized } from "./sized.ts";

/** How much of its rail is shown beside an arm [mm]. */
const STUB = 10;

/** An arm in its rail, as lines in its own x; from above the rail's outer face lies below. */
export type ArmPattern = {
  readonly length: number;
  readonly thickness: number;
  readonly height: number;
  /** of the pivot, along the arm from its tail and across it from the inner face [mm] */
  readonly pivot: { readonly x: number; readonly z: number };
  /** with what of the rail is shown [mm] */
  readonly from: number;
  readonly to: number;
  readonly above: Lines;
  /** from outside; its lowest is the rail's cut floor under the arm */
  readonly side: Lines;
  /** of the opening's floor, below nought, and of the rail's upper edge, over the arm's lower edge [mm] */
  readonly floor: number;
  readonly edge: number;
  readonly slants: Slants;
  readonly bore: Of<"bore">;
  /** of the rail, for the pivot's screw */
  readonly lead: Of<"bore"> | undefined;
};

type Lines = {
  readonly visible: readonly Stroke[];
  readonly hidden: readonly Stroke[];
  readonly centre: readonly Stroke[];
};

const find = ({ parts }: Pick<Piece, "parts">, key: string): Part => {
  const part = parts.find((one) => one.key === key);
  if (!part) throw new Error(`a pivot names ${key}, which is no part`);
  return part;
};

const line = (from: Point, to: Point): Stroke => ({ shape: "line", from, to });
const path = (...points: readonly Point[]): Stroke => ({ shape: "path", points, isClosed: true });

type Of<F extends Feature["feature"]> = Extract<Feature, { readonly feature: F }>;

/** An arm's pattern as its features and its rail's have it, the arm in. */
export function armPattern(piece: Pick<Piece, "parts">, pivot: ArmPivot): ArmPattern {
  const [arm, rail] = [find(piece, pivot.arm), find(piece, pivot.rail)];
  const { length, width: height, thickness } = arm.blank;
  const bore = arm.features.find((f): f is Of<"bore"> => f.feature === "bore");
  if (!bore) throw new Error(`${arm.name} has no pivot`);
  const [x, , z] = bore.from;
  // The mirrored arm counts from its other end; its pattern is the one that is drawn.
  const toArm = (along: number, across: number) =>
    into(arm.pose, outOf(rail.pose, [along, 0, across]))[0];
  const cut = cutOver(arm, rail, toArm);
  const ends = cut
    ? { show: cut.show.map((n) => toArm(n, thickness)), back: cut.back.map((n) => toArm(n, 0)) }
    : { show: [0, length], back: [0, length] };
  const low = (list: readonly number[]) => Math.min(...list);
  const high = (list: readonly number[]) => Math.max(...list);
  const lift = pivot.washers.reduce((sum, one) => sum + one, 0);
  const opening = sized(pivot.opening);
  const from = Math.min(low(ends.show), low(ends.back)) - STUB;
  const to = Math.max(high(ends.show), high(ends.back)) + STUB;
  const shape = { length, thickness, height, pivot: { x, z }, from, to };
  const slants = slantsOf(arm);
  const spans = { floor: -lift, edge: opening - lift };
  const lead = leadOf(rail, toArm, x);
  return {
    ...{ ...shape, ...spans, slants, bore, lead },
    above: fromAbove(shape, slants, ends, bore),
    side: fromSide(shape, slants, ends, bore, { ...spans, lead, pivot }),
  };
}

/** The rail's opening in which an arm lies. */
function cutOver(
  { blank }: Part,
  rail: Part,
  toArm: (along: number, across: number) => number,
): Of<"arm-cut"> | undefined {
  const middle = blank.length / 2;
  return rail.features.find((f): f is Of<"arm-cut"> => {
    if (f.feature !== "arm-cut") return false;
    const ends = f.show.map((n) => toArm(n, 0));
    return Math.min(...ends) < middle && Math.max(...ends) > middle;
  });
}

/** How deep below the opening's floor the pivot's lead hole goes. */
function leadOf(
  rail: Part,
  toArm: (along: number, across: number) => number,
  x: number,
): Of<"bore"> | undefined {
  return rail.features.find(
    (f): f is Of<"bore"> => f.feature === "bore" && Math.abs(toArm(f.from[0], f.from[2]) - x) < 0.5,
  );
}

/** Where the arm's ends begin at its inner and at its outer face, from the tail's farthest. */
type Slants = Readonly<Record<"left" | "right", { readonly back: number; readonly show: number }>>;

function slantsOf({ features, blank }: Part): Slants {
  const at = (end: "left" | "right") => {
    const bevel = features.find((f): f is Of<"bevel"> => f.feature === "bevel" && f.end === end);
    const run = bevel?.run ?? 0;
    const shorter = bevel?.shorter ?? "show";
    const off = (face: "show" | "back") => (face === shorter ? run : 0);
    const place = (face: "show" | "back") =>
      end === "left" ? off(face) : blank.length - off(face);
    return { back: place("back"), show: place("show") };
  };
  return { left: at("left"), right: at("right") };
}

type Shape = Pick<ArmPattern, "length" | "thickness" | "height" | "pivot" | "from" | "to">;
type Ends = { readonly show: readonly number[]; readonly back: readonly number[] };

const circle = (centre: Point, radius: number): Stroke => ({
  ...{ shape: "arc", centre, radius: mm(radius), from: deg(0), to: deg(360) },
});

/** So much of the rail's lead hole is shown under its opening [mm]. */
const LEAD_SHOWN = 6;
/** Past a hole's rim its middle lines run on [mm]. */
const PAST = 3;

const cross = ([x, y]: Point, half: number): readonly Stroke[] => [
  line([x - half, y], [x + half, y]),
  line([x, y - half], [x, y + half]),
];

/** From above: y is up from the outer face, which lies nearest to who stands before the rail. */
function fromAbove(
  { thickness, pivot, from, to }: Shape,
  { left, right }: Slants,
  ends: Ends,
  bore: Of<"bore">,
): Lines {
  const centre: Point = [pivot.x, thickness - pivot.z];
  const [show, back] = [sorted(ends.show), sorted(ends.back)];
  const stub = (x: number, i: 0 | 1): readonly Stroke[] => [
    line([x, 0], [show[i], 0]),
    line([show[i], 0], [back[i], thickness]),
    line([back[i], thickness], [x, thickness]),
  ];
  return {
    visible: [
      path([left.show, 0], [right.show, 0], [right.back, thickness], [left.back, thickness]),
      ...stub(from, 0),
      ...stub(to, 1),
      circle(centre, bore.diameter / 2),
      ...(bore.sink ? [circle(centre, bore.sink.diameter / 2)] : []),
    ],
    hidden: [],
    centre: cross(centre, (bore.sink?.diameter ?? bore.diameter) / 2 + PAST),
  };
}

const sorted = (list: readonly number[]): readonly [number, number] => [
  Math.min(...list),
  Math.max(...list),
];

type Under = {
  readonly floor: number;
  readonly edge: number;
  readonly lead: Of<"bore"> | undefined;
  readonly pivot: ArmPivot;
};

/** From outside: y is up from the arm's lower edge. */
function fromSide(
  { height, pivot: { x }, from, to }: Shape,
  { left, right }: Slants,
  ends: Ends,
  bore: Of<"bore">,
  { floor, edge, lead, pivot }: Under,
): Lines {
  const show = sorted(ends.show);
  const [hole, sink] = [bore.diameter / 2, bore.sink];
  const under = lead?.diameter ?? 0;
  const low = floor - Math.min(lead?.depth ?? 0, LEAD_SHOWN);
  const washer = (sink?.diameter ?? 2 * bore.diameter) / 2;
  const foot = (n: number) => pivot.washers.slice(0, n).reduce((sum, one) => sum - one, 0);
  return {
    visible: [
      path([left.show, 0], [right.show, 0], [right.show, height], [left.show, height]),
      line([from, edge], [show[0], edge]),
      line([show[0], edge], [show[0], floor]),
      line([show[0], floor], [show[1], floor]),
      line([show[1], floor], [show[1], edge]),
      line([show[1], edge], [to, edge]),
      ...pivot.washers.flatMap((_, i): readonly Stroke[] => {
        const [above, below] = [foot(i), foot(i + 1)];
        return [
          line([x - washer, above], [x - washer, below]),
          line([x + washer, above], [x + washer, below]),
          line([x - washer, below], [x + washer, below]),
        ];
      }),
    ],
    hidden: [
      // The tail's longer back lies behind the rail, and the reaching end's shorter one behind the arm.
      ...(left.back < left.show
        ? [
            line([left.back, 0], [left.back, height]),
            line([left.back, 0], [left.show, 0]),
            line([left.back, height], [left.show, height]),
          ]
        : []),
      ...(right.back < right.show ? [line([right.back, 0], [right.back, height])] : []),
      ...(sink
        ? [
            line([x - sink.diameter / 2, height], [x - hole, height - sink.depth]),
            line([x + sink.diameter / 2, height], [x + hole, height - sink.depth]),
          ]
        : []),
      ...[-1, 1].map((way) =>
        line([x + way * hole, 0], [x + way * hole, height - (sink?.depth ?? 0)]),
      ),
      ...(lead
        ? [-1, 1].map((way) => line([x + (way * under) / 2, floor], [x + (way * under) / 2, low]))
        : []),
    ],
    centre: [line([x, low - PAST], [x, height + PAST])],
  };
}
