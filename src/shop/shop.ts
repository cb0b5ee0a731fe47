import type { Mm } from "../units/index.ts";
import type { JointCutters, LeafHinge } from "./leaf-hardware.ts";

/** What this shop has and how it works, so far as a piece needs it. Lengths in millimetres. */
export type Shop = {
  readonly name: string;
  /** invented, for show */
  readonly isDemo: boolean;
  /** widths that a mortise can be cut to, smallest first [mm] */
  readonly chisels: readonly Mm[];
  /** added to a finished part when it is sawn out of the board [mm] */
  readonly extraLength: Mm;
  /** added to a finished width [mm] */
  readonly extraWidth: Mm;
  /** tenon thinner than its mortise, all told [mm] */
  readonly cheekClearance: Mm;
  /** mortise longer than its tenon is wide, all told [mm] */
  readonly widthClearance: Mm;
  /** mortise deeper than its tenon is long [mm] */
  readonly depthClearance: Mm;
  /** pairs of cutters for rule joints */
  readonly jointCutters: readonly JointCutters[];
  /** hinges for leaves */
  readonly leafHinges: readonly LeafHinge[];
  /** cut of the saw that frees the ends of an arm [mm] */
  readonly armKerf: Mm;
  /** cut of the saw that rips [mm] */
  readonly ripKerf: Mm;
  /** thicknesses of washers at hand, each as often as wanted [mm] */
  readonly washers: readonly Mm[];
  /** shank of the screw that an arm turns on [mm] */
  readonly pivotScrew: Mm;
  /** the hole it turns in [mm] */
  readonly pivotHole: Mm;
  /** of its countersunk head [mm] */
  readonly pivotHead: Mm;
  /** of its length [mm] */
  readonly pivotLength: Mm;
  /** how far a pin usually comes out off its place: one standard deviation [mm] */
  readonly pinError: Mm;
  /** the same for the leaf's set-out [mm] */
  readonly setOutError: Mm;
  /** the same for a moulding's radius [mm] */
  readonly cutterError: Mm;
  /** the same for a planed thickness [mm] */
  readonly thicknessError: Mm;
};
