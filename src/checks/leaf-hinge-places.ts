import type { Piece } from "../piece/index.ts";
import { printQuantity } from "../units/index.ts";
import type { Finding } from "../worked/index.ts";
import { hingesUnderArms } from "./leaf-hinge-arms.ts";
import { pastEnd, tooClose } from "./leaf-hinge-line.ts";
import type { HingePlace } from "./leaf-hinge-place.ts";
import { besideLeads, underTop } from "./leaf-hinge-seat.ts";
import { told } from "./told.ts";

const GROUP = "Joinery";
/** Things that lie this little over each other only touch [mm]. */
const TOUCH = 1e-6;

/** Whether the hinges lie where nothing is in their way: one finding for each thing that is. */
export function hingePlaces(piece: Piece): readonly Finding[] {
  const joints = piece.joints.flatMap((joint) => (joint.kind === "leaf" ? [joint] : []));
  if (joints.length === 0) return [];
  const ends = joints.map((joint) => pastEnd(piece, joint));
  const found = [
    ...worstOf("ends", ends, piece),
    ...worstOf("apart", joints.flatMap(tooClose), piece),
    ...worstOf(
      "seat",
      joints.flatMap((joint) => underTop(piece, joint)),
      piece,
    ),
    ...worstOf(
      "fastenings",
      joints.flatMap((joint) => besideLeads(piece, joint)),
      piece,
    ),
    ...hingesUnderArms(piece),
  ];
  if (found.length > 0) return found;
  const [least] = [...ends].sort((a, b) => a.margin.value - b.margin.value);
  return [
    told({
      ...{ id: "leaf/hinge-places", group: GROUP, verdict: "ok", margin: least?.margin },
      says: "The hinges lie clear of each other, of the leaf’s ends, and of arms, rails and fastenings.",
      lights: joints.map(({ key }) => key),
    }),
  ];
}

function worstOf(name: string, places: readonly HingePlace[], piece: Piece): readonly Finding[] {
  const bad = places
    .filter(({ margin }) => margin.value < -TOUCH)
    .sort((a, b) => a.margin.value - b.margin.value);
  const [worst] = bad;
  if (!worst) return [];
  const { margin, verdict, measure, says } = worst;
  return [
    told({
      ...{ id: `leaf/hinge-${name}`, group: GROUP, verdict, margin },
      says: says((size) => printQuantity(size, "mm", piece.units)),
      severity: 1 - margin.value / measure,
      lights: [
        ...new Set(
          bad.flatMap(({ joint, lights = [] }) => [joint.key, joint.leaf.leaf, ...lights]),
        ),
      ],
    }),
  ];
}
