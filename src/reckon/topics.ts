import { Problem } from "../worked/index.ts";
import type { Topic } from "./topic.ts";
import { boardFeetTopic } from "./topics/board-feet.ts";
import { clamps } from "./topics/clamps.ts";
import { cup } from "./topics/cup.ts";
import { emc } from "./topics/emc.ts";
import { finish } from "./topics/finish.ts";
import { latheSpeedTopic } from "./topics/lathe-speed.ts";
import { leafJoint } from "./topics/leaf-joint.ts";
import { movement } from "./topics/movement.ts";
import { octagon } from "./topics/octagon.ts";
import { router } from "./topics/router.ts";
import { sag } from "./topics/sag.ts";
import { screw } from "./topics/screw.ts";
import { swingArm } from "./topics/swing-arm.ts";
import { tip } from "./topics/tip.ts";
import { weight } from "./topics/weight.ts";

/** Every quick sum, in the order of the job: timber, then the piece, then the bench. */
export const topics: readonly Topic[] = [
  emc,
  movement,
  cup,
  boardFeetTopic,
  weight,
  sag,
  tip,
  leafJoint,
  swingArm,
  screw,
  octagon,
  latheSpeedTopic,
  router,
  clamps,
  finish,
];

/**
 * The topic of a name.
 *
 * @throws Problem "topic-unknown" with the names there are
 */
export function topicNamed(name: string): Topic {
  const found = topics.find((t) => t.name === name);
  if (found) return found;
  throw new Problem(
    "topic-unknown",
    `“${name.slice(0, 40)}”`,
    "There is no quick sum of this name.",
    `Use ${topics.map((t) => t.name).join(", ")}.`,
  );
}
