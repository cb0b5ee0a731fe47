import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { allChecks } from "./all.ts";
import { series } from "./check.ts";
import { verificationPage } from "./report.ts";

const committed = readFileSync(new URL("../../docs/verification.md", import.meta.url), "utf8");

test("docs/verification.md is what npm run verify would write now", () => {
  expect(verificationPage(allChecks)).toBe(committed.replaceAll("\r\n", "\n"));
});

test("the page shows a failing check, its error and its source", () => {
  const check = series("Planks", "textbook")("a plank", "2.0", "mm", () => 2.25);
  const page = verificationPage([check]);
  expect(page).toContain("1 checks, 1 failing.");
  expect(page).toContain("| a plank | textbook | 2.0 mm | 2.25 | 0.25 | ± 0.05, half digit |");
  expect(page).toMatch(/Textbook statics.*\| 1 \| 500 % \|/);
});
