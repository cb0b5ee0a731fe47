import type { Piece } from "../piece/index.ts";
import type { Shop } from "../shop/index.ts";
import type { Finding } from "../worked/index.ts";
import { alikeLeaves } from "./leaf-alike.ts";
import { leafCutters } from "./leaf-cutters.ts";
import { leafDown } from "./leaf-down.ts";
import { leafHinge } from "./leaf-hinge.ts";
import { hingePlaces } from "./leaf-hinge-places.ts";
import { leafErrors, leafPin } from "./leaf-made.ts";
import { leafMounting } from "./leaf-mounting.ts";
import { leafRests } from "./leaf-rests.ts";
import { squareLeaves } from "./leaf-square.ts";
import { leafSwings } from "./leaf-swings.ts";
import { leafYear } from "./leaf-year.ts";

/** Everything that is judged of how leaves join the top: equal joints once. */
export const leafJoints = (piece: Piece, shop: Shop): readonly Finding[] => [
  ...alikeLeaves(piece).flatMap((alike) => [
    ...leafSwings(alike),
    ...squareLeaves(alike, shop),
    ...leafRests(alike),
    ...leafDown(alike),
    ...leafMounting(alike),
    ...leafHinge(alike),
    ...leafYear(alike, piece),
    ...leafPin(alike, shop),
    ...leafErrors(alike, shop),
    ...leafCutters(alike, shop),
  ]),
  ...hingePlaces(piece),
];
