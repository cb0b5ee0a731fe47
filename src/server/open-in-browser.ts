import { spawn } from "node:child_process";

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * The command which opens an address on this computer, or undefined where nobody would see it: in
 * continuous integration, without a display, or in a remote terminal.
 *
 * @param url  address to open
 */
export function openCommand(
  url: string,
  platform: NodeJS.Platform,
  env: Environment,
): readonly [command: string, ...args: string[]] | undefined {
  if (env.CI !== undefined && env.CI !== "") return undefined;
  if (platform === "win32") return ["cmd", "/c", "start", "", url];
  if (platform === "darwin") return env.SSH_CONNECTION ? undefined : ["open", url];
  return env.DISPLAY || env.WAYLAND_DISPLAY ? ["xdg-open", url] : undefined;
}

/**
 * Opens the address in the user's browser where that is possible. Never throws: the address is
 * printed as well, and a missing opener is no reason to stop serving.
 *
 * @returns whether it was tried
 */
export function openInBrowser(url: string): boolean {
  const command = openCommand(url, process.platform, process.env);
  if (command === undefined) return false;
  const [name, ...args] = command;
  const child = spawn(name, args, { stdio: "ignore", detached: true });
  child.on("error", () => {});
  child.unref();
  return true;
}
