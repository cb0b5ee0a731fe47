import { type Answers, type Asks, onSide } from "../asking/index.ts";
import { type LengthUnit, type Purpose, printQuantity, type UnitName } from "../units/index.ts";
import { type Caution, type Finding, Problem, problemAt, type Worked } from "../worked/index.ts";

/** One figure of an answer; where the truth is a range, with its ends. */
export type Result = {
  readonly name: string;
  /** what it is, where the working's own words are not plain enough */
  readonly says?: string;
  readonly worked: Worked;
  readonly low?: Worked;
  readonly high?: Worked;
  /** for lengths: how finely to print */
  readonly purpose?: Purpose;
};

export type Answer = {
  /** the first is what was asked; the others go with it */
  readonly results: readonly Result[];
  /** what the figures mean, in a sentence or two */
  readonly remarks: readonly string[];
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
};

/** A quick sum. */
export type Topic<A extends Asks = Asks> = {
  readonly name: string;
  readonly title: string;
  /** what it tells, in one line */
  readonly tells: string;
  readonly asks: A;
  /** optional questions that a fresh start answers, so that there is an answer to begin with */
  readonly opensWith: readonly string[];
  readonly answer: (given: Answers<A>, show: Show) => Answer;
};

/** Prints a figure on the asker's side, for what an answer says in words. */
export type Show = (value: number, unit: UnitName) => string;

type Spec<A extends Asks> = Omit<Topic<A>, "answer" | "opensWith"> & {
  readonly opensWith?: readonly (keyof A & string)[];
  readonly answer: (given: Answers<A>, show: Show) => Partial<Answer> & Pick<Answer, "results">;
};

/** Sets up a topic; whatever its answer leaves out is empty. */
export function topic<A extends Asks>(spec: Spec<A>): Topic {
  const whole: Topic<A> = {
    opensWith: [],
    ...spec,
    answer: (given, show) => ({
      remarks: [],
      findings: [],
      cautions: [],
      ...spec.answer(given, show),
    }),
  };
  return whole as unknown as Topic;
}

/**
 * Texts that answer a topic to begin with: an example for whatever must be answered.
 *
 * @param of  the topic
 * @param units  the side to write them on
 */
export function openingTexts(of: Topic, units: LengthUnit): Readonly<Record<string, string>> {
  const opening = Object.entries(of.asks).filter(
    ([name, q]) => (q.fallback === undefined && !q.optional) || of.opensWith.includes(name),
  );
  return Object.fromEntries(opening.map(([name, q]) => [name, onSide(q.example, units)]));
}

export type Outcome =
  | {
      readonly ok: true;
      readonly answer: Answer;
      readonly given: Readonly<Record<string, unknown>>;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Works a topic from texts: reads every answer, gathers every fault, and only then computes.
 *
 * @param of  the topic
 * @param texts  what was typed, by the names of its questions; missing ones take their fallback
 * @param units  the side that numbers without a unit are on
 * @param place  how the asker names a question: `--width`, `column width`
 */
export function reckon(
  of: Topic,
  texts: Readonly<Record<string, string | undefined>>,
  units: LengthUnit,
  place: (name: string) => string,
): Outcome {
  const given: Record<string, unknown> = {};
  const problems: Problem[] = [];
  for (const name of Object.keys(texts)) {
    if (!Object.hasOwn(of.asks, name) && texts[name] !== undefined)
      problems.push(unknownName(of, name, place));
  }
  for (const [name, question] of Object.entries(of.asks)) {
    const typed = texts[name];
    const isLeftOut = typed === undefined || typed.trim() === "";
    const text = isLeftOut ? question.fallback && onSide(question.fallback, units) : typed;
    if (text === undefined) {
      if (question.optional) continue;
      const example = onSide(question.example, units);
      problems.push(
        new Problem(
          "missing",
          place(name),
          `Nothing is given for “${question.says}”.`,
          `Give it, such as ${example}.`,
        ),
      );
      continue;
    }
    const read = question.read(text, units, isLeftOut);
    if (read.ok) given[name] = read.value;
    else problems.push(problemAt(place(name), read.fault));
  }
  if (problems.length > 0) return { ok: false, problems };
  try {
    const show: Show = (value, unit) => printQuantity(value, unit, units, "about");
    return { ok: true, answer: of.answer(given, show), given };
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return { ok: false, problems: [placed(problem, of, place)] };
  }
}

/** A topic names its own questions as the place of a problem; the asker has names of its own. */
function placed(problem: Problem, of: Topic, place: (name: string) => string): Problem {
  const names = problem.place.split(", ");
  if (!names.every((name) => name in of.asks)) return problem;
  return new Problem(problem.code, names.map(place).join(", "), problem.reason, problem.remedy);
}

function unknownName(of: Topic, name: string, place: (name: string) => string): Problem {
  const known = Object.keys(of.asks).join(", ");
  return new Problem(
    "unknown-question",
    place(name),
    `“${of.name}” has no such question.`,
    `Use ${known}.`,
  );
}
