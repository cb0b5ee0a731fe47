import { expect, test } from "vitest";
import { countLines } from "../../tools/count-lines.mjs";

test.each([
  [{ passed: 12, failed: 0, skipped: 0 }, 1],
  [{ passed: 12, failed: 3, skipped: 4 }, 2],
  [{ passed: 0, failed: 1, skipped: 1 }, 2],
])("the last line of %o is the count alone", (tally, lines) => {
  const said = countLines(tally).split("\n");
  expect(said.at(-1)).toBe(`${tally.passed} passed, ${tally.failed} failed`);
  expect(said).toHaveLength(lines);
  if (tally.skipped > 0) expect(said[0]).toContain(`${tally.skipped} skipped`);
});
