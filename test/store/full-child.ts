// Started by full-disk.test.ts on a disk of its own that is a few hundred kilobytes small.
import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { openStore } from "../../src/store/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { sampleDocument } from "../kit/documents.ts";
import { setting } from "./model.ts";

const [folder = ""] = process.argv.slice(2);

function codeOf(work: () => unknown): string {
  try {
    work();
    return "done";
  } catch (fault) {
    if (fault instanceof Problem) return fault.code;
    throw fault;
  }
}

const ballast = join(folder, "ballast");
writeFileSync(ballast, Buffer.alloc(150_000));
const data = join(folder, "data");
let store = await openStore(data);
const id = store.create(sampleDocument());
let confirmed = store.open(id);
const edit = (i: number) => ({ ...setting(["note"], `${i} ${"x".repeat(2000)}`), says: `${i}` });
const met = codeOf(() => {
  for (let i = 0; i < 1000; i++) confirmed = store.edit(id, edit(i));
});
const backup = codeOf(() => store.backUp());
const sameOpen = store.open(id).text === confirmed.text;
store.close();

store = await openStore(data);
const reopened = store.open(id);
const sameReopened = reopened.text === confirmed.text && reopened.step === confirmed.step;
rmSync(ballast);
const after = codeOf(() => store.edit(id, edit(1001)));
const unsound = store.unsoundSteps(id);
store.close();
console.log(
  JSON.stringify({ met, backup, steps: confirmed.step, sameOpen, sameReopened, after, unsound }),
);
