import type { IncomingMessage } from "node:http";

/** A refusal, answered as plain text. */
export interface Refusal {
  readonly status: number;
  readonly reason: string;
}

const ownNames = ["localhost", "127.0.0.1", "[::1]"];

function ownHosts(port: number): readonly string[] {
  const withPort = ownNames.map((name) => `${name}:${port}`);
  return port === 80 ? [...withPort, ...ownNames] : withPort;
}

/**
 * Why a request must not be answered, or undefined when it may be.
 *
 * Being on the loopback address does not keep other web pages out: a page may point a name of its
 * own at 127.0.0.1 and read our answers, which the Host check stops, or send a form to us blindly,
 * which the Origin check stops.
 *
 * @param request  as Node received it, before anything rewrote its address
 * @param port  the port this server listens on
 */
export function refusal(request: IncomingMessage, port: number): Refusal | undefined {
  const hosts = ownHosts(port);
  const host = request.headers.host?.toLowerCase();
  // Node keeps only the first of several Host lines; somebody who sends two is up to something.
  const hostLines = request.rawHeaders.filter((text, i) => i % 2 === 0 && /^host$/i.test(text));
  if (host === undefined || hostLines.length !== 1 || !hosts.includes(host)) {
    return { status: 421, reason: `This server answers only as http://localhost:${port}/.` };
  }
  if (request.url?.startsWith("/") !== true) {
    return { status: 400, reason: "The request must name a path that begins with /." };
  }
  const origin = request.headers.origin?.toLowerCase();
  const isReading = request.method === "GET" || request.method === "HEAD";
  if (!isReading && origin !== undefined && !hosts.some((own) => origin === `http://${own}`)) {
    return { status: 403, reason: "Another page may not send anything here." };
  }
  return undefined;
}
