import { existsSync, readdirSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { gzipSync } from "node:zlib";
import { type Browser, chromium } from "playwright-core";
import { startServer } from "../src/server/index.ts";
import { demoShop } from "../src/shop/index.ts";
import { memoryStore } from "../src/store/index.ts";
import { findBrowser } from "../tools/find-browser.mjs";
import type { Timing } from "./measure.ts";

type Page = {
  /** what the page is made of, by kind; type comes as several files of which two are fetched */
  readonly files: readonly {
    readonly kind: string;
    readonly kB: number;
    readonly gzipKB: number;
  }[];
  readonly blank: Timing;
  readonly cold: Timing;
};

/**
 * Size of the built page, and how long it takes from a fresh profile to its first answer, against
 * a plain text from the same server. Undefined where there is no page or no browser.
 */
export async function pageLoad(webRoot: string): Promise<Page | undefined> {
  const executablePath = findBrowser();
  if (!executablePath || !existsSync(join(webRoot, "index.html"))) return undefined;
  const server = await startServer({
    webRoot,
    port: 0,
    store: await memoryStore(),
    shop: demoShop,
  });
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  try {
    const blank = await visits(browser, `${server.url}nothing-here`, "body");
    const cold = await visits(browser, `${server.url}#/movement`, ".results strong");
    return {
      files: sizes(webRoot),
      blank: { name: "a plain text, fresh profile", medianMs: blank },
      cold: { name: "the page's first answer, fresh profile", medianMs: cold },
    };
  } finally {
    await browser.close();
    await server.close();
  }
}

/** Median of seven visits, each in a profile of its own so that nothing is cached. */
async function visits(browser: Browser, url: string, until: string): Promise<number> {
  const took: number[] = [];
  for (let i = 0; i < 7; i++) {
    const context = await browser.newContext();
    const page = await context.newPage();
    const from = performance.now();
    await page.goto(url, { waitUntil: "commit" });
    await page.locator(until).first().waitFor({ state: "attached" });
    took.push(performance.now() - from);
    await context.close();
  }
  return took.sort((a, b) => a - b)[3] ?? Number.NaN;
}

function sizes(webRoot: string): Page["files"] {
  const assets = join(webRoot, "assets");
  const names = readdirSync(assets);
  return ["js", "css", "woff2"].map((kind) => {
    const contents = names
      .filter((name) => extname(name) === `.${kind}`)
      .map((name) => readFileSync(join(assets, name)));
    const kB = (bytes: number) => Math.round(bytes / 1000);
    const total = (of: readonly Uint8Array[]) => of.reduce((sum, b) => sum + b.byteLength, 0);
    return { kind, kB: kB(total(contents)), gzipKB: kB(total(contents.map((c) => gzipSync(c)))) };
  });
}
