import type { Piece } from "../piece/index.ts";
import { mm } from "../units/index.ts";
import { derived, type Finding, given, work } from "../worked/index.ts";

/** What a hand can fit: a difference up to this is no matter [mm]. */
const NO_MATTER = 0.2;

/** Where the wood is cut to another size than the design now asks: the wood stays, and is told. */
export function cutKept({ values, document }: Piece): readonly Finding[] {
  return values.flatMap((value): readonly Finding[] => {
    if (value.stands !== "cut") return [];
    const off = work({
      says: `${value.says}: cut, against what the design now asks`,
      unit: "mm",
      formula: "a = c − w",
      inputs: {
        c: given("as it is cut", value.inForce, "mm"),
        w: given("what the design now asks", value.wished, "mm", derived("the design")),
      },
      value: mm(value.inForce - value.wished),
      source: derived("arithmetic"),
    });
    if (Math.abs(off.value) <= NO_MATTER) return [];
    const parts = Object.entries(document.cut).flatMap(([part, texts]) =>
      Object.hasOwn(texts, value.key) ? [part] : [],
    );
    return [
      {
        id: `cut/${value.key}`,
        group: "Joinery",
        verdict: "fails",
        says: `${value.says.charAt(0).toUpperCase()}${value.says.slice(1)}: the wood is cut ${off.value > 0 ? "larger" : "smaller"} than the design now asks. Put the design back, or cut the part anew.`,
        margin: off,
        why: [off],
        lights: parts,
      },
    ];
  });
}

/** Entries of the document that name nothing of the piece any more. */
export function straysKept({ strays }: Piece): readonly Finding[] {
  return strays.map(
    ({ table, key, text }): Finding => ({
      id: `stray/${table}/${key}`,
      group: "Joinery",
      verdict: "watch",
      says: `${key} is kept with ${text}, but the piece has no such ${table === "cut" ? "part" : "value"} now.`,
      why: [],
      lights: [],
    }),
  );
}
