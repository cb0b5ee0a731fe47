import fc from "fast-check";
import { frameOf } from "../../src/geometry/index.ts";
import * as joinery from "../../src/joinery/index.ts";
import * as making from "../../src/making/index.ts";
import * as mechanics from "../../src/mechanics/index.ts";
import * as motion from "../../src/motion/index.ts";
import { hingeMountings, type LeafJoint } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import * as stock from "../../src/stock/index.ts";
import {
  coverage,
  cubicM,
  deg,
  kgPerM3,
  type Mm,
  mcPct,
  mm,
  mm4,
  newtonMm,
  newtonsPerMm,
  perPct,
  ratio,
  rpm,
  squareM,
} from "../../src/units/index.ts";
import * as wood from "../../src/wood/index.ts";
import { isWorked, type Known, Problem, type Worked } from "../../src/worked/index.ts";
import { anyJoint } from "../kit/rule-joints.ts";
import { between, some } from "../kit/sizes.ts";

type Made = Worked | undefined;

/** A function called with random arguments; undefined where there is no answer, or none is due. */
function calls<A extends readonly unknown[]>(
  f: (...args: A) => Made,
  ...args: { readonly [K in keyof A]: fc.Arbitrary<A[K]> }
): fc.Arbitrary<Made> {
  return fc.tuple(...(args as unknown as readonly fc.Arbitrary<unknown>[])).map((values) => {
    try {
      return f(...(values as unknown as A));
    } catch (problem) {
      if (!(problem instanceof Problem)) throw problem;
      return undefined;
    }
  });
}

const { length, moisture, coefficient, shrinkage, gravity, angle, strength, modulus } = some;
const { load, mass, temperature, humidity, pieces, species } = some;
const section = {
  width: length,
  pithDistance: length,
  radial: coefficient,
  tangential: coefficient,
};
const board = fc.record<wood.BoardSection>({ ...section, from: moisture, to: moisture });
const pull = fc.record({ gravity, diameter: between(1, 12).map(mm), length });
const softwood = fc.boolean();
const fastener = fc.constantFrom("screw" as const, "nail" as const, "lag" as const);
const thread = fc.constantFrom("cut" as const, "rolled" as const);
const number = fc.constantFrom(...wood.screwNumbers("cut"));
const screw = fc.constantFrom(...wood.screwNumbers("cut")).map((n) => wood.screwNumbered(n, "cut"));
const turning = between(20, 30).map(mcPct);
const section4 = between(10, 1e9).map(mm4);
const perLength = between(1e-4, 100).map(newtonsPerMm);
const bending = between(1, 1e8).map(newtonMm);
const blank = between(10, 500).chain((s) =>
  fc.record<making.OctagonBlank>({
    square: fc.constant(mm(s)),
    acrossFlats: between(s / Math.SQRT2, s).map(mm),
  }),
);
const swing = between(3, 1000).map(mm);
const point = fc.record({ x: between(-900, 900).map(mm), y: between(-900, 900).map(mm) });
const at = (x: number, y: number) => ({ x: mm(x), y: mm(y) });
const stance = fc.record<mechanics.Stance>({
  feet: fc.constant([at(-400, -300), at(400, -300), at(0, 350)]),
  mass,
  centre: fc.constant(at(0, 0)),
});

/** Some joints have their lip cut short, as older sections do. */
const joint = fc
  .tuple(anyJoint, fc.option(between(0.01, 1).map(mm), { nil: undefined }))
  .map(([section, lipTrim]) => (lipTrim ? { ...section, lipTrim } : section));
const small = between(0, 10).map(mm);
const arm = fc.record<motion.SwingArm>({
  reach: between(100, 400).map(mm),
  tail: between(60, 300).map(mm),
  thickness: between(12, 40).map(mm),
  offset: between(-5, 5).map(mm),
  angle: between(0, 50).map(deg),
});
const hungLeaf = fc
  .record({ joint, width: between(90, 500).map(mm), isRule: fc.boolean() })
  .map(({ joint: section, width, isRule }): LeafJoint => {
    const of = (size: Known<Mm>) => (typeof size === "object" ? size.value : size);
    const { radius, cove, crownGap, bevel, thickness, centreHeight, setOut, pinOut } = section;
    const [hinge] = demoShop.leafHinges;
    if (!hinge) throw new Error("the demo shop has no hinge");
    const fillet = mm(of(thickness) - of(radius) - of(centreHeight));
    return {
      ...{ top: "top", leaf: "leaf", motion: "motion", hinge, mounting: "let in", hinges: [] },
      section: frameOf([0, 0, 0], [1, 0, 0], [0, 1, 0]),
      ...(isRule ? { rule: { radius, cove, fillet, crownGap, bevel, cutters: "a pair" } } : {}),
      ...{ thickness, setOut, pinOut, leafWidth: width },
      pinHeight: mm(of(centreHeight) + of(section.pinUp)),
    };
  });
const squareEdges = fc.record({
  thickness: between(12, 40).map(mm),
  setOut: between(0, 2).map(mm),
  pinOut: between(-1, 3).map(mm),
  pinHeight: between(-3, 6).map(mm),
});
const armEnd = fc.constantFrom(...motion.armEnds);
const hingeScrews = fc.record({ short: between(5, 40).map(mm), long: between(20, 80).map(mm) });
const swellsBy = between(0.0005, 0.006).map(perPct);

/** A random call of every function that gives a worked value, by room and name. */
export const made: Readonly<Record<string, Readonly<Record<string, fc.Arbitrary<Made>>>>> = {
  wood: {
    boardCup: calls(wood.boardCup, board),
    faceWidthChange: calls(wood.faceWidthChange, board),
    ringRadius: calls(wood.ringRadius, length, length),
    pithBelow: calls(wood.pithBelow, length, length),
    equilibriumMoisture: calls(wood.equilibriumMoisture, temperature, humidity),
    humidityFor: calls(wood.humidityFor, temperature, moisture),
    lateralLoad: calls(wood.lateralLoad, fastener, species, length),
    leadHole: calls(wood.leadHole, length, softwood),
    nailWithdrawal: calls(wood.nailWithdrawal, pull),
    screwWithdrawal: calls(wood.screwWithdrawal, pull),
    screwWithdrawalAllowed: calls(wood.screwWithdrawalAllowed, pull),
    shankHole: calls(wood.shankHole, screw, softwood),
    density: calls(wood.density, gravity, moisture),
    gravityAt: calls(wood.gravityAt, gravity, shrinkage, moisture),
    greatestMoisture: calls(wood.greatestMoisture, gravity),
    mass: calls(wood.mass, between(0, 2).map(cubicM), between(100, 1200).map(kgPerM3)),
    typicalGravityAt: calls(wood.typicalGravityAt, gravity, moisture),
    coefficientAt: calls(wood.coefficientAt, coefficient, coefficient, angle),
    coefficientFromShrinkage: calls(wood.coefficientFromShrinkage, shrinkage),
    outOfSquare: calls(wood.outOfSquare, coefficient, coefficient, angle, moisture, moisture),
    shrinkageTo: calls(wood.shrinkageTo, shrinkage, between(0, 60).map(mcPct)),
    widthChange: calls(wood.widthChange, length, coefficient, moisture, moisture),
    widthChangeByShrinkage: calls(
      wood.widthChangeByShrinkage,
      length,
      shrinkage,
      moisture,
      moisture,
    ),
    modulusAlong: calls(wood.modulusAlong, modulus),
    modulusByShare: calls(wood.modulusByShare, modulus, some.share),
    stiffnessAcross: calls(
      wood.stiffnessAcross,
      species,
      fc.constantFrom("flat" as const, "rift" as const, "quarter" as const),
    ),
    strengthAt: calls(wood.strengthAt, strength, strength, turning, moisture),
    strengthAtAngle: calls(wood.strengthAtAngle, strength, strength, angle),
    strengthByTrend: calls(
      wood.strengthByTrend,
      modulus,
      fc.constantFrom("stiffness" as const, "bending" as const),
      between(4, 20).map(mcPct),
    ),
    screwNumbered: calls(
      (n: string, t: wood.Thread) => {
        const { root } = wood.screwNumbered(n, t);
        return isWorked(root) ? root : undefined;
      },
      number,
      thread,
    ),
  },
  mechanics: {
    bendingStress: calls(mechanics.bendingStress, bending, length, section4),
    edgeReach: calls(mechanics.edgeReach, length, length, length),
    footHolding: calls(mechanics.footHolding, length, length),
    droopOfArm: calls(mechanics.droopOfArm, load, length, modulus, section4),
    edgeDrop: calls(mechanics.edgeDrop, small, length, length),
    edgeSagUnderPoint: calls(mechanics.edgeSagUnderPoint, load, length, length, modulus, section4),
    edgeSagUnderSpread: calls(
      mechanics.edgeSagUnderSpread,
      perLength,
      length,
      length,
      modulus,
      section4,
    ),
    hingeReaction: calls(mechanics.hingeReaction, perLength, load, length, length),
    loadOnSupport: calls(mechanics.loadOnSupport, perLength, load, length, length),
    loadPerArm: calls(mechanics.loadPerArm, load, pieces),
    momentUnderPoint: calls(mechanics.momentUnderPoint, load, length),
    momentUnderSpread: calls(mechanics.momentUnderSpread, perLength, length),
    sagInTheLongRun: calls(mechanics.sagInTheLongRun, length, some.share),
    sagUnderPoint: calls(mechanics.sagUnderPoint, load, length, modulus, section4),
    sagUnderSpread: calls(mechanics.sagUnderSpread, perLength, length, modulus, section4),
    secondMoment: calls(mechanics.secondMoment, length, length),
    spreadLoad: calls(mechanics.spreadLoad, load, length),
    tippingLoad: calls(mechanics.tippingLoad, mass, length, length),
    tippingLoadAt: calls(mechanics.tippingLoadAt, stance, point),
    tippingPush: calls(mechanics.tippingPush, mass, length, length),
  },
  stock: {
    boardFeetOf: calls(stock.boardFeetOf, length, length, length, pieces),
    boardVolume: calls(stock.boardVolume, length, length, length, pieces),
    countedThickness: calls(stock.countedThickness, length),
    surfaceMeasure: calls(stock.surfaceMeasure, length, length),
    tallyBoardFeet: calls(stock.tallyBoardFeet, length, some.share, pieces),
  },
  joinery: {
    betweenLegs: calls(joinery.betweenLegs, length, length, length),
    buttedTenon: calls(joinery.buttedTenon, length, length, length, length, length),
    haunchLength: calls(joinery.haunchLength, length),
    mitredTenon: calls(joinery.mitredTenon, length, length, length, length),
    mortiseWidth: calls(joinery.mortiseWidth, length, fc.array(length, { minLength: 1 })),
    outerWall: calls(joinery.outerWall, length, length, length),
    tenonThickness: calls(joinery.tenonThickness, length, length),
    upperShoulder: calls(joinery.upperShoulder, length),
    buttonGap: calls(joinery.buttonGap, length),
    seasonalMove: calls(joinery.seasonalMove, length, coefficient, moisture, moisture, moisture),
    slotDepth: calls(joinery.slotDepth, length, length, length),
    slotTravel: calls(joinery.slotTravel, length),
    tongueLength: calls(joinery.tongueLength, length),
  },
  motion: {
    armDroop: calls(motion.armDroop, small, small),
    armProud: calls(motion.armProud, small, small, small),
    barrelGroove: calls(motion.barrelGroove, small, small, small),
    bevelNeeded: calls(motion.bevelNeeded, joint),
    bornePart: calls(motion.bornePart, length, length, length),
    centreHeight: calls(motion.centreHeight, length, small, small),
    clearanceNeeded: calls(
      motion.clearanceNeeded,
      between(5, 20).map(mm),
      between(-3, 3).map(mm),
      between(-3, 3).map(mm),
    ),
    coveClearance: calls(motion.coveClearance, joint),
    coveGap: calls(motion.coveGap, joint, angle, angle),
    droopFromPlay: calls(motion.droopFromPlay, length, small, small, length),
    droopUntilTail: calls(motion.droopUntilTail, length, length, small),
    edgeDrift: calls(motion.edgeDrift, joint, between(50, 500).map(mm), length),
    farthestReach: calls(motion.farthestReach, arm),
    filletDepth: calls(motion.filletDepth, length, small, small),
    firstHole: calls(motion.firstHole, length, small, small),
    floorClearance: calls(motion.floorClearance, joint, length, length),
    freeAngle: calls(motion.freeAngle, arm, armEnd),
    gapFromAbove: calls(motion.gapFromAbove, joint),
    hangsInside: calls(motion.hangsInside, joint),
    highestCentre: calls(motion.highestCentre, length, between(-0.2, 1).map(mm)),
    kerfNeeded: calls(motion.kerfNeeded, arm, armEnd),
    leafCentre: calls(motion.leafCentre, length, fc.constantFrom(...motion.leafShapes)),
    lipOverlap: calls(motion.lipOverlap, joint),
    lipRise: calls(motion.lipRise, joint),
    lipThickness: calls(motion.lipThickness, joint),
    longestScrew: calls(motion.longestScrew, length, small, small),
    lowerEdgeClearance: calls(motion.lowerEdgeClearance, joint),
    lowerEdgeReach: calls(motion.lowerEdgeReach, joint),
    outerFaceDepth: calls(motion.outerFaceDepth, small, small),
    outOfLine: calls(motion.outOfLine, length, angle),
    pinAboveCentre: calls(motion.pinAboveCentre, small, small),
    pinHeight: calls(motion.pinHeight, small, small, fc.constantFrom(...hingeMountings)),
    plateRecess: calls(motion.plateRecess, small, small),
    radialClearance: calls(motion.radialClearance, length, length),
    reachBeyondRail: calls(motion.reachBeyondRail, arm),
    squareGapDown: calls(motion.squareGapDown, squareEdges),
    squareRoom: calls(motion.squareRoom, squareEdges),
    hangsAt: calls(motion.hangsAt, hungLeaf),
    restAngle: calls(motion.restAngle, joint, between(50, 500).map(mm)),
    rubStarts: calls(motion.rubStarts, joint),
    safeRadius: calls(motion.safeRadius, joint),
    seasonalClosing: calls(motion.seasonalClosing, hingeScrews, swellsBy, moisture, moisture),
    sideClearance: calls(motion.sideClearance, length, small, small),
    stopPlay: calls(motion.stopPlay, arm, armEnd, between(0, 4).map(mm)),
    sweptRadius: calls(motion.sweptRadius, length, length),
    swingPastUpright: calls(motion.swingPastUpright, length, length),
    swingsUpTo: calls(motion.swingsUpTo, joint, hingeScrews, swellsBy, moisture),
    tailForce: calls(motion.tailForce, load, length, length),
    tailInside: calls(motion.tailInside, arm),
    undersideLimit: calls(motion.undersideLimit, joint),
    undersideMargin: calls(motion.undersideMargin, joint),
    woodOverGroove: calls(motion.woodOverGroove, length, small),
  },
  making: {
    clampCoverage: calls(making.clampCoverage, length, length, length),
    clampForce: calls(making.clampForce, strength, length, length),
    clampsByFan: calls(making.clampsByFan, length, length),
    clampsByForce: calls(making.clampsByForce, load, load),
    clampsWanted: calls(making.clampsWanted, pieces, pieces),
    finishAmount: calls(
      making.finishAmount,
      between(0, 50).map(squareM),
      pieces,
      between(1, 40).map(coverage),
      shrinkage,
    ),
    panelSurface: calls(making.panelSurface, length, length, length, pieces),
    latheSpeed: calls(
      making.latheSpeed,
      swing,
      fc.constantFrom(...making.turningStages),
      between(1, 40).map(ratio),
    ),
    slenderness: calls(making.slenderness, length, length),
    speedByDiameter: calls(making.speedByDiameter, swing, fc.constantFrom(6000, 9000)),
    cornerDepth: calls(making.cornerDepth, blank),
    flatsForTurning: calls(making.flatsForTurning, length, length, length),
    fenceToBlade: calls(making.fenceToBlade, length, length),
    flatWidth: calls(making.flatWidth, length),
    octagonArea: calls(making.octagonArea, length, length),
    octagonSetOut: calls(making.octagonSetOut, blank),
    swingAfter: calls(making.swingAfter, length, length),
    swingOfSquare: calls(making.swingOfSquare, length),
    depthOfPass: calls(making.depthOfPass, length, pieces),
    rimSpeed: calls(making.rimSpeed, swing, between(500, 30000).map(rpm)),
    passLimit: calls(making.passLimit, swing, fc.boolean()),
    routerPasses: calls(making.routerPasses, between(0.1, 200).map(mm), some.length),
    routerSpeed: calls(
      making.routerSpeed,
      between(0.5, 88).map(mm),
      between(1000, 40000).map(rpm),
      fc.constantFrom("lower", "highest"),
    ),
  },
};
