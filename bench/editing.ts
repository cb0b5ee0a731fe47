import { existsSync } from "node:fs";
import { join } from "node:path";
import { chromium, type Page } from "playwright-core";
import { demoPieces } from "../src/kinds/index.ts";
import { startServer } from "../src/server/index.ts";
import { demoShop } from "../src/shop/index.ts";
import { memoryStore } from "../src/store/index.ts";
import { findBrowser } from "../tools/find-browser.mjs";
import { type Spread, spread } from "./spread.ts";

const TIMES = 60;
const WARM = 15;

/**
 * From a keystroke in a field of the demo drop-leaf table until findings and picture show it, in a real
 * browser. Undefined where there is no page or no browser.
 */
export async function editing(webRoot: string): Promise<readonly Spread[]> {
  const executablePath = findBrowser();
  if (!executablePath || !existsSync(join(webRoot, "index.html"))) return [];
  const store = await memoryStore();
  for (const document of demoPieces()) store.create(document);
  const server = await startServer({ webRoot, port: 0, store, shop: demoShop });
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(`${server.url}#/pieces`);
    await page
      .getByRole("link", { name: /supper table/ })
      .first()
      .click();
    await page.waitForFunction(() => Number(document.querySelector("canvas")?.dataset.parts) > 20);
    return [
      await timed(page, "Width of a leaf", (i) => `${280 + (i % 40) / 2} mm`),
      await timed(page, "Pin towards the leaf", (i) => `${(20 + (i % 40)) / 100} mm`),
    ];
  } finally {
    await browser.close();
    await server.close();
  }
}

async function timed(page: Page, label: string, text: (i: number) => string): Promise<Spread> {
  const times: number[] = [];
  for (let i = 0; i < WARM + TIMES; i++) {
    const took = await page.getByLabel(label, { exact: true }).evaluate(keystroke, text(i));
    if (i >= WARM) times.push(took);
  }
  return spread(`a keystroke in “${label}” until findings and picture show it`, times);
}

/**
 * In the page: types, then looks at every frame whether the worker has told and the picture stands. It
 * is sent there as text, so nothing in it has a name that the loader would want to keep.
 */
async function keystroke(field: Element, text: string): Promise<number> {
  const input = field as HTMLInputElement;
  const canvas = document.querySelector("canvas");
  const model = document.querySelector<HTMLElement>("[data-worked]");
  if (!canvas || !model) throw new Error("there is no model to look at");
  const [worked, frames] = [model.dataset.worked, Number(canvas.dataset.frames)];
  const from = performance.now();
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set?.call(input, text);
  input.dispatchEvent(new Event("input", { bubbles: true }));
  for (;;) {
    await new Promise((settle) => requestAnimationFrame(settle));
    const isTold = model.dataset.worked !== worked;
    if (isTold && Number(canvas.dataset.frames) > frames) return performance.now() - from;
  }
}
