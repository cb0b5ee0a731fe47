// `npm run mutate`: makes each constant of the formulas two per cent too large in turn, and counts
// how many of these faults the checks of published values find. Run by hand; it takes a minute.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { Check, isFromOutside, judge } from "../test/published/check.ts";
import { type Mutant, mutantsOf, mutated } from "./mutants.ts";
import { leftOutReason, unusedReasons } from "./mutants-left-out.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const rooms = ["src/wood", "src/mechanics", "src/stock", "src/making"];
const files = [
  ...rooms.flatMap((room) =>
    readdirSync(`${root}${room}`)
      .filter((name) => name.endsWith(".ts") && name !== "index.ts")
      .map((name) => `${room}/${name}`),
  ),
  "src/units/brands.ts",
  "src/units/dimensions.ts",
];

type Bundle = {
  readonly allChecks: readonly Check[];
  readonly judge: typeof judge;
  readonly isFromOutside: typeof isFromOutside;
};

const entry = `
  export { allChecks } from "./test/published/all.ts";
  export { judge, isFromOutside } from "./test/published/check.ts";
`;

/** All checks with one file's code replaced. */
async function load(file?: string, code?: string): Promise<Bundle> {
  const result = await build({
    stdin: { contents: entry, resolveDir: root, loader: "ts" },
    bundle: true,
    format: "esm",
    platform: "node",
    target: "es2022",
    write: false,
    logLevel: "silent",
    plugins: [
      {
        name: "mutant",
        setup: ({ onLoad }) => {
          onLoad({ filter: /\.ts$/ }, ({ path }) =>
            file !== undefined && path.replaceAll("\\", "/").endsWith(`/${file}`)
              ? { contents: code ?? "", loader: "ts" }
              : undefined,
          );
        },
      },
    ],
  });
  const text = result.outputFiles[0]?.text ?? "";
  return import(`data:text/javascript;base64,${Buffer.from(text).toString("base64")}`);
}

type Fate = { readonly mutant: Mutant; readonly red: number; readonly redFromOutside: number };

/** Code that no longer loads or throws has been found out too: by every check that rests on it. */
async function fateOf(mutant: Mutant, code: string): Promise<Fate> {
  let bundle: Bundle;
  try {
    bundle = await load(mutant.file, mutated(code, mutant));
  } catch (fault) {
    if (fault instanceof Error && "errors" in fault) throw fault;
    return { mutant, red: 1, redFromOutside: 1 };
  }
  const red = bundle.allChecks.filter((check) => {
    try {
      return !bundle.judge(check).passes;
    } catch {
      return true;
    }
  });
  return { mutant, red: red.length, redFromOutside: red.filter(bundle.isFromOutside).length };
}

const percent = (part: number, whole: number) =>
  `${part} of ${whole} (${((100 * part) / whole).toFixed(1)} %)`;

const sound = await load();
const failing = sound.allChecks.filter((check) => !sound.judge(check).passes);
if (failing.length > 0) {
  console.log(
    `${failing.length} checks fail as the code stands; mend those first (npm run verify).`,
  );
  process.exit(1);
}

const fates: Fate[] = [];
const leftOut: (readonly [Mutant, string])[] = [];
for (const file of files) {
  const code = readFileSync(`${root}${file}`, "utf8");
  for (const mutant of mutantsOf(file, code)) {
    const reason = leftOutReason(mutant);
    if (reason) leftOut.push([mutant, reason]);
    else fates.push(await fateOf(mutant, code));
  }
}

const lines: string[] = [];
function say(text: string): void {
  console.log(text);
  lines.push(...text.split("\n"));
}

const placeOf = ({ file, line, raw, text }: Mutant) => `  ${file}:${line}  ${raw}  in  ${text}`;
say(`Left out, ${leftOut.length} numbers:`);
for (const reason of new Set(leftOut.map(([, why]) => why))) {
  const own = leftOut.filter(([, why]) => why === reason).map(([mutant]) => mutant);
  say(`\n ${reason} (${own.length})\n${own.map(placeOf).join("\n")}`);
}
const survivors = fates.filter(({ red }) => red === 0);
const byHandOnly = fates.filter(({ red, redFromOutside }) => red > 0 && redFromOutside === 0);
say(`\nNot found, ${survivors.length}:`);
for (const { mutant } of survivors) say(placeOf(mutant));
say(`\nFound only by a printed equation worked by hand, ${byHandOnly.length}:`);
for (const { mutant } of byHandOnly) say(placeOf(mutant));

const found = fates.length - survivors.length;
say(`\n${files.length} files, ${sound.allChecks.length} checks.`);
say(`Found: ${percent(found, fates.length)}.`);
say(`By other people's figures alone: ${percent(found - byHandOnly.length, fates.length)}.`);
say(
  `Of all numbers, those left out counted as not found: ${percent(found, fates.length + leftOut.length)}.`,
);
say("The formula text beside each value is held to it by another test, not counted here.");
for (const reason of unusedReasons()) say(`This reason leaves nothing out: ${reason}`);

writeFileSync(
  `${root}docs/mutation.md`,
  [
    "# How many wrong constants would be found",
    "",
    "Written by `npm run mutate`: every number in the formulas is made 2 % larger, one at a time, and",
    "the checks of `test/published` are run. A number is found when at least one check turns red.",
    "",
    `Run on ${new Date().toISOString().slice(0, 10)}.`,
    "",
    "```",
    ...lines,
    "```",
    "",
  ].join("\n"),
);
