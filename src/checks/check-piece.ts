import type { Piece, Weighing } from "../piece/index.ts";
import type { Shop } from "../shop/index.ts";
import type { Finding } from "../worked/index.ts";
import { armsBear } from "./arm-bears.ts";
import { armsTurn } from "./arm-turns.ts";
import { cutKept, straysKept } from "./cut-kept.ts";
import { fitsTogether } from "./fits.ts";
import { kneeRoom } from "./knees.ts";
import { leavesHang } from "./leaf-hangs.ts";
import { leafJoints } from "./leaf-joints.ts";
import { leavesSag } from "./leaf-sags.ts";
import { looseTenons, outerWalls, wideTenons } from "./mortises.ts";
import { boardsThroughYear, seasonRoom } from "./season-room.ts";
import { standsFirm } from "./stands-firm.ts";

const order: Readonly<Record<Finding["verdict"], number>> = {
  fails: 0,
  watch: 1,
  "not-judged": 2,
  ok: 3,
};

/**
 * Every judgement there is so far on a piece, worst first.
 *
 * @param weighing  what its parts weigh
 * @param shop  whose cutters, hinges and usual errors hold
 */
export const checkPiece = (piece: Piece, weighing: Weighing, shop: Shop): readonly Finding[] =>
  [
    ...cutKept(piece),
    ...fitsTogether(piece),
    ...outerWalls(piece),
    ...wideTenons(piece),
    ...looseTenons(piece),
    ...seasonRoom(piece),
    ...boardsThroughYear(piece),
    ...kneeRoom(piece),
    ...leafJoints(piece, shop),
    ...armsTurn(piece),
    ...armsBear(piece),
    ...leavesHang(piece),
    ...leavesSag(piece, weighing),
    ...standsFirm(piece, weighing),
    ...straysKept(piece),
  ].sort((a, b) => order[a.verdict] - order[b.verdict] || (b.severity ?? 0) - (a.severity ?? 0));
