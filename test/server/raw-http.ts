import { connect } from "node:net";

export interface RawAnswer {
  readonly status: number;
  readonly headers: ReadonlyMap<string, string>;
  readonly body: string;
}

/**
 * Sends lines as they are over a socket of its own. Node's client and fetch would set Host
 * themselves and tidy the path, which is just what must not happen here.
 */
export function ask(port: number, lines: readonly string[]): Promise<RawAnswer> {
  return new Promise((settle, fail) => {
    const socket = connect(port, "127.0.0.1");
    let heard = "";
    socket.setEncoding("utf8");
    socket.on("error", fail);
    socket.on("data", (text) => {
      heard += text;
    });
    socket.on("close", () => settle(readAnswer(heard)));
    socket.write(`${[...lines, "Connection: close"].join("\r\n")}\r\n\r\n`);
  });
}

function readAnswer(text: string): RawAnswer {
  const [head = "", ...rest] = text.split("\r\n\r\n");
  const [first = "", ...lines] = head.split("\r\n");
  const headers = lines.map((line): [string, string] => {
    const at = line.indexOf(":");
    return [line.slice(0, at).toLowerCase(), line.slice(at + 1).trim()];
  });
  return {
    status: Number(first.split(" ")[1]),
    headers: new Map(headers),
    body: rest.join("\r\n\r\n"),
  };
}
