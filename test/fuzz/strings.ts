/** Numbers from 0 up to 1 in a fixed order: the same seed, the same strings. */
export type Chance = () => number;

/** A small generator of chance (mulberry32): good enough to stir text with, and repeatable. */
export function seeded(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export const below = (chance: Chance, n: number): number => Math.floor(chance() * n);

export function pick<T>(chance: Chance, from: readonly T[]): T {
  const found = from[below(chance, from.length)];
  if (found === undefined) throw new Error("nothing to pick from");
  return found;
}

/** Notations that are read, to be spoilt. */
const notations = [
  ...['1 1/4"', "1-1/4 in", "1¼″", `5' 6 1/2"`, "5 ft 6 in", ".375in", "30 mm", "3,2cm", "1.2 m"],
  ...['1¹⁄₆₄"', "5/4", "27/64 full", "3/8 scant", "12", "−5 mm", "7 thou", "1e3 mm", "5'-6\""],
  ...[
    "70 F",
    "21 °C",
    "-5C",
    "45 %",
    "8 % MC",
    "40 lb",
    "18 kg",
    "60 lbf",
    "1.5e6 psi",
    "12.5 GPa",
  ],
  ...["20 sq ft", "1.9 m²", "400 sq ft/gal", "10 m²/l", "1 qt", "18000 rpm", "22.5°", "3"],
  ...["white oak", "Quercus alba", "oak-white", "hardwood", "rolled", "spread"],
] as const;

const alphabet = [
  ..."0123456789 .,-+/'\"eEx×*()[]{}%°º²³½¼¾⅛⅜⅝⅞⅐⅑⅒⅟¹²³⁴⁵⁶⁷⁸⁹⁰₀₁₂₃⁄∕⧸′″‘’“”´`–—−",
  ..."\u00a0\u2000\u2009\u200b\u202f\u2060\u3000\ufeff\t\r\n\0",
  ..."infmctyrdlbsoz",
  ...["in", "ft", "mm", "cm", "m", "lb", "kg", "full", "scant", "sq ft", "rpm", "°C", "1/4", "5'"],
];

/** Texts that have broken programs before: of machines, of markup, of other scripts. */
const hostile = [
  ...["NaN", "Infinity", "-Infinity", "null", "undefined", "true", "[object Object]", "0x10", "1n"],
  ...["__proto__", "constructor", "toString", "hasOwnProperty", "prototype", "__defineGetter__"],
  ...["--", "-", "---", "--json", "--batch", "--help", "--units=inch", "--units", "-h", "=", "--="],
  ...[
    "<script>alert(1)</script>",
    `"><img src=x onerror=x>`,
    "'; DROP TABLE t;--",
    "#{1}",
    "{{1}}",
  ],
  ...["%s%n%x", "%00", "\\0", "\\u0000", "\0", "\u0001\u001b[31m", "..\\..\\x", "$(ls)", "`ls`"],
  ...["1e309", "-1e309", "1e-400", "9".repeat(119), `0.${"0".repeat(117)}1`, "1/0", "0/0", "1 1/0"],
  ...["٣ mm", "५ mm", "３ mm", "Ⅻ in", "①", "m\u0300", "5 m\u0301m", "\u202e5 mm", "5\u200dmm"],
  ...["\ud800", "5 \udfff mm", "👍🏽", "🪵".repeat(40), "ß", "İ", "ſt", "ﬀ", "K 20", "20 Å"],
  ...[
    "1,000",
    "1,000,000 mm",
    "1.000,5 mm",
    "1'000 mm",
    "1 000 mm",
    "1_000",
    "1__0",
    "5''''",
    "5'5'5'",
  ],
] as const;

const codePoint = (chance: Chance): string => {
  const most = pick(chance, [0x80, 0x500, 0x2200, 0xffff, 0x10ffff]);
  return String.fromCodePoint(below(chance, most));
};

const several = (chance: Chance, most: number, one: () => string): string =>
  Array.from({ length: below(chance, most + 1) }, one).join("");

/** A notation with a few of its characters dropped, doubled, swapped or replaced. */
function spoilt(chance: Chance): string {
  let text: string[] = [...pick(chance, notations)];
  for (let times = below(chance, 4); times > 0; times--) {
    const at = below(chance, text.length + 1);
    const drop = below(chance, 3);
    const put = pick(chance, [
      () => [],
      () => [pick(chance, alphabet)],
      () => text.slice(at, at + 3),
    ]);
    text = [...text.slice(0, at), ...put(), ...text.slice(at + drop)];
  }
  return text.join("");
}

const kinds: readonly ((chance: Chance) => string)[] = [
  spoilt,
  spoilt,
  spoilt,
  (chance) => several(chance, 12, () => pick(chance, alphabet)),
  (chance) => several(chance, 12, () => pick(chance, alphabet)),
  (chance) => several(chance, 20, () => codePoint(chance)),
  (chance) => pick(chance, notations) + pick(chance, hostile),
  (chance) => pick(chance, hostile),
  (chance) => pick(chance, [" ", "-", "+", "("]) + spoilt(chance) + pick(chance, alphabet),
  (chance) => `${(chance() - 0.5) * 10 ** below(chance, 12)} ${pick(chance, alphabet)}`,
];

/** Any text a person, a file or an enemy may put where a quantity is asked. */
export function anyString(chance: Chance): string {
  if (below(chance, 400) === 0) return spoilt(chance).repeat(1 + below(chance, 4000));
  return pick(chance, kinds)(chance);
}
