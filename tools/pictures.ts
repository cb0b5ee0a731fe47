// Takes the pictures of the README from the built page: `npm run build && npm run pictures`.
import { chromium } from "playwright-core";
import { demoPieces } from "../src/kinds/index.ts";
import { startServer } from "../src/server/index.ts";
import { demoShop } from "../src/shop/index.ts";
import { memoryStore } from "../src/store/index.ts";
import { findBrowser } from "./find-browser.mjs";

type Shot = {
  readonly file: string;
  /** behind the hash; `demo` stands for the invented drop-leaf table */
  readonly path: string;
  readonly width: number;
  readonly height: number;
  readonly theme: "light" | "dark";
  /** buttons to press, in turn */
  readonly press?: readonly string[];
  /** what is brought into sight before */
  readonly show?: string;
};

const shots: readonly Shot[] = [
  {
    file: "shape-day",
    path: "demo/shape",
    width: 1440,
    height: 900,
    theme: "light",
    press: ["Back leaf up"],
  },
  {
    file: "leaf-joint-day",
    path: "demo/shape",
    width: 1440,
    height: 900,
    theme: "light",
    press: ["Closed"],
    show: ".leaf-turn",
  },
  { file: "papers-day", path: "demo/papers", width: 1440, height: 900, theme: "light" },
  {
    file: "parts-evening",
    path: "demo/shape",
    width: 1024,
    height: 768,
    theme: "dark",
    press: ["Parts", "R1", "Draw apart"],
  },
  { file: "shape-phone", path: "demo/shape", width: 390, height: 844, theme: "light" },
  { file: "cup-day", path: "cup", width: 1440, height: 900, theme: "light" },
];

const executablePath = findBrowser();
if (!executablePath) throw new Error("no browser was found; see npm test for how to get one");
const store = await memoryStore();
const [demo] = demoPieces()
  .map((document) => store.create(document))
  .slice(-1);
const server = await startServer({ webRoot: "dist/web", port: 0, store, shop: demoShop });
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
for (const { file, path, width, height, theme, press = [], show } of shots) {
  const page = await browser.newPage({ viewport: { width, height }, colorScheme: theme });
  await page.goto(`${server.url}#/${path.replace(/^demo/, `piece/${demo}`)}`);
  await page.evaluate(() => document.fonts.ready);
  if (path.startsWith("demo")) await page.locator("canvas[data-frames]").waitFor();
  for (const name of press) await page.getByRole("button", { name, exact: true }).click();
  // The shapes come from a worker, one after the other.
  await page.waitForTimeout(path.endsWith("papers") ? 8000 : 1500);
  if (show) await page.locator(show).scrollIntoViewIfNeeded();
  await page.screenshot({ path: `docs/pictures/${file}.png` });
  console.log(`docs/pictures/${file}.png`);
}
await browser.close();
await server.close();
