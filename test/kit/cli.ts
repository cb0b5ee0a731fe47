import { run } from "../../src/cli/index.ts";

export type Heard = { readonly code: number; readonly out: string; readonly err: string };

/** Runs a command in this process, with text or pieces as its standard input. */
export async function hear(
  argv: readonly string[],
  input: string | readonly (string | Uint8Array)[] = "",
): Promise<Heard> {
  const out: string[] = [];
  const err: string[] = [];
  const io = {
    out: (text: string) => void out.push(text),
    err: (text: string) => void err.push(text),
  };
  async function* pieces() {
    yield* typeof input === "string" ? [input] : input;
  }
  const code = await run(argv, io, pieces());
  return { code, out: out.join(""), err: err.join("") };
}

export type ProblemLine = {
  readonly code: string;
  readonly place: string;
  readonly reason: string;
  readonly remedy: string;
};

type Figure = {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly low?: number;
  readonly high?: number;
  readonly working?: unknown;
};

/** A line of `--json` or `--batch`. */
export type AnswerLine = {
  readonly row?: number;
  readonly topic: string;
  readonly given?: Readonly<
    Record<string, string | { value: number; unit: string; source: string }>
  >;
  readonly results?: readonly Figure[];
  readonly problems?: readonly ProblemLine[];
  readonly remarks?: readonly string[];
  readonly cautions?: readonly { readonly says: string; readonly source: string }[];
};

/** The lines of a batch's answer. */
export const linesOf = (out: string): readonly AnswerLine[] =>
  out
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => JSON.parse(line));
