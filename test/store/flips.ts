import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { documentText } from "../../src/piece/index.ts";
import { openStore } from "../../src/store/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { below, seeded } from "../fuzz/strings.ts";
import { sampleDocument } from "../kit/documents.ts";
import { Model, setting } from "./model.ts";

/** What came of a database in which one byte was changed. */
export type Flip =
  | "unharmed"
  | "mended, nothing lost"
  | "earlier state, and said so"
  | "refused, and said so";

export type FlipAccount = {
  readonly came: ReadonlyMap<Flip, number>;
  readonly faults: readonly string[];
};

/** A data folder with one piece of so many steps, and a backup of its first half if wanted. */
async function prepared(folder: string, steps: number, hasBackup: boolean) {
  const store = await openStore(folder);
  const id = store.create(sampleDocument());
  const model = new Model(sampleDocument());
  for (let step = 1; step <= steps; step++) {
    const edit = setting(["assemblies", "table", `answer-${step % 7}`], `${step} in`);
    model.edit(edit);
    store.edit(id, edit);
    if (hasBackup && step === Math.floor(steps / 2)) store.backUp();
  }
  store.close();
  return { id, model };
}

/**
 * Changes one byte of a closed database by chance, opens it, and holds what opens against the model:
 * it must be the piece as it stood after some step, and whatever is missing must be said.
 *
 * @param count  how many bytes, one at a time
 * @param within  a text of the file that they are all to lie in
 */
export async function flipRun(
  count: number,
  seed: number,
  hasBackup: boolean,
  within?: string,
): Promise<FlipAccount> {
  const chance = seeded(seed);
  const folder = mkdtempSync(join(tmpdir(), "latewood-flips-"));
  const came = new Map<Flip, number>();
  const faults: string[] = [];
  try {
    const origin = join(folder, "origin");
    const { id, model } = await prepared(origin, 120, hasBackup);
    const bytes = readFileSync(join(origin, "latewood.db"));
    for (let i = 0; i < count; i++) {
      // Every fourth in the first page, where a byte does most harm.
      const at =
        within === undefined
          ? below(chance, i % 4 === 0 ? 200 : bytes.length)
          : bytes.indexOf(within) + below(chance, within.length);
      const spoilt = Uint8Array.from(bytes);
      spoilt[at] = (spoilt[at] ?? 0) ^ (1 << below(chance, 8));
      const data = join(folder, `data-${i}`);
      mkdirSync(data);
      writeFileSync(join(data, "latewood.db"), spoilt);
      if (hasBackup) {
        mkdirSync(join(data, "backups"));
        const name = join("backups", "latewood-001.db");
        copyFileSync(join(origin, name), join(data, name));
      }
      const verdict = await judged(data, id, model);
      if (verdict.fault) faults.push(`byte ${at} of ${bytes.length}: ${verdict.fault}`);
      else came.set(verdict.came, (came.get(verdict.came) ?? 0) + 1);
      rmSync(data, { recursive: true, force: true });
    }
    return { came, faults };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

type Verdict = { readonly came: Flip; readonly fault?: string };

async function judged(data: string, id: string, model: Model): Promise<Verdict> {
  try {
    const store = await openStore(data, { patienceMs: 200 });
    try {
      const lastly = store.list().map((one) => one.id);
      const { step, text, repairs } = store.open(id);
      const told = [...store.openingRepairs, ...repairs];
      const wrong = (fault: string): Verdict => ({ came: "unharmed", fault });
      if (!lastly.includes(id)) return wrong("the piece is not in the list");
      if (text !== model.texts[step]) return wrong(`step ${step} opens with another text`);
      if (step < model.step && told.length === 0) return wrong(`back to step ${step} unsaid`);
      for (const past of [0, 50, 99, step]) {
        if (past > step) continue;
        const was = pastText(() => documentText(store.at(id, past)));
        if (was !== undefined && was !== model.texts[past]) return wrong(`step ${past} differs`);
      }
      // It goes on from there.
      const on = store.edit(id, setting(["note"], "on"));
      if (on.step !== step + 1 || store.undo(id).text !== text) return wrong("it does not go on");
      if (step < model.step) return { came: "earlier state, and said so" };
      return { came: told.length > 0 ? "mended, nothing lost" : "unharmed" };
    } finally {
      store.close();
    }
  } catch (fault) {
    if (fault instanceof Problem) return { came: "refused, and said so" };
    return { came: "unharmed", fault: `${fault instanceof Error ? fault.stack : fault}` };
  }
}

/** Undefined where an old state cannot be reached any more, which is said by a Problem. */
function pastText(read: () => string): string | undefined {
  try {
    return read();
  } catch (fault) {
    if (fault instanceof Problem) return undefined;
    throw fault;
  }
}
