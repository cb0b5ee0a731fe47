// Started by several.test.ts, several at once: each makes so many edits to the one piece there is.
import { openStore } from "../../src/store/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { sampleDocument } from "../kit/documents.ts";
import { setting } from "./model.ts";

const [folder = "", who = "", count = "", way = ""] = process.argv.slice(2);
const store = await openStore(folder, { patienceMs: 20_000 });
if (way === "create") {
  for (let i = 0; i < Number(count); i++) store.create(sampleDocument({ name: who }));
} else {
  const id = store.list()[0]?.id ?? "";
  for (let i = 0; i < Number(count); i++) {
    for (let { step } = store.open(id); ; { step } = store.open(id)) {
      try {
        // All of them want the same place, so that only one of them can be the next.
        store.edit(id, setting(["note"], `${who} ${i}`), step);
        break;
      } catch (problem) {
        if (!(problem instanceof Problem) || problem.code !== "step-behind") throw problem;
      }
    }
    if (i % 20 === 0) store.backUp();
  }
}
store.close();
