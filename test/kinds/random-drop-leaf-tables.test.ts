import { test } from "vitest";
import { dropLeafDocument } from "../kit/drop-leaf-tables.ts";
import { judgedRun } from "../kit/judged-run.ts";

test(
  "a thousand random drop-leaf tables hold together, and every refusal’s remedy mends it",
  () => judgedRun(dropLeafDocument, "drop-leaf-table", 1000),
  240_000,
);
