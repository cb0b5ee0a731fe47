import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { PdfFonts } from "../sheets/index.ts";

/** The type lies in its own package, beside this program's. */
export function fonts(): PdfFonts {
  const { resolve } = createRequire(import.meta.url);
  const read = (name: string) =>
    new Uint8Array(readFileSync(resolve(`@expo-google-fonts/source-sans-3/${name}`)));
  return {
    regular: read("400Regular/SourceSans3_400Regular.ttf"),
    bold: read("600SemiBold/SourceSans3_600SemiBold.ttf"),
  };
}
