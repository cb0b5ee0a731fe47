import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { documentText } from "../../src/piece/index.ts";
import { isWhole } from "../../src/store/backups.ts";
import { openDatabase } from "../../src/store/database.ts";
import { loadDriver, openStore } from "../../src/store/index.ts";
import { below, seeded } from "../fuzz/strings.ts";
import { sampleDocument } from "../kit/documents.ts";
import { bundled } from "./bundle.ts";
import { Model } from "./model.ts";
import { moveTo } from "./stream.ts";

/** What came of killing a program in the middle of its work, over and over. */
export type KillAccount = {
  readonly kills: number;
  /** steps that were confirmed before the kills */
  readonly acknowledged: number;
  /** confirmed steps that were not there afterwards, or not as confirmed */
  readonly lost: number;
  /** steps of which only a part was there, or that nobody had asked for */
  readonly halves: number;
  /** times the database, its chain or a backup was not whole, or a repair was needed */
  readonly damaged: number;
  /** what was wrong, in words */
  readonly faults: readonly string[];
};

/**
 * Kills a program that makes edits, at moments of chance, and after each kill holds what is on the
 * disk against what was confirmed and against a plain model. Each run goes on with the same store.
 *
 * @param count  how many kills
 * @param seed  of the moments and of the edits
 */
export async function killRun(count: number, seed: number): Promise<KillAccount> {
  const chance = seeded(seed);
  const folder = mkdtempSync(join(tmpdir(), "latewood-kill-"));
  const child = await bundled(new URL("./kill-child.ts", import.meta.url));
  const model = new Model(sampleDocument());
  const sum = { kills: 0, acknowledged: 0, lost: 0, halves: 0, damaged: 0 };
  const faults: string[] = [];
  try {
    for (; sum.kills < count; sum.kills++) {
      // From before the store is open to well amid the steps, snapshots and backups.
      const lines = await killedAfter(child.file, [folder, String(seed)], 40 + below(chance, 560));
      const found = await held(folder, seed, model, lines);
      sum.acknowledged += found.acknowledged;
      for (const what of ["lost", "halves", "damaged"] as const) {
        sum[what] += found[what].length;
        faults.push(...found[what].map((words) => `kill ${sum.kills + 1}, ${what}: ${words}`));
      }
    }
    return { ...sum, faults };
  } finally {
    child.remove();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The whole lines that a program wrote before it was killed. */
function killedAfter(
  file: string,
  args: readonly string[],
  afterMs: number,
): Promise<readonly string[]> {
  return new Promise((settle, fail) => {
    const child = spawn(process.execPath, [file, ...args], { stdio: ["ignore", "pipe", "pipe"] });
    let [out, err] = ["", ""];
    child.stdout.on("data", (part) => {
      out += part;
    });
    child.stderr.on("data", (part) => {
      err += part;
    });
    const timer = setTimeout(() => child.kill("SIGKILL"), afterMs);
    child.on("error", fail);
    child.on("close", (code) => {
      clearTimeout(timer);
      // It never ends by itself; what did was no kill.
      if (code !== null) fail(new Error(`the child ended with ${code}: ${err}`));
      else settle(out.split("\n").slice(0, -1));
    });
  });
}

const digestOf = (text: string | undefined) =>
  createHash("sha256")
    .update(text ?? "")
    .digest("hex");

async function held(folder: string, seed: number, model: Model, lines: readonly string[]) {
  const [lost, halves, damaged]: [string[], string[], string[]] = [[], [], []];
  const told = lines.filter((line) => !line.startsWith("repair"));
  for (const line of lines.filter((one) => one.startsWith("repair"))) damaged.push(line);
  const confirmed = told.map((line) => {
    const [step = "", digest = ""] = line.split(" ");
    return { step: Number(step), digest };
  });

  const store = await openStore(folder, { keep: 3 });
  try {
    for (const repair of store.openingRepairs) damaged.push(repair.found);
    const [piece, ...others] = store.list();
    if (others.length > 0) halves.push("a piece nobody made");
    if (!piece) {
      if (confirmed.length > 0) lost.push("the piece");
      return { acknowledged: confirmed.length, lost, halves, damaged };
    }
    const { step, text, repairs } = store.open(piece.id);
    const unsound = store.unsoundSteps(piece.id);
    if (unsound.length > 0) damaged.push(`steps ${unsound.join(", ")} are unsound`);
    for (const repair of repairs) damaged.push(repair.found);
    if (piece.steps !== step) halves.push(`the list says ${piece.steps}, the log ${step}`);

    const begun = model.step;
    advance(model, seed, step);
    // The one step that was under way may be there, whole, though nobody was told.
    const last = confirmed.at(-1)?.step ?? begun;
    if (step > last + 1) halves.push(`step ${step} where ${last} was the last`);
    for (const one of confirmed) {
      if (one.step > step) lost.push(`step ${one.step}`);
      else if (one.digest !== digestOf(model.texts[one.step])) lost.push(`text of ${one.step}`);
    }
    if (text !== model.texts[step]) halves.push(`step ${step} is not as the model has it`);
    for (let at = begun; at <= step; at += 37) {
      const past = documentText(store.at(piece.id, at));
      if (past !== model.texts[at]) lost.push(`step ${at} as it was`);
    }
    damaged.push(...(await unsoundFiles([store.file, ...store.backups().map((one) => one.file)])));
    const acknowledged = confirmed.filter((one) => one.step > begun || one.step === 0).length;
    return { acknowledged, lost, halves, damaged };
  } finally {
    store.close();
  }
}

function advance(model: Model, seed: number, step: number): void {
  while (model.step < step) {
    const can = { undo: model.undos.length > 0, redo: model.redos.length > 0 };
    const move = moveTo(model.step + 1, seed, can);
    if (move.move === "edit") model.edit(move.edit);
    else model[move.move]();
  }
}

async function unsoundFiles(files: readonly string[]): Promise<readonly string[]> {
  const driver = await loadDriver();
  return files.filter((file) => {
    const db = openDatabase(driver, file, { readOnly: true });
    try {
      return !isWhole(db);
    } finally {
      db.close();
    }
  });
}
