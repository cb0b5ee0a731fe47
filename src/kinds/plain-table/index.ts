import { plainly } from "../../piece/index.ts";
import { frameUnder, idleOfFrame } from "../frame/frame-asks.ts";
import { frameParts, frameTies, settleFrame } from "../frame/framed.ts";
import { kind, type Made, type Making, nothing } from "../kind.ts";
import { heldTop } from "../top/held.ts";
import { refuseSmallTop } from "../top/refuse-top.ts";
import { type TopAsked, topCoefficient, topFrame, topJoints, topPart } from "../top/top.ts";
import { asks, groups, type PlainTableAnswers } from "./asks.ts";

/** Four legs, four rails, a top that may move. */
export const plainTable = kind({
  name: "plain-table",
  title: "Plain table",
  tells: "four legs, four rails with mortise and tenon, a glued-up top",
  asks,
  groups,
  idle: idleOfFrame,
  make,
});

function make(given: PlainTableAnswers, making: Making): Made {
  const { assembly, settle, species } = making;
  const top: TopAsked = {
    length: settle("top.length", "top, length", plainly("length of the top", given.length.value)),
    width: settle("top.width", "top, width", plainly("width of the top", given.width.value)),
    thickness: settle(
      "top.thickness",
      "top, thickness",
      plainly("thickness of the top", given["top-thickness"].value),
    ),
    widest: given["widest-strip"].value,
    sawn: given.sawn,
    hearts: given.hearts,
  };
  const asked = frameUnder(given, top.thickness);
  const sizes = {
    length: given.length.value,
    width: given.width.value,
    height: given.height.value,
    fastening: given.fastening,
  };
  const framed = settleFrame(asked, sizes, given["corner-blocks"] === "yes", making);
  if (!framed) return nothing;
  const frame = topFrame(top.length, top.width, asked.height);
  const over = {
    thickness: top.thickness,
    frame,
    coefficient: topCoefficient(top.sawn, species),
  };
  const held = heldTop(framed, over, given.fastening, nowhere, making);
  refuseSmallTop(held.inTop, { ...top, across: [0, top.width] }, asked, making);
  const { sticks, blocks } = frameParts(framed, held.onRails, assembly);
  return {
    parts: [...sticks, topPart(top, frame, held.inTop, assembly), ...blocks, ...held.parts],
    joints: [...frameTies(framed, assembly), ...held.joints, ...topJoints(top, assembly)],
    motions: [],
  };
}

const nowhere = { front: [], back: [], left: [], right: [] };
