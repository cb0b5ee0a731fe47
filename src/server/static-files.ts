import { readFile, realpath } from "node:fs/promises";
import { extname, join, sep } from "node:path";

/** A file of the web root, ready to be sent. */
export interface StaticFile {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly type: string;
  readonly caching: string;
}

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".webmanifest": "application/manifest+json; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
};

// vite puts a hash of the content into these names, so what a name stands for never changes.
const hashedName = /^\/assets\/.+-[\w-]{8}\.\w+$/;

/** The path's parts, or undefined when it could leave the web root or reach a hidden file. */
function safeParts(urlPath: string): readonly string[] | undefined {
  let decoded: string;
  try {
    decoded = decodeURIComponent(urlPath);
  } catch {
    // Not valid percent-encoding: no file has such a name, so the caller's 404 is the answer.
    return undefined;
  }
  const parts = decoded.split("/").slice(1);
  const isUnsafe = (part: string) => part.startsWith(".") || /[\\:\0]/.test(part);
  return parts.some(isUnsafe) ? undefined : parts;
}

/**
 * Reads the file a request path stands for; a path ending in a slash stands for its index.html.
 *
 * @param webRoot  folder with the built screen
 * @param urlPath  path of the request, still percent-encoded, beginning with a slash
 * @returns undefined when there is no such file inside the web root
 */
export async function staticFile(
  webRoot: string,
  urlPath: string,
): Promise<StaticFile | undefined> {
  const parts = safeParts(urlPath.endsWith("/") ? `${urlPath}index.html` : urlPath);
  if (parts === undefined) return undefined;
  try {
    const root = await realpath(webRoot);
    const file = await realpath(join(root, ...parts));
    // A link inside the web root may still point out of it.
    if (!file.startsWith(root + sep)) return undefined;
    return {
      bytes: new Uint8Array(await readFile(file)),
      type: types[extname(file)] ?? "application/octet-stream",
      caching: hashedName.test(urlPath) ? "public, max-age=31536000, immutable" : "no-cache",
    };
  } catch (fault) {
    if (isAbsence(fault)) return undefined;
    throw fault;
  }
}

function isAbsence(fault: unknown): boolean {
  const code = fault instanceof Error && "code" in fault ? fault.code : undefined;
  return ["ENOENT", "ENOTDIR", "EISDIR", "ENAMETOOLONG"].includes(String(code));
}
