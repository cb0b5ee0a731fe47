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
import type { Io } from "./io.ts";

interface Request {
  readonly port: number;
  readonly open: boolean;
  readonly help: boolean;
}

const command = "latewood serve [--port N] [--open]";
const usage = `Right would be: ${command}`;
const help = `${command}: the quick sums on a screen, on this computer only.

  --port N  the first port to try (else ${defaultPort}; 0 takes any free one)
  --open    opens the page in the browser, where there is one to see it

It serves until Ctrl+C. Exit code: 0 stopped, 2 bad input or no free port, 3 a fault in Latewood.
`;

/** Reads the options, or returns the complaint about the first that cannot be read. */
function readRequest(argv: readonly string[]): Request | string {
  let port = defaultPort;
  let open = false;
  let help = false;
  for (let i = 0; i < argv.length; i += 1) {
    const [name, attached] = splitOption(argv[i] ?? "");
    if (name === "--open" && attached === undefined) open = true;
    else if ((name === "--help" && attached === undefined) || name === "-h") help = true;
    else if (name === "--port") {
      if (attached === undefined) i += 1;
      const text = attached ?? argv[i];
      const number = portNumber(text);
      if (number === undefined) {
        return `serve --port: read ${quoted(text)}. Right would be a whole number from 1 to 65535, such as ${defaultPort}, or 0 for any free port.`;
      }
      port = number;
    } else return `serve, argument ${i + 1}: read ${quoted(argv[i])}. ${usage}`;
  }
  return { port, open, help };
}

function splitOption(text: string): readonly [string, string | undefined] {
  const at = text.startsWith("--") ? text.indexOf("=") : -1;
  return at < 0 ? [text, undefined] : [text.slice(0, at), text.slice(at + 1)];
}

function portNumber(text: string | undefined): number | undefined {
  if (text === undefined || !/^\d{1,5}$/.test(text)) return undefined;
  const number = Number(text);
  return number <= 65_535 ? number : undefined;
}

const quoted = (text: string | undefined) => (text === undefined ? "nothing" : `"${text}"`);

// Beside the one-file program that the build makes.
const builtWebRoot = () => fileURLToPath(new URL("./web", import.meta.url));

/**
 * `latewood serve`: serves the screen until it is told to stop.
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
  const request = readRequest(argv);
  if (typeof request === "string") {
    io.err(`${request}\n`);
    return 2;
  }
  if (request.help) {
    io.out(help);
    return 0;
  }
  if (!existsSync(join(webRoot, "index.html"))) {
    io.err(`There is no built screen in ${webRoot}. Run npm start, or npm run build, first.\n`);
    return 3;
  }
  let server: RunningServer;
  try {
    server = await startServer({ webRoot, port: request.port });
  } catch (fault) {
    if (!(fault instanceof NoFreePort)) throw fault;
    io.err(
      `serve --port: ports ${fault.first} to ${fault.last} are all in use. Right would be a free one, or 0 for any.\n`,
    );
    return 2;
  }
  const stopped = stopSignal();
  for (const port of server.taken) {
    io.out(`Port ${port} is in use, perhaps by another Latewood.\n`);
  }
  io.out(`Latewood is at ${server.url}  (Ctrl+C stops it)\n`);
  if (request.open) openInBrowser(server.url);
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
