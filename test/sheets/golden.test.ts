import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { writeSvg } from "../../src/sheets/index.ts";
import { demos, planned } from "../kit/sheets.ts";

const folder = join(import.meta.dirname, "..", "golden");
const slug = (name: string) =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");

/** The demo pieces' files by name, as they are written now. */
const written = new Map<string, string>(
  demos.flatMap((demo) => {
    const { units, document } = demo.piece;
    const plan = planned(demo, { paper: units === "inch" ? "letter" : "a4" });
    const name = slug(document.name);
    return [
      ...plan.sheets.map((sheet) => [`${name}-${sheet.id}.svg`, writeSvg(sheet)] as const),
      [`${name}.csv`, plan.csv] as const,
    ];
  }),
);

/**
 * A file that is not as it was is written beside it, to be looked at and, if it is meant, to be put in
 * its place. A file that was not there is made, but never in continuous integration.
 */
describe("golden files of the demo pieces", () => {
  test.each([...written])("%s is as it was", (name, text) => {
    const path = join(folder, name);
    const changed = path.replace(/\.(\w+)$/, "-changed.$1");
    rmSync(changed, { force: true });
    if (!existsSync(path)) {
      expect(process.env.CI, `${name} is not there`).toBeFalsy();
      mkdirSync(folder, { recursive: true });
      writeFileSync(path, text);
      return;
    }
    const isSame = readFileSync(path, "utf8") === text;
    if (!isSame && !process.env.CI) writeFileSync(changed, text);
    expect(isSame, `${name} differs; see ${name.replace(/\.(\w+)$/, "-changed.$1")}`).toBe(true);
  });

  test("none is left over from a sheet there is no more", () => {
    const there = readdirSync(folder).filter((name) => !name.includes("-changed."));
    expect(there.filter((name) => !written.has(name))).toEqual([]);
  });
});
