/** A formula taken apart. */
export type Term =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "call"; readonly name: string; readonly of: readonly Term[] }
  | { readonly kind: "minus"; readonly of: Term }
  | { readonly kind: "pair"; readonly sign: Sign; readonly a: Term; readonly b: Term };
type Sign = "+" | "-" | "·" | "/" | "^";

type Token = { readonly kind: "number" | "name" | "raised" | "mark"; readonly text: string };

const raisedDigits = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const calls = new Set([
  "max",
  "min",
  "ceil",
  "floor",
  "round",
  "ln",
  "exp",
  "sin",
  "cos",
  "arctan",
]);
const patterns: readonly (readonly [Token["kind"], RegExp])[] = [
  ["number", /^\d+(?:\.\d+)?/u],
  ["raised", /^⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/u],
  ["name", /^\p{L}[\p{L}\d]*(?:_[\p{L}\d]+)?[₀-₉]*′*/u],
  ["mark", /^[-+−·/^(),=√]/u],
];

function tokensOf(formula: string): readonly Token[] {
  const tokens: Token[] = [];
  let rest = formula.trimStart();
  while (rest !== "") {
    const found = patterns.flatMap(([kind, pattern]) => {
      const text = pattern.exec(rest)?.[0];
      return text === undefined ? [] : [{ kind, text }];
    })[0];
    if (!found) throw new Error(`“${rest}” cannot be read in ${formula}`);
    tokens.push(found.text === "−" ? { kind: "mark", text: "-" } : found);
    rest = rest.slice(found.text.length).trimStart();
  }
  return tokens;
}

/**
 * Both sides of `y = a·b / (c + d)`. Dots and strokes bind alike, from left to right; powers bind
 * tighter and from right to left; a minus in front binds looser than a power.
 */
function parse(formula: string): { readonly left: Term; readonly right: Term } {
  const tokens = tokensOf(formula);
  let at = 0;
  const next = (text: string): boolean => {
    const isIt = tokens[at]?.kind === "mark" && tokens[at]?.text === text;
    if (isIt) at++;
    return isIt;
  };
  const must = (text: string): void => {
    if (!next(text)) throw new Error(`“${text}” is missing at part ${at + 1} of ${formula}`);
  };
  const row = (signs: readonly Sign[], part: () => Term): Term => {
    let term = part();
    for (;;) {
      const sign = signs.find(next);
      if (!sign) return term;
      term = { kind: "pair", sign, a: term, b: part() };
    }
  };
  const sum = (): Term => row(["+", "-"], product);
  const product = (): Term => row(["·", "/"], signed);
  const signed = (): Term => (next("-") ? { kind: "minus", of: signed() } : power());
  const power = (): Term => {
    const base = raised(atom());
    return next("^") ? { kind: "pair", sign: "^", a: base, b: signed() } : base;
  };
  const exponent = (): number | undefined => {
    const token = tokens[at];
    if (token?.kind !== "raised") return undefined;
    at++;
    const digits = [...token.text.replace("⁻", "")].map((c) => raisedDigits.indexOf(c)).join("");
    return token.text.startsWith("⁻") ? -Number(digits) : Number(digits);
  };
  const toThe = (base: Term, value: number | undefined): Term =>
    value === undefined ? base : { kind: "pair", sign: "^", a: base, b: { kind: "number", value } };
  const raised = (base: Term): Term => toThe(base, exponent());
  const bracketed = (): readonly Term[] => {
    const of = [sum()];
    while (next(",")) of.push(sum());
    must(")");
    return of;
  };
  const atom = (): Term => {
    if (next("(")) {
      const term = sum();
      must(")");
      return term;
    }
    if (next("√")) return { kind: "call", name: "√", of: [atom()] };
    const token = tokens[at++];
    if (token?.kind === "number") return { kind: "number", value: Number(token.text) };
    if (token?.kind !== "name") throw new Error(`part ${at} of ${formula} is no term`);
    if (!calls.has(token.text)) return { kind: "name", name: token.text };
    const outer = exponent();
    must("(");
    return toThe({ kind: "call", name: token.text, of: bracketed() }, outer);
  };
  const left = sum();
  must("=");
  const right = sum();
  if (at < tokens.length) throw new Error(`${formula} goes on behind its end, at part ${at + 1}`);
  return { left, right };
}

const parsed = new Map<string, ReturnType<typeof parse>>();

/** As `parse`, each formula once: the same few stand in thousands of values. */
export function parseFormula(formula: string): ReturnType<typeof parse> {
  const known = parsed.get(formula) ?? parse(formula);
  parsed.set(formula, known);
  return known;
}
