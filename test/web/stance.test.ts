import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { kindNamed, newDocument, pieceOf } from "../../src/kinds/index.ts";
import { type Piece, statesOf, type Turns, unsafeAt } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { stepped } from "../../src/web/model/keys.ts";
import {
  moved,
  moversOf,
  type Stance,
  stanceOf,
  standsAt,
  stateAt,
  stateFrom,
  stepOf,
  stepsOf,
  turnsOf,
} from "../../src/web/model/stance.ts";
import { partsLit } from "../../src/web/piece/lights.ts";

function table(answers: Readonly<Record<string, string>> = {}): Piece {
  const fresh = newDocument(kindNamed("drop-leaf-table"), "Demo table", "mm");
  const { table: texts } = fresh.assemblies;
  if (!texts) throw new Error("a fresh piece has no table");
  const read = pieceOf({ ...fresh, assemblies: { table: { ...texts, ...answers } } }, demoShop);
  if (!read.ok) throw new Error(read.problems.map((problem) => problem.code).join(", "));
  return read.piece;
}

const piece = table();
const { motions } = piece;
const movers = moversOf(motions);
const saysOf = (turns: Turns) => stateAt(motions, turns)?.says;
const moverSaying = (says: string) => {
  const found = movers.find((one) => one.says === says);
  if (!found) throw new Error(`nothing is moved as ${says}`);
  return found;
};

describe("how the model of a drop-leaf table stands", () => {
  test("at first all leaves are up on their arms", () => {
    expect(saysOf(turnsOf(motions, {}))).toBe("all leaves up");
    expect(unsafeAt(motions, turnsOf(motions, {}))).toEqual([]);
  });

  test("each leaf is moved by itself, and its arms together", () => {
    expect(movers.map(({ says, motions: all }) => [says, all.length])).toEqual([
      ["front leaf", 1],
      ["arms of the front leaf", 2],
      ["back leaf", 1],
      ["arms of the back leaf", 2],
    ]);
    expect(moversOf(table({ leaves: "one", arms: "one" }).motions).map((one) => one.says)).toEqual([
      "front leaf",
      "arm of the front leaf",
    ]);
    expect(moversOf([])).toEqual([]);
    const arms = moverSaying("arms of the front leaf");
    const turns = turnsOf(motions, moved({}, arms, 30));
    expect(arms.motions.map(({ key }) => turns[key])).toEqual([30, 30]);
  });

  test("a scrubber says where it stands in words, and its ends are the motion’s", () => {
    const leaf = moverSaying("front leaf");
    const says = (step: number) => standsAt(leaf, turnsOf(motions, moved({}, leaf, step)));
    expect([says(0), says(41), says(stepsOf(leaf))]).toEqual(["up", "41° down", "down"]);
    const { key, most } = leaf.motions[0] as (typeof motions)[number];
    expect(turnsOf(motions, moved({}, leaf, stepsOf(leaf)))[key]).toBeCloseTo(most, 12);
    const arms = moverSaying("arms of the back leaf");
    expect(standsAt(arms, turnsOf(motions, {}))).toBe("out");
    expect(standsAt(arms, turnsOf(motions, moved({}, arms, 0)))).toBe("in");
  });

  test("whatever is set on a scrubber is read off it again, and leaves the others be", () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...movers),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (of, share) => {
          const step = Math.round(share * stepsOf(of));
          const turns = turnsOf(motions, moved({}, of, step));
          expect(stepOf(of, turns)).toBe(step);
          for (const other of movers.filter((one) => one !== of))
            expect(stepOf(other, turns)).toBe(stepOf(other, turnsOf(motions, {})));
        },
      ),
    ));

  test("a leaf that hangs hangs on when an edit changes how far it turns", () => {
    const down = stanceOf(motions, statesOf(motions)[0] as ReturnType<typeof statesOf>[number]);
    const other = table({ joint: "square edges" });
    const most = (of: Piece) => of.motions.find(({ kind }) => kind === "leaf")?.most;
    expect(most(other)).not.toBe(most(piece));
    expect(stateAt(other.motions, turnsOf(other.motions, down))?.says).toBe("closed");
  });

  test("from state to state, round and round, each of them once", () => {
    for (const by of [1, -1] as const) {
      let stance: Stance = {};
      const seen: (string | undefined)[] = [];
      for (const _ of statesOf(motions)) {
        const next = stateFrom(motions, turnsOf(motions, stance), by);
        if (!next) throw new Error("there is a next state");
        seen.push(next.says);
        stance = stanceOf(motions, next);
        expect(saysOf(turnsOf(motions, stance))).toBe(next.says);
      }
      expect(new Set(seen).size).toBe(4);
      expect(seen.at(-1)).toBe("all leaves up");
    }
  });

  test("from between states on to the first, or back to the last", () => {
    const between = turnsOf(motions, moved({}, moverSaying("front leaf"), 30));
    expect(stateAt(motions, between)).toBeUndefined();
    expect(stateFrom(motions, between, 1)?.says).toBe("closed");
    expect(stateFrom(motions, between, -1)?.says).toBe("all leaves up");
  });

  test("L goes on, with Shift back; with the browser’s own keys it is the browser’s", () => {
    const press = { key: "l", shiftKey: false, ctrlKey: false, metaKey: false, altKey: false };
    expect(stepped(press)).toBe(1);
    expect(stepped({ ...press, key: "L", shiftKey: true })).toBe(-1);
    expect(stepped({ ...press, ctrlKey: true })).toBeUndefined();
    expect(stepped({ ...press, key: "k" })).toBeUndefined();
  });
});

describe("the parts that a finding lights", () => {
  test("a part is itself, a joint those it ties, a motion those it carries; each once", () => {
    const [leaf] = motions;
    if (!leaf) throw new Error("a leaf moves");
    const joint = piece.joints.find(({ kind }) => kind === "leaf");
    if (!joint) throw new Error("a leaf is joined");
    expect(partsLit(piece, [leaf.key])).toEqual(["table/leaf/front"]);
    expect(partsLit(piece, [joint.key])).toEqual(joint.parts);
    expect(partsLit(piece, ["table/top", joint.key, "table/top", "nothing/of/ours"])).toEqual([
      "table/top",
      ...joint.parts.filter((key) => key !== "table/top"),
    ]);
  });

  test("every joint and every motion lights something", () => {
    for (const { key } of [...piece.joints, ...motions])
      expect(partsLit(piece, [key]).length, key).toBeGreaterThan(0);
  });
});
