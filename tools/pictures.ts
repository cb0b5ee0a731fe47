// Takes the pictures of the README from the built page: `npm run build && npm run pictures`.
import { chromium } from "playwright-core";
import { startServer } from "../src/server/index.ts";
import { demoShop } from "../src/shop/index.ts";
import { memoryStore } from "../src/store/index.ts";
import { findBrowser } from "./find-browser.mjs";

const shots = [
  { file: "cup-day", topic: "cup", width: 1440, height: 900, theme: "light" },
  { file: "lathe-evening", topic: "lathe-speed", width: 1024, height: 768, theme: "dark" },
  { file: "tip-phone", topic: "tip", width: 390, height: 844, theme: "light" },
] as const;

const executablePath = findBrowser();
if (!executablePath) throw new Error("no browser was found; see npm test for how to get one");
const server = await startServer({
  webRoot: "dist/web",
  port: 0,
  store: await memoryStore(),
  shop: demoShop,
});
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
for (const { file, topic, width, height, theme } of shots) {
  const page = await browser.newPage({ viewport: { width, height }, colorScheme: theme });
  await page.goto(`${server.url}#/${topic}`);
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(200);
  await page.screenshot({ path: `docs/pictures/${file}.png` });
  console.log(`docs/pictures/${file}.png`);
}
await browser.close();
await server.close();
