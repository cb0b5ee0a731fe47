import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Edit } from "../../src/piece/index.ts";
import { createEditQueue } from "../../src/web/piece/edit-queue.ts";
import { Problem } from "../../src/worked/index.ts";
import { badWire, type Fate } from "./wire.ts";

const edit = (name: string, to: string): Edit => ({
  says: `${name}: ${to}`,
  changes: [{ at: [name], to }],
});
const name = (to: string) => edit("name", to);
const client = (to: string) => edit("client", to);

/** A queue that somebody looks at, with its piece read. */
async function opened(...fates: readonly Fate[]) {
  const wire = await badWire();
  const queue = createEditQueue(wire.server, wire.later);
  queue.listen(() => undefined);
  queue.start();
  await wire.rest();
  wire.fate(...fates);
  const keeping = () => queue.state().keeping.is;
  const dropped = () => queue.state().dropped.map(({ code }) => code);
  const shown = () => queue.state().document;
  return { ...wire, queue, keeping, dropped, shown };
}

describe("an edit", () => {
  test("shows at once, is sent before anything else happens, and is then kept", async () => {
    const { queue, asked, shown, keeping, rest, kept } = await opened();
    queue.commit(name("Hall table"));
    expect(shown()?.name).toBe("Hall table");
    // In the same breath: a page that closes has no other.
    expect(asked).toEqual(["open", "edit name: Hall table on 0"]);
    expect(keeping()).toBe("keeping");
    await rest();
    expect(keeping()).toBe("kept");
    expect(kept().document.name).toBe("Hall table");
  });

  test("made in one breath with another builds on it", async () => {
    const { queue, rest, kept } = await opened();
    queue.commit(name("A"));
    queue.commit((latest) => client(`for ${latest.name}`));
    await rest();
    expect(kept().document).toMatchObject({ name: "A", client: "for A" });
  });

  test("that makes no document is said and not sent", async () => {
    const { queue, asked, dropped, shown } = await opened();
    queue.commit(name(""));
    queue.commit(() => {
      throw new Problem("kind-unknown", "“nosuch”", "No.", "Use another.");
    });
    expect(dropped()).toEqual(["text-empty", "kind-unknown"]);
    expect(asked).toEqual(["open"]);
    expect(shown()?.name).toBe("Sample table");
    queue.noted();
    expect(dropped()).toEqual([]);
  });
});

describe("when the server is silent", () => {
  test.each(["unheard", "busy"] as const)(
    "an edit that was %s is sent again, and what waits behind it after it",
    async (fate) => {
      const { queue, asked, keeping, rest, passTime, steps, shown } = await opened(fate);
      queue.commit(name("A"));
      queue.commit(client("B"));
      await rest();
      expect(keeping()).toBe("waiting");
      await passTime();
      expect(keeping()).toBe("kept");
      expect(steps()).toEqual(["edit name: A", "edit client: B"]);
      expect(asked.filter((what) => what.startsWith("edit name"))).toEqual([
        "edit name: A on 0",
        "edit name: A on 0",
      ]);
      expect(shown()).toMatchObject({ name: "A", client: "B" });
    },
  );

  test("an edit whose answer was lost is not made twice", async () => {
    const { queue, keeping, rest, passTime, steps } = await opened("lost");
    queue.commit(name("A"));
    queue.commit(client("B"));
    await rest();
    expect(keeping()).toBe("waiting");
    await passTime();
    expect(keeping()).toBe("kept");
    expect(steps()).toEqual(["edit name: A", "edit client: B"]);
  });

  test("nor where another page changed something else since", async () => {
    const { queue, rest, others, passTime, steps, dropped, shown } = await opened("lost");
    queue.commit(name("A"));
    await rest();
    others.edit("client", "Other");
    await passTime();
    expect(steps()).toEqual(["edit name: A", "edit client: Other"]);
    expect(dropped()).toEqual([]);
    expect(shown()).toMatchObject({ name: "A", client: "Other" });
  });

  test("an undo and a redo whose answers were lost are not made twice", async () => {
    const { queue, rest, fate, passTime, steps, shown } = await opened();
    queue.commit(name("A"));
    queue.commit(name("B"));
    await rest();
    fate("lost");
    queue.back("undo");
    await rest();
    await passTime();
    expect(shown()?.name).toBe("A");
    fate("lost");
    queue.back("redo");
    await rest();
    await passTime();
    expect(shown()?.name).toBe("B");
    expect(steps()).toEqual(["edit name: A", "edit name: B", "undo name: B", "redo name: B"]);
  });

  test("an undo that nobody heard, with another page's edit in between, takes back neither", async () => {
    const { queue, rest, fate, others, passTime, steps, dropped } = await opened();
    queue.commit(name("A"));
    await rest();
    fate("unheard");
    queue.back("undo");
    await rest();
    others.edit("client", "Other");
    await passTime();
    expect(steps()).toEqual(["edit name: A", "edit client: Other"]);
    expect(dropped()).toEqual(["step-behind"]);
  });

  test.each([
    ["an edit", name("B"), "edit name: B"],
    ["an undo", "undo", "undo name: A"],
  ] as const)(
    "%s that arrives long after it was given up, and then again, counts once",
    async (_, what, says) => {
      const { queue, fate, rest, passTime, arrive, steps, dropped, keeping } = await opened();
      queue.commit(name("A"));
      await rest();
      fate("stray", "answered", "late");
      if (what === "undo") queue.back(what);
      else queue.commit(what);
      await rest();
      await passTime();
      expect(steps()).toEqual(["edit name: A"]);
      await arrive();
      expect(steps()).toEqual(["edit name: A", says]);
      expect([keeping(), dropped()]).toEqual(["kept", []]);
    },
  );

  test("“Try again” wakes the wait at once, and only one goes on", async () => {
    const { queue, keeping, rest, waits, asked } = await opened("unheard");
    queue.commit(name("A"));
    await rest();
    expect([keeping(), waits.length]).toEqual(["waiting", 1]);
    queue.wake();
    queue.wake();
    await rest();
    expect([keeping(), waits.length]).toEqual(["kept", 0]);
    expect(asked.filter((what) => what.startsWith("edit"))).toHaveLength(2);
  });

  test("the first reading waits too, says so, and ends", async () => {
    const wire = await badWire();
    wire.fate("unheard", "unheard");
    const queue = createEditQueue(wire.server, wire.later);
    queue.listen(() => undefined);
    queue.start();
    await wire.rest();
    expect(queue.state().keeping).toMatchObject({ is: "waiting", said: [{ code: "no-answer" }] });
    await wire.passTime();
    expect(queue.state().document).toBeUndefined();
    await wire.passTime();
    expect(queue.state().keeping.is).toBe("kept");
    expect(queue.state().document?.name).toBe("Sample table");
  });

  test("nobody is asked while nobody looks and nothing waits, and again once somebody does", async () => {
    const wire = await badWire();
    wire.fate("unheard");
    const queue = createEditQueue(wire.server, wire.later);
    const leave = queue.listen(() => undefined);
    queue.start();
    await wire.rest();
    leave();
    expect(wire.waits).toHaveLength(0);
    queue.listen(() => undefined);
    await wire.rest();
    expect(queue.state().keeping.is).toBe("kept");
  });

  test("what waits is kept though nobody looks any more", async () => {
    const wire = await badWire();
    const queue = createEditQueue(wire.server, wire.later);
    const leave = queue.listen(() => undefined);
    queue.start();
    await wire.rest();
    wire.fate("unheard");
    queue.commit(name("A"));
    await wire.rest();
    leave();
    expect(queue.isBehind()).toBe(true);
    await wire.passTime();
    expect(queue.isBehind()).toBe(false);
    expect(wire.kept().document.name).toBe("A");
  });
});

describe("what is refused for good", () => {
  test("is dropped alone and said; what waits behind it is put on top and sent", async () => {
    const { queue, others, rest, steps, dropped, shown, keeping } = await opened();
    others.edit("name", "Other");
    queue.commit(name("A"));
    queue.commit(client("B"));
    expect(shown()).toMatchObject({ name: "A", client: "B" });
    await rest();
    expect(steps()).toEqual(["edit name: Other", "edit client: B"]);
    expect(shown()).toMatchObject({ name: "Other", client: "B" });
    expect(dropped()).toEqual(["step-behind"]);
    expect(queue.state().dropped[0]?.place).toBe("name: A");
    expect(keeping()).toBe("kept");
  });

  test("a mistake of the server's is not tried for ever", async () => {
    const { queue, rest, asked, dropped, shown, waits } = await opened("mistake");
    queue.commit(name("A"));
    await rest();
    expect(asked).toEqual(["open", "edit name: A on 0", "open"]);
    expect(waits).toHaveLength(0);
    expect(dropped()).toEqual(["answer-wordless"]);
    expect(shown()?.name).toBe("Sample table");
  });

  test("an edit made while the piece is read again is sent too", async () => {
    const { queue, rest, arrive, steps, shown } = await opened("mistake", "late");
    queue.commit(name("A"));
    await rest();
    queue.commit(client("B"));
    expect(shown()).toMatchObject({ name: "A", client: "B" });
    await arrive();
    expect(steps()).toEqual(["edit client: B"]);
    expect(shown()).toMatchObject({ name: "Sample table", client: "B" });
  });

  test("what cannot be put on top without it is dropped and said with it", async () => {
    const { queue, rest, dropped, steps } = await opened("mistake");
    const bench = (at: readonly string[], to: string | { readonly kind: string }) => ({
      says: "a bench to it",
      changes: [{ at: ["assemblies", "bench", ...at], to }],
    });
    queue.commit(bench([], { kind: "plain-table" }));
    queue.commit(bench(["length"], "5 ft"));
    queue.commit(client("B"));
    await rest();
    expect(dropped()).toEqual(["answer-wordless", "edit-place"]);
    expect(steps()).toEqual(["edit client: B"]);
  });

  test("an undo behind it is dropped and said: it meant what was refused", async () => {
    const { queue, rest, others, steps, dropped } = await opened();
    others.edit("name", "Other");
    queue.commit(name("A"));
    queue.back("undo");
    queue.back("undo");
    queue.commit(client("B"));
    await rest();
    expect(steps()).toEqual(["edit name: Other", "edit client: B"]);
    expect(dropped()).toEqual(["step-behind", "step-unmeant"]);
  });

  test("where even the reading is refused, it waits for a word, and nothing is lost", async () => {
    const { queue, rest, keeping, waits, kept } = await opened("unheard", "mistake");
    queue.commit(name("A"));
    await rest();
    waits.splice(0).map((go) => go());
    await rest();
    expect([keeping(), waits.length]).toEqual(["waiting", 0]);
    queue.wake();
    await rest();
    expect([keeping(), kept().document.name]).toEqual(["kept", "A"]);
  });

  test("a piece that cannot be read at all is closed", async () => {
    const wire = await badWire();
    wire.fate("mistake");
    const queue = createEditQueue(wire.server, wire.later);
    queue.listen(() => undefined);
    queue.start();
    await wire.rest();
    expect(queue.state().closed).toMatchObject([{ code: "answer-wordless" }]);
  });
});

test("undoing and redoing more often than there is to is no fault", async () => {
  const { queue, rest, keeping, dropped, steps, shown } = await opened();
  queue.commit(name("A"));
  for (let i = 0; i < 10; i++) queue.back("undo");
  await rest();
  expect(keeping()).toBe("kept");
  for (let i = 0; i < 10; i++) queue.back("redo");
  await rest();
  expect(keeping()).toBe("kept");
  expect(dropped()).toEqual([]);
  expect(shown()?.name).toBe("A");
  expect(steps()).toEqual(["edit name: A", "undo name: A", "redo name: A"]);
});

type Doing = "edit" | "undo" | "redo";

test("whatever passes and gets lost on the wire, every step is made once and in turn", () =>
  fc.assert(
    fc.asyncProperty(
      fc.array(fc.constantFrom<Doing>("edit", "edit", "undo", "redo"), { maxLength: 12 }),
      fc.array(fc.constantFrom<Fate>("answered", "unheard", "lost", "busy"), { maxLength: 30 }),
      fc.array(fc.boolean(), { maxLength: 12 }),
      async (doings, fates, pauses) => {
        const run = async (...wireFates: readonly Fate[]) => {
          const { queue, rest, passTime, waits, steps, shown, dropped, kept } = await opened(
            ...wireFates,
          );
          for (const [i, doing] of doings.entries()) {
            if (doing === "edit") queue.commit(name(`Table ${i >> 1}`));
            else queue.back(doing);
            if (pauses[i]) await rest();
          }
          await rest();
          for (let i = 0; i < 100 && waits.length > 0; i++) await passTime();
          expect(queue.isBehind()).toBe(false);
          expect(shown()).toEqual(kept().document);
          expect(dropped()).toEqual([]);
          return steps();
        };
        expect(await run(...fates)).toEqual(await run());
      },
    ),
    { numRuns: 150 },
  ));
