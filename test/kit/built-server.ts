import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const program = join(resolve(import.meta.dirname, "../.."), "dist", "latewood.mjs");

export interface BuiltServer {
  readonly url: string;
  /** Ends it without a word. */
  readonly kill: () => Promise<void>;
  /** Starts it again at its place, after it was killed. */
  readonly revive: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

type Running = { readonly child: ChildProcess; readonly url: string };

/** The built program, serving pieces of its own, which are gone when it is stopped. */
export async function startBuilt(): Promise<BuiltServer> {
  const data = mkdtempSync(join(tmpdir(), "latewood-data-"));
  let running = await serve(data, "0");
  const { url } = running;
  return {
    url,
    kill: () => ended(running.child, "SIGKILL"),
    revive: async () => {
      running = await serve(data, new URL(url).port);
      if (running.url !== url) throw new Error(`another program took ${url} meanwhile`);
    },
    stop: async () => {
      await ended(running.child, "SIGTERM");
      rmSync(data, { recursive: true, force: true });
    },
  };
}

function serve(data: string, port: string): Promise<Running> {
  const child = spawn(process.execPath, [program, "serve", "--port", port, "--data", data], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  return new Promise((settle, fail) => {
    let heard = "";
    const listen = (text: Buffer) => {
      heard += text.toString();
      const url = /Latewood is at (\S+)/.exec(heard)?.[1];
      if (url !== undefined) settle({ child, url });
    };
    child.stdout.on("data", listen);
    child.stderr.on("data", listen);
    child.on("error", fail);
    child.on("exit", (code) => fail(new Error(`serve ended with code ${code}:\n${heard}`)));
  });
}

function ended(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((settle) => {
    child.on("exit", () => settle());
    child.kill(signal);
  });
}
