import { createServer, type Server } from "node:http";
import { getRequestListener } from "@hono/node-server";
import type { Holdings } from "./api/api.ts";
import { routes } from "./app.ts";
import { refusal } from "./guard.ts";
import { strictHeaders } from "./headers.ts";
import { listenOn, NoFreePort } from "./listen.ts";

/** The port tried first when none is asked for. */
export const defaultPort = 5217;
const portsTried = 20;

export interface ServerOptions extends Holdings {
  /** Folder with the built screen. */
  readonly webRoot: string;
  /** First port to try; 0 takes any free one. */
  readonly port?: number;
  /** A loopback address, to listen on it alone; both families when left out. */
  readonly host?: "127.0.0.1" | "::1";
}

export interface RunningServer {
  readonly url: string;
  readonly port: number;
  /** Ports that were tried first and were in use, by whatever it may be: also another Latewood. */
  readonly taken: readonly number[];
  /** Stops listening and ends every connection. */
  readonly close: () => Promise<void>;
}

/**
 * Serves the built screen, and the pieces of a store, on this computer only.
 *
 * @throws NoFreePort when the port asked for and the nineteen after it are all taken
 */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  // Both families by default: "localhost" may mean either, and were only one ours, another program
  // could answer on the other under our address.
  const hosts = options.host === undefined ? ["127.0.0.1", "::1"] : [options.host];
  const first = options.port ?? defaultPort;
  const last = first === 0 ? 0 : Math.min(first + portsTried - 1, 65_535);
  const answer = getRequestListener(routes(options.webRoot, options).fetch);
  const taken: number[] = [];
  for (let port = first; port <= last; port += 1) {
    const listening = await listenOn(hosts, port, (bound) => guarded(answer, bound), tell);
    if (listening !== undefined) {
      const { servers, port: bound } = listening;
      return {
        url: `http://localhost:${bound}/`,
        port: bound,
        taken,
        close: async () => {
          await Promise.all(servers.map(closeServer));
        },
      };
    }
    taken.push(port);
  }
  throw new NoFreePort(first, last);
}

/** Such as no file handles left for a caller: that caller is lost, the next may be served. */
const tell = (fault: Error) =>
  console.error(`The server met trouble and goes on: ${fault.message}`);

type Answer = ReturnType<typeof getRequestListener>;

function guarded(answer: Answer, port: () => number): Server {
  return createServer((request, response) => {
    for (const [name, value] of strictHeaders) response.setHeader(name, value);
    const refused = refusal(request, port());
    if (refused === undefined) return void answer(request, response);
    response.writeHead(refused.status, {
      "content-type": "text/plain; charset=utf-8",
      connection: "close",
    });
    response.end(`${refused.reason}\n`);
  });
}

function closeServer(server: Server): Promise<void> {
  return new Promise((settle) => {
    server.close(() => settle());
    server.closeAllConnections();
  });
}
