import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { root } from "./sources.ts";

const read = (path: string) => readFileSync(join(root, path), "utf8");

/** Everything that is committed, or will be with the next commit; in an unpacked archive, all. */
function ourFiles(): readonly string[] {
  if (existsSync(join(root, ".git"))) {
    const list = ["ls-files", "-z", "--cached", "--others", "--exclude-standard"];
    const names = execFileSync("git", list, { cwd: root, encoding: "utf8" }).split("\0");
    return names.filter((name) => name !== "" && existsSync(join(root, name)));
  }
  return readdirSync(root, { recursive: true, encoding: "utf8" }).filter(
    (name) => !/(^|[\\/])(node_modules|dist)([\\/]|$)/.test(name) && /\.\w+$/.test(name),
  );
}

/** Relative targets of links and pictures, in Markdown and in HTML within it. */
function linksOf(text: string): readonly string[] {
  const withoutCode = text.replace(/```[\s\S]*?```/g, "").replace(/`[^`\n]*`/g, "");
  const inMarkdown = [...withoutCode.matchAll(/\]\(<?([^)\s>]+)/g)];
  const byName = [...withoutCode.matchAll(/^\[[^\]]+\]:\s*(\S+)/gm)];
  const inHtml = [...withoutCode.matchAll(/\b(?:src|srcset|href)="([^"]+)"/g)];
  return [...inMarkdown, ...byName, ...inHtml]
    .map((match) => match[1] ?? "")
    .filter((target) => !/^([a-z][a-z+.-]*:|#)/i.test(target))
    .map((target) => decodeURIComponent(target.replace(/[#?].*$/, "")));
}

function deadLinks(path: string): readonly string[] {
  return linksOf(read(path)).filter((link) => !existsSync(join(root, dirname(path), link)));
}

/** Words that tie a file to the machine it was written on, or to one place packages come from. */
const machineBound: readonly (readonly [what: string, pattern: RegExp])[] = [
  ["a path of a machine", /(?<![\w.:\-/])\/(?:work|tmp|root|home\/\w+|Users\/\w+)(?![\w-])/],
  ["a path of a machine", /\b[A-Z]:\\Users\\/],
  ["the host of a package registry", /\bregistry\.[a-z0-9-]+\.[a-z]{2,}/i],
  ["where a package was fetched from", /"resolved":\s*"/],
];

const boundTo = (text: string) =>
  machineBound.filter(([, pattern]) => pattern.test(text)).map(([what]) => what);

describe("documents", () => {
  const documents = [
    "README.md",
    ...(existsSync(join(root, "docs"))
      ? readdirSync(join(root, "docs"))
          .filter((name) => name.endsWith(".md"))
          .map((name) => `docs/${name}`)
      : []),
  ];

  test.each(documents)("every relative link in %s leads somewhere", (path) => {
    expect(deadLinks(path)).toEqual([]);
  });

  test("links are found in all their forms, code left aside", () => {
    const text =
      '[a](docs/a.md#part) ![b](<b.png>) <img src="c.png"> `[no](no.md)` [w](https://a.example)\n[d]: d.md\n[e](#e)';
    expect(linksOf(text)).toEqual(["docs/a.md", "b.png", "d.md", "c.png"]);
  });

  test("every dependency says what it is for", () => {
    const { dependencies, devDependencies } = JSON.parse(read("package.json"));
    const lines = read("docs/dependencies.md").split("\n");
    const names = Object.keys({ ...dependencies, ...devDependencies });
    expect(names.length).toBeGreaterThan(0);
    expect(names.filter((name) => !lines.some((line) => line.includes(`\`${name}\``)))).toEqual([]);
  });
});

describe("our files", () => {
  const texts = ourFiles()
    .map((path) => [path, readFileSync(join(root, path))] as const)
    .filter(([, bytes]) => !bytes.includes(0));

  test("none is bound to a machine or a registry", () => {
    expect(texts.length).toBeGreaterThan(10);
    const bound = texts.flatMap(([path, bytes]) =>
      boundTo(bytes.toString("utf8")).map((what) => `${path}: ${what}`),
    );
    expect(bound).toEqual([]);
  });

  test("a planted binding is caught", () => {
    const slash = "/";
    for (const folder of ["work", "tmp", "root", "home/ann", "Users/ann"]) {
      expect(boundTo(`see ${slash}${folder}/latewood`)).toEqual(["a path of a machine"]);
    }
    expect(boundTo(["C:", "Users", "ann"].join("\\"))).toEqual(["a path of a machine"]);
    const host = ["registry", "packages", "example"].join(".");
    expect(boundTo(`https:${slash}${slash}${host}`)).toHaveLength(1);
    expect(boundTo(`"resolved"${":"} "x"`)).toHaveLength(1);
    expect(boundTo(`order of work/time, src/work.ts, a.example${slash}work${slash}b`)).toEqual([]);
  });
});

describe("rooms", () => {
  const folders = readdirSync(join(root, "src"), { withFileTypes: true })
    .filter((found) => found.isDirectory())
    .map((found) => found.name);

  // Nothing may import the two outermost rooms, so what opens them is where they start.
  const doors: Readonly<Record<string, string>> = { cli: "main.ts", web: "main.tsx" };

  test.each(folders)("%s has a README and a door", (room) => {
    const wanted = ["README.md", doors[room] ?? "index.ts"];
    expect(wanted.filter((name) => !existsSync(join(root, "src", room, name)))).toEqual([]);
  });
});
