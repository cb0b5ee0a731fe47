import type { Server } from "node:http";

/** Every port that was tried belongs to another program. */
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
 * @returns undefined when the port is taken on any of the addresses
 */
export async function listenOn(
  hosts: readonly string[],
  port: number,
  make: (port: () => number) => Server,
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
    server.once("error", (fault: NodeJS.ErrnoException) => {
      // EACCES: a port reserved for the system, or by Windows for itself.
      if (fault.code === "EADDRINUSE" || fault.code === "EACCES") settle("taken");
      else if (fault.code === "EADDRNOTAVAIL" || fault.code === "EAFNOSUPPORT") {
        settle("no such address");
      } else fail(fault);
    });
    server.listen({ host, port }, () => settle("listening"));
  });
}

function boundPort(server: Server): number {
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("not a TCP server");
  return address.port;
}
