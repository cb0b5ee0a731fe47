import { outOf, type PlanPoint, type Vec3 } from "../geometry/index.ts";
import { FIRM_LEAN, LIGHT_LEAN, tippingLoadAt } from "../mechanics/index.ts";
import { mirrored, type Part, type Piece, type Weighing } from "../piece/index.ts";
import { mm } from "../units/index.ts";
import { cite, type Finding, Problem, published, type Worked } from "../worked/index.ts";

/** How far in from the top's edge the load stands [mm]. */
const INSET = 50;
const ISO = published(
  "ISO 7172:1988",
  "clause 5: the load acts 50 mm in from the edge",
  "secondary",
);

/** The foot's four corners on the floor, what its tapers have taken off left out. */
function footOf(part: Part): readonly PlanPoint[] {
  const { length, width, thickness } = part.blank;
  const gone = (face: string) =>
    part.features.reduce(
      (sum, f) => (f.feature === "taper" && f.face === face ? sum + f.depth : sum),
      0,
    );
  const [y0, y1] = [gone("lower"), width - gone("upper")];
  const [z0, z1] = [gone("back"), thickness - gone("show")];
  const corners: readonly Vec3[] = [
    [length, y0, z0],
    [length, y1, z0],
    [length, y1, z1],
    [length, y0, z1],
  ];
  return corners.map((corner) => {
    const [x, y] = outOf(part.pose, mirrored(part, corner));
    return { x: mm(x), y: mm(y) };
  });
}

/** The load that tips the piece when somebody presses on the middle of an edge of its top. */
export function standsFirm({ parts }: Piece, { mass, centre }: Weighing): readonly Finding[] {
  const top = parts.find((part) => part.role === "top");
  const feet = parts.filter((part) => part.role === "leg").flatMap(footOf);
  if (!top || feet.length < 3) return [];
  const [halfX, halfY] = [top.blank.length / 2 - INSET, top.blank.width / 2 - INSET];
  const places = [
    { x: mm(0), y: mm(-halfY) },
    { x: mm(0), y: mm(halfY) },
    { x: mm(-halfX), y: mm(0) },
    { x: mm(halfX), y: mm(0) },
  ];
  const stance = { feet, mass, centre: { x: mm(centre[0]), y: mm(centre[1]) } };
  try {
    const loads = places.flatMap((place) => tippingLoadAt(stance, place) ?? []);
    return [judged(loads.sort((a, b) => a.value - b.value)[0])];
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    const says = "Its centre of gravity lies outside its feet: it falls by itself.";
    return [finding("fails", says, undefined)];
  }
}

/** No force that must be borne was seen, and our own measure only sorts. */
function judged(weakest: Worked | undefined): Finding {
  if (!weakest)
    return finding("ok", "A load on any edge of the top lies within the feet.", undefined);
  if (weakest.value >= FIRM_LEAN)
    return finding(
      "not-judged",
      "Pressed on the edge it stands to a firm lean, by our own reckoning; what a standard asks for was not seen.",
      weakest,
    );
  return weakest.value >= LIGHT_LEAN
    ? finding("watch", "Pressed on the edge it tips under less than a firm lean.", weakest)
    : finding(
        "watch",
        "A light lean on the edge tips it: less overhang, or more weight low down, would hold it.",
        weakest,
      );
}

const finding = (
  verdict: Finding["verdict"],
  says: string,
  worked: Worked | undefined,
): Finding => ({
  id: "stands/edge",
  group: "Stands firm",
  verdict,
  says,
  why: worked
    ? [
        {
          ...worked,
          notes: [...worked.notes, `the load stands 50 mm in from the edge: ${cite(ISO)}`],
        },
      ]
    : [],
  lights: [],
});
