import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll } from "vitest";
import { browserRemedy, findBrowser } from "../../tools/find-browser.mjs";
import { type BuiltServer, startBuilt } from "./built-server.ts";

interface View {
  /** Path and fragment after the server's address. */
  readonly path?: string;
  readonly width?: number;
  readonly height?: number;
  readonly theme?: "light" | "dark";
  /** Errors in the console that the test asks for, and that are no fault of the page. */
  readonly quiet?: RegExp;
}

export interface Latewood {
  /** Address of the running server, ending in a slash. */
  readonly url: () => string;
  /** Opens a page of its own, in a profile of its own, and waits until it is loaded. */
  readonly open: (view?: View) => Promise<Page>;
  /** Ends the server without a word, as a power cut does. */
  readonly kill: () => Promise<void>;
  /** Starts it again, on the same pieces and the same port. */
  readonly revive: () => Promise<void>;
}

/**
 * Starts the built server and a browser for the tests of one file, and ends both after them. A test
 * fails when one of its pages logged an error, threw one, or asked anybody but the server.
 */
export function startLatewood(): Latewood {
  let server: BuiltServer | undefined;
  let browser: Browser | undefined;
  let contexts: BrowserContext[] = [];
  let faults: string[] = [];

  beforeAll(async () => {
    server = await startBuilt();
    browser = await launch();
  });
  afterAll(async () => {
    await browser?.close();
    await server?.stop();
  });
  afterEach(async () => {
    await Promise.all(contexts.map((context) => context.close()));
    const found = faults;
    contexts = [];
    faults = [];
    if (found.length > 0) throw new Error(`The page is at fault:\n${found.join("\n")}`);
  });

  const running = () => {
    if (server === undefined) throw new Error("the server runs only within tests");
    return server;
  };
  const url = () => running().url;
  return {
    url,
    kill: () => running().kill(),
    revive: () => running().revive(),
    open: async ({ path = "", width = 1280, height = 800, theme = "light", quiet } = {}) => {
      if (browser === undefined) throw new Error("the browser runs only within tests");
      const context = await browser.newContext({
        viewport: { width, height },
        colorScheme: theme,
        reducedMotion: "reduce",
      });
      contexts.push(context);
      await watch(context, new URL(url()).host, (fault) => {
        if (!quiet?.test(fault)) faults.push(fault);
      });
      const page = await context.newPage();
      await page.goto(new URL(path, url()).href, { waitUntil: "load" });
      return page;
    },
  };
}

async function launch(): Promise<Browser> {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(browserRemedy());
  // Chromium's sandbox refuses to run as root, which is who containers run as.
  const asRoot = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
  return chromium.launch({
    executablePath,
    args: [
      ...asRoot,
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}

async function watch(
  context: BrowserContext,
  host: string,
  report: (fault: string) => void,
): Promise<void> {
  await context.route("**/*", (route) => {
    const asked = new URL(route.request().url());
    if (asked.host === host || !/^(https?|wss?):$/.test(asked.protocol)) return route.continue();
    report(`asked for ${asked.href}`);
    return route.abort();
  });
  await context.routeWebSocket(/.*/, (socket) => report(`opened a socket to ${socket.url()}`));
  context.on("console", (message) => {
    if (message.type() === "error") report(`console: ${message.text()}`);
  });
  context.on("weberror", (fault) =>
    report(`threw: ${fault.error().stack ?? fault.error().message}`),
  );
}

/** One accessibility rule broken on a page. */
export interface AxeViolation {
  readonly id: string;
  readonly says: string;
  readonly targets: readonly string[];
}

/** What axe-core finds wrong with the page as it stands. */
export async function axeViolations(page: Page): Promise<readonly AxeViolation[]> {
  // Evaluated through the browser's debugger, which the page's content-security policy leaves be.
  await page.evaluate(
    readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"),
  );
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: typeof import("axe-core") };
    const { violations } = await axe.run(document);
    return violations.map(({ id, help, nodes }) => ({
      id,
      says: help,
      targets: nodes.map((node) => node.target.join(" ")),
    }));
  });
}
