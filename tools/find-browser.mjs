// Where a Chromium-family browser for the browser tests is. As a command it prints the path, and
// exits 1 when there is none.
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

/** Path of the browser to test with, or undefined. LATEWOOD_BROWSER, when set, is the only answer. */
export function findBrowser() {
  const chosen = process.env.LATEWOOD_BROWSER;
  if (chosen) return existsSync(chosen) ? chosen : undefined;
  return usualPlaces().find((path) => existsSync(path));
}

/** What to do when findBrowser found nothing. */
export function browserRemedy() {
  const chosen = process.env.LATEWOOD_BROWSER;
  if (chosen) {
    return `LATEWOOD_BROWSER names ${chosen}, which is not there. Correct it or unset it.`;
  }
  return "No browser was found. Install Chrome, Chromium or Edge (on Debian and Ubuntu: sudo apt-get install chromium), or set LATEWOOD_BROWSER to the path of one.";
}

if (isMain(import.meta.url)) {
  const path = findBrowser();
  if (path) console.log(path);
  else console.error(browserRemedy());
  process.exitCode = path ? 0 : 1;
}
