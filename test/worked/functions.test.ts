import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as joinery from "../../src/joinery/index.ts";
import * as making from "../../src/making/index.ts";
import * as mechanics from "../../src/mechanics/index.ts";
import * as motion from "../../src/motion/index.ts";
import * as stock from "../../src/stock/index.ts";
import * as wood from "../../src/wood/index.ts";
import { isWorked, wholeChain } from "../../src/worked/index.ts";
import { exported } from "../house/exports.ts";
import { readSources, syntaxTree } from "../house/sources.ts";
import { recompute } from "../kit/evaluate.ts";
import { made } from "./calls.ts";

describe.each(Object.entries(made))("the formula shown is the formula computed, %s", (_, table) => {
  test.each(Object.entries(table))("%s", (_, arbitrary) => {
    let answers = 0;
    fc.assert(
      fc.property(arbitrary, (answer) => {
        if (!answer) return;
        answers++;
        for (const input of wholeChain(answer).filter(isWorked)) {
          const found = recompute(input);
          if (!found.agrees) expect.fail(`${input.formula}: ${JSON.stringify({ found, input })}`);
        }
      }),
      { numRuns: 300 },
    );
    // Some refuse most of what chance hands them; three hundred tries always find a few.
    expect(answers).toBeGreaterThan(0);
  });
});

/** Functions that a room's files export, each with its return type as written. */
function functionsOf(room: string) {
  const sources = [...readSources(`src/${room}`)];
  return sources.flatMap(([path, text]) =>
    exported(syntaxTree(path, text).program.body).flatMap(({ name, node, params }) => {
      if (!params) return [];
      const written = node.type === "VariableDeclarator" ? node.init : node;
      const type = written && "returnType" in written ? written.returnType : undefined;
      const returns = type ? text.slice(type.start ?? 0, type.end ?? 0) : "";
      return [{ name, returns }];
    }),
  );
}

const doors: Readonly<Record<string, object>> = {
  wood,
  mechanics,
  joinery,
  motion,
  stock,
  making,
};

describe.each(Object.entries(doors))("none is left out, %s", (room, door) => {
  const names = Object.entries(door).flatMap(([name, v]) =>
    typeof v === "function" ? [name] : [],
  );
  const written = functionsOf(room);
  const returnsOf = (name: string) => written.find((f) => f.name === name)?.returns ?? "";

  test("every function of the door that gives a worked value is called above", () => {
    const due = names.filter((name) => /\bWorked\b/.test(returnsOf(name)));
    expect(due.length).toBeGreaterThan(3);
    expect(due.filter((name) => !(name in (made[room] ?? {})))).toEqual([]);
  });

  test("what is called above is at the door, and each function there says what it returns", () => {
    expect(Object.keys(made[room] ?? {}).filter((name) => !names.includes(name))).toEqual([]);
    expect(names.filter((name) => returnsOf(name) === "")).toEqual([]);
  });
});
