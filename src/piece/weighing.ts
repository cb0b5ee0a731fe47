import { outOf, plus, times, type Vec3 } from "../geometry/index.ts";
import { cubicM, type Kg, type KgPerM3, kg } from "../units/index.ts";
import { density, gravityAt, mass, typicalGravityAt } from "../wood/index.ts";
import { derived, given, type Worked, work } from "../worked/index.ts";
import { type Key, mirrored, type Part } from "./part.ts";
import type { Piece } from "./piece.ts";
import { bulkOfPart } from "./volume.ts";

/** What a part weighs and where its middle lies in the piece. */
type Weighed = {
  /** [kg] */
  readonly mass: Worked<Kg>;
  /** centre of gravity, in the piece */
  readonly centre: Vec3;
};

export type Weighing = {
  readonly parts: Readonly<Record<Key, Weighed>>;
  /** of all parts, without screws [kg] */
  readonly mass: Worked<Kg>;
  readonly centre: Vec3;
};

/** Density of the piece's timber at the moisture it is made at. */
function densityOf({ species, seasons }: Pick<Piece, "species" | "seasons">): Worked<KgPerM3> {
  const gravity = species.volumeShrinkage
    ? gravityAt(species.basicGravity, species.volumeShrinkage, seasons.made)
    : typicalGravityAt(species.basicGravity, seasons.made);
  return density(gravity, seasons.made);
}

/**
 * Mass and centre of gravity of every part and of all, from volumes in closed form.
 *
 * @param piece  its parts, timber and seasons
 * @param bulkOf  volume and moment of a part; given where they are kept from before
 */
export function weigh(piece: Piece, bulkOf: typeof bulkOfPart = bulkOfPart): Weighing {
  const dense = densityOf(piece);
  const weighed = piece.parts.map((part) => [part, weighPart(part, dense, bulkOf)] as const);
  const total = weighed.reduce((sum, [, one]) => sum + one.mass.value, 0);
  const moment = weighed.reduce<Vec3>(
    (sum, [, one]) => plus(sum, times(one.centre, one.mass.value)),
    [0, 0, 0],
  );
  const volume = weighed.reduce((sum, [, one]) => sum + (one.mass.inputs.V?.value ?? 0), 0);
  return {
    parts: Object.fromEntries(weighed.map(([part, one]) => [part.key, one])),
    mass: work({
      says: "mass of the piece, without screws",
      unit: "kg",
      formula: "m = V·ρ",
      inputs: {
        V: given(
          "volume of all parts",
          cubicM(volume),
          "m³",
          derived("geometry of their features"),
        ),
        ρ: dense,
      },
      value: kg(total),
      source: derived("arithmetic"),
    }),
    centre: times(moment, 1 / total),
  };
}

function weighPart(part: Part, dense: Worked<KgPerM3>, bulkOf: typeof bulkOfPart): Weighed {
  const { volume, moment } = bulkOf(part);
  const V = given(
    `volume, ${part.name}`,
    cubicM(volume * 1e-9),
    "m³",
    derived("geometry of its features"),
  );
  return {
    mass: mass(V, dense),
    centre: outOf(part.pose, mirrored(part, times(moment, 1 / volume))),
  };
}
