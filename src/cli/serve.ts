import { existsSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import {
  defaultPort,
  NoFreePort,
  openInBrowser,
  type RunningServer,
  startServer,
} from "../server/index.ts";
import type { Shop } from "../shop/index.ts";
import { Problem } from "../worked/index.ts";
import { complain } from "./complain.ts";
import { dataFolder } from "./data-folder.ts";
import { gathered, settled } from "./gathered.ts";
import type { Io } from "./io.ts";
import { type Kept, keepStore } from "./keep-store.ts";
import { shopOf } from "./shop-file.ts";
import { readWords } from "./words.ts";

const help = `latewood serve [options]: pieces and quick sums on a screen, on this computer only.

  --data FOLDER  where the pieces are kept (else LATEWOOD_DATA, else .latewood in your own folder)
  --shop FILE    the shop's file (else the demo shop)
  --port N       the first port to try (else ${defaultPort}; 0 takes any free one)
  --open         opens the page in the browser, where there is one to see it

It serves until Ctrl+C. Exit code: 0 stopped, 2 bad input, no free port, or pieces that cannot be
kept, 3 a fault in Latewood.
`;

function portNumber(text: string): number {
  if (/^\d{1,5}$/.test(text) && Number(text) <= 65_535) return Number(text);
  throw new Problem(
    "port-unreadable",
    `--port, “${text.slice(0, 24)}”`,
    "This is no port.",
    `Use a whole number from 1 to 65535, such as ${defaultPort}, or 0 for any free port.`,
  );
}

// Beside the one-file program that the build makes.
const builtWebRoot = () => fileURLToPath(new URL("./web", import.meta.url));

/**
 * `latewood serve`: serves the screen and the pieces until it is told to stop.
 *
 * @param argv  what follows the word `serve`
 * @param io  where to write
 * @param webRoot  folder with the built screen; tests give their own
 * @returns exit code: 0 stopped on request, 2 bad input, 3 nothing to serve
 */
export async function serve(
  argv: readonly string[],
  io: Io,
  webRoot: string = builtWebRoot(),
): Promise<number> {
  const { texts, on, ...spoken } = readWords(
    {
      of: "latewood serve",
      valued: { data: "pieces", shop: "shop.json", port: String(defaultPort) },
      switches: ["open"],
    },
    argv,
  );
  const problems = [...spoken.problems];
  const port = gathered(problems, () => portNumber(texts.port ?? String(defaultPort)));
  const folder = gathered(problems, () => dataFolder(texts.data));
  if (on.has("help") && problems.length === 0) {
    io.out(help);
    return 0;
  }
  const shop = await settled(problems, () => shopOf(texts.shop, problems));
  if (problems.length > 0 || port === undefined || !folder || !shop)
    return complain(io, false, problems);
  if (!existsSync(join(webRoot, "index.html"))) {
    io.err(`There is no built screen in ${webRoot}. Run npm start, or npm run build, first.\n`);
    return 3;
  }
  const kept = await settled(problems, () => keepStore(folder, io));
  if (!kept) return complain(io, false, problems);
  try {
    return await served({ webRoot, port, shop, kept, folder, open: on.has("open") }, io);
  } finally {
    kept.close();
  }
}

type Serving = {
  readonly webRoot: string;
  readonly port: number;
  readonly shop: Shop;
  readonly kept: Kept;
  readonly folder: string;
  readonly open: boolean;
};

async function served(serving: Serving, io: Io): Promise<number> {
  const { webRoot, port, shop, kept, folder } = serving;
  let server: RunningServer;
  try {
    server = await startServer({ webRoot, port, shop, store: kept.store });
  } catch (fault) {
    if (!(fault instanceof NoFreePort)) throw fault;
    const reason = `Ports ${fault.first} to ${fault.last} are all in use.`;
    const remedy = "Name a free one, or 0 for any.";
    return complain(io, false, [new Problem("port-taken", "--port", reason, remedy)]);
  }
  const stopped = stopSignal();
  for (const taken of server.taken) {
    io.out(`Port ${taken} is in use, perhaps by another Latewood.\n`);
  }
  io.out(`Latewood is at ${server.url}  (Ctrl+C stops it)\n`);
  io.out(`The pieces are kept in ${folder}\n`);
  if (serving.open) openInBrowser(server.url);
  await stopped;
  await server.close();
  return 0;
}

// Listening stays on after the first signal: npm and the terminal may each send one, and a second
// must not cut the closing short.
function stopSignal(): Promise<void> {
  return new Promise((settle) => {
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
      process.on(signal, () => settle());
    }
  });
}
