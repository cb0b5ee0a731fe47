import type { Mm } from "../../units/index.ts";
import type { JointSizes } from "./settle-joint.ts";

/** A joint's sizes as plain numbers, under the letters of its formulas [mm]. */
export type PlainSizes = {
  readonly t: number;
  readonly g: number;
  readonly dx: number;
  /** pin over the underside */
  readonly h: number;
  /** the hinge's barrel */
  readonly barrel: number;
  /** pin over the plates' outer face */
  readonly e: number;
  readonly plate: number;
  readonly rule?: {
    readonly R: number;
    readonly Rc: number;
    readonly fillet: number;
    readonly lip: number;
    readonly bevel: number;
    /** centre of the round-over over the underside */
    readonly b: number;
  };
};

type Sized = Mm | { readonly value: Mm };
/**
 * @param size  worked or plain [mm]
 */
const of = (size: Sized): number => (typeof size === "object" ? size.value : size);

/** A joint's sizes without their reasoning. */
export function plainSizes(joint: JointSizes): PlainSizes {
  const { hinge, rule } = joint;
  const t = of(joint.thickness);
  const fillet = rule ? of(rule.fillet) : 0;
  return {
    t,
    g: of(joint.setOut),
    dx: of(joint.pinOut),
    h: of(joint.pinHeight),
    barrel: hinge.barrel,
    e: hinge.pinOverFace,
    plate: hinge.plate,
    ...(rule
      ? {
          rule: {
            R: of(rule.radius),
            Rc: of(rule.cove),
            fillet,
            lip: fillet - of(rule.crownGap),
            bevel: of(rule.bevel),
            b: t - of(rule.radius) - fillet,
          },
        }
      : {}),
  };
}

/** How far a fixed top goes on under its leaf [mm]. */
export const tongueOf = (joint: JointSizes): number => plainSizes(joint).rule?.R ?? 0;

/** Height of a cove's centre over the underside [mm]. */
export const coveHeight = ({ t, rule }: PlainSizes): number =>
  rule ? t - rule.lip - rule.Rc : Number.POSITIVE_INFINITY;
