import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, test } from "vitest";

/** Poppler's readers, of another make than what writes. */
const [toPicture, toText] = ["pdftoppm", "pdftotext"] as const;
/** Dots to a millimetre: a tenth of one is two of them. */
export const DOTS = 20;

const has = (tool: string): boolean => {
  try {
    execFileSync(tool, ["-v"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
};
// Where it is missing the tests that need it are skipped, loudly; continuous integration must have it.
const hasPoppler = has(toPicture) && has(toText);
if (!hasPoppler && !process.env.CI)
  console.warn("pdftoppm is missing: true size on paper is NOT tested. Install poppler-utils.");
export const withPoppler = test.skipIf(!hasPoppler && !process.env.CI);

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "latewood-pdf-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

export type Picture = {
  readonly width: number;
  readonly height: number;
  readonly gray: Uint8Array;
};

/** A page rendered, and read back dot by dot. */
export function rendered(pdf: Uint8Array, page: number): Picture {
  const path = join(folder, "page");
  writeFileSync(`${path}.pdf`, pdf);
  const size = ["-r", String(DOTS * 25.4), "-gray", "-aa", "no", "-aaVector", "no"];
  const which = ["-f", String(page), "-l", String(page), "-singlefile"];
  execFileSync(toPicture, [...size, ...which, `${path}.pdf`, path]);
  const bytes = readFileSync(`${path}.pgm`);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString("latin1"));
  if (!head) throw new Error("pdftoppm wrote something else than a grey picture");
  return {
    width: Number(head[1]),
    height: Number(head[2]),
    gray: bytes.subarray(head[0].length),
  };
}

/** A PDF's text, read back. */
export function textOf(pdf: Uint8Array): string {
  const path = join(folder, "text.pdf");
  writeFileSync(path, pdf);
  return execFileSync(toText, ["-layout", path, "-"], { encoding: "utf8" });
}

/** Dark runs along a level or upright line through the picture: middle and width [mm from upper left]. */
export function runsAcross({ width, height, gray }: Picture, along: "x" | "y", at: number) {
  const fixed = Math.round(at * DOTS);
  const count = along === "x" ? width : height;
  const isDark = (i: number) =>
    (gray[along === "x" ? fixed * width + i : i * width + fixed] ?? 255) < 128;
  const runs: { readonly middle: number; readonly wide: number }[] = [];
  for (let i = 0; i < count; i++) {
    if (!isDark(i)) continue;
    const start = i;
    while (i < count && isDark(i)) i++;
    runs.push({ middle: (start + i) / 2 / DOTS, wide: (i - start) / DOTS });
  }
  return runs;
}

/** Middles of the dark runs along a line. */
export const strokesAcross = (picture: Picture, along: "x" | "y", at: number): readonly number[] =>
  runsAcross(picture, along, at).map(({ middle }) => middle);
