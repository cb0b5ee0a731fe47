import type { Server } from "node:http";

/** Every port that was tried is in use. */
export class NoFreePort extends Error {
  readonly first: number;
  readonly last: number;
  constructor(first: number, last: number) {
    super(`no free port from ${first} to ${last}`);
    this.first = first;
    this.last = last;
  }
}

interface Listening {
  readonly servers: readonly Server[];
  readonly port: number;
}

/**
 * Listens at one port on every given address.
 *
 * @param hosts  addresses; those after the first may be missing on this computer
 * @param port  port number; 0 takes any that is free on all of them
 * @param make  makes a server; the port it is given to read is known once it listens
 * @param trouble  hears of every error of a server that listens already
 * @returns undefined when the port is taken on any of the addresses
 */
export async function listenOn(
  hosts: readonly string[],
  port: number,
  make: (port: () => number) => Server,
  trouble: (fault: Error) => void,
): Promise<Listening | undefined> {
  // With 0 the first address gets a port which the second may find taken; then draw again.
  for (let draw = 0; draw < (port === 0 ? 10 : 1); draw += 1) {
    const servers: Server[] = [];
    let bound = port;
    let isTaken = false;
    for (const host of hosts) {
      const server = make(() => bound);
      const outcome = await listen(server, host, bound);
      if (outcome === "listening") {
        server.on("error", trouble);
        servers.push(server);
        bound = boundPort(server);
      }
      isTaken ||= outcome === "taken";
    }
    if (!isTaken && servers.length > 0) return { servers, port: bound };
    await Promise.all(servers.map((server) => new Promise((settle) => server.close(settle))));
  }
  return undefined;
}

type Outcome = "listening" | "taken" | "no such address";

function listen(server: Server, host: string, port: number): Promise<Outcome> {
  return new Promise((settle, fail) => {
    // Both are taken off again by whichever comes: left on, it would swallow a later error.
    const onError = (fault: NodeJS.ErrnoException) => {
      server.off("listening", onListening);
      // EACCES: a port reserved for the system, or by Windows for itself.
      if (fault.code === "EADDRINUSE" || fault.code === "EACCES") settle("taken");
      else if (fault.code === "EADDRNOTAVAIL" || fault.code === "EAFNOSUPPORT") {
        settle("no such address");
      } else fail(fault);
    };
    const onListening = () => {
      server.off("error", onError);
      settle("listening");
    };
    server.once("error", onError);
    server.once("listening", onListening);
    server.listen({ host, port });
  });
}

function boundPort(server: Server): number {
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("not a TCP server");
  return address.port;
}
