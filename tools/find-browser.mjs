// Where a Chromium-family browser for the browser tests is. As a command it prints the path, and
// exits 1 when there is none.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { isMain } from "./ensure.mjs";

const names = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "microsoft-edge",
  "microsoft-edge-stable",
];

function usualPlaces() {
  const { env } = process;
  if (process.platform === "darwin") {
    const apps = ["/Applications", join(env.HOME ?? "", "Applications")];
    return ["Google Chrome", "Chromium", "Microsoft Edge"].flatMap((name) =>
      apps.map((folder) => `${folder}/${name}.app/Contents/MacOS/${name}`),
    );
  }
  if (process.platform === "win32") {
    const folders = [env.PROGRAMFILES, env["PROGRAMFILES(X86)"], env.LOCALAPPDATA];
    const programs = [
      ["Google", "Chrome", "Application", "chrome.exe"],
      ["Chromium", "Application", "chrome.exe"],
      ["Microsoft", "Edge", "Application", "msedge.exe"],
    ];
    return folders
      .filter((folder) => folder !== undefined)
      .flatMap((folder) => programs.map((parts) => join(folder, ...parts)));
  }
  const folders = [...(env.PATH ?? "").split(delimiter).filter(Boolean), "/snap/bin"];
  return [
    "/usr/bin/chromium",
    ...names.flatMap((name) => folders.map((folder) => join(folder, name))),
  ];
}

/**
 * Whether a candidate is a browser that starts. A file of the right name need not be: Ubuntu has a
 * chromium-browser that only says how to get one.
 */
function starts(path) {
  if (!existsSync(path)) return false;
  // On Windows the question opens a window and is not answered.
  if (process.platform === "win32") return true;
  const { status, stdout } = spawnSync(path, ["--version"], {
    encoding: "utf8",
    timeout: 20_000,
    stdio: ["ignore", "pipe", "ignore"],
  });
  return status === 0 && /\d+\.\d+/.test(stdout);
}

let known;

/** Path of the browser to test with, or undefined. LATEWOOD_BROWSER, when set, is the only answer. */
export function findBrowser() {
  const chosen = process.env.LATEWOOD_BROWSER;
  if (chosen) return starts(chosen) ? chosen : undefined;
  known ??= usualPlaces().find(starts);
  return known;
}

/** What to do when findBrowser found nothing. */
export function browserRemedy() {
  const chosen = process.env.LATEWOOD_BROWSER;
  if (chosen) {
    const why = existsSync(chosen) ? "does not answer --version as a browser does" : "is not there";
    return `LATEWOOD_BROWSER names ${chosen}, which ${why}. Correct it or unset it.`;
  }
  return "No browser that starts was found. Install Chrome, Chromium or Edge (on Debian: sudo apt-get install chromium; on Ubuntu: sudo snap install chromium), or set LATEWOOD_BROWSER to the path of one.";
}

if (isMain(import.meta.url)) {
  const path = findBrowser();
  if (path) console.log(path);
  else console.error(browserRemedy());
  process.exitCode = path ? 0 : 1;
}
