// Started by kill.ts: makes step after step, tells each as soon as it is confirmed, and never ends.
import { createHash } from "node:crypto";
import { writeSync } from "node:fs";
import { openStore } from "../../src/store/index.ts";
import { sampleDocument } from "../kit/documents.ts";
import { isBackupStep, moveTo } from "./stream.ts";

const [folder = "", seed = ""] = process.argv.slice(2);

function confirm(step: number, text: string): void {
  const digest = createHash("sha256").update(text).digest("hex");
  // Straight to the pipe: nothing waits in this process for the kill to take along.
  writeSync(1, `${step} ${digest}\n`);
}

const store = await openStore(folder, { keep: 3 });
for (const repair of store.openingRepairs) writeSync(1, `repair ${repair.code}\n`);
const id = store.list()[0]?.id ?? store.create(sampleDocument());
let { step, text, undo, redo } = store.open(id);
confirm(step, text);
for (;;) {
  const can = { undo: undo !== undefined, redo: redo !== undefined };
  const move = moveTo(step + 1, Number(seed), can);
  ({ step, text, undo, redo } =
    move.move === "edit" ? store.edit(id, move.edit, step) : store[move.move](id, step));
  confirm(step, text);
  if (isBackupStep(step)) store.backUp();
}
