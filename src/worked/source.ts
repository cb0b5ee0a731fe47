/** Where a value or a formula comes from, and how well that is known. */
export type Source =
  | {
      readonly kind: "published";
      readonly work: string;
      readonly place: string;
      /** primary: the page was read; secondary: a quotation of it was; memory: neither */
      readonly seen: "primary" | "secondary" | "memory";
    }
  /** Worked out from geometry, statics or arithmetic: nothing to look up. */
  | { readonly kind: "derived"; readonly from: string }
  /** What shops do; nobody vouches for the figure. */
  | { readonly kind: "practice" }
  /** The maker's own figure. */
  | { readonly kind: "given" }
  /** A default that stands until the maker gives a figure. */
  | { readonly kind: "assumed"; readonly why: string };

/** A book, standard, table or page, and how well it was seen. */
export const published = (
  work: string,
  place: string,
  seen: "primary" | "secondary" | "memory",
): Source => ({ kind: "published", work, place, seen });

/** Worked out, not looked up: from geometry, statics, arithmetic or a definition. */
export const derived = (from: string): Source => ({ kind: "derived", from });
/** Stands until the maker says otherwise; `why` is shown. */
export const assumed = (why: string): Source => ({ kind: "assumed", why });
export const givenByMaker: Source = { kind: "given" };
export const commonPractice: Source = { kind: "practice" };

/** A source in words, with its state of knowledge always said. */
export function cite(source: Source): string {
  switch (source.kind) {
    case "published": {
      const state = { primary: "", secondary: ", read second-hand", memory: ", from memory" };
      return `${source.work}, ${source.place}${state[source.seen]}`;
    }
    case "derived":
      return source.from;
    case "practice":
      return "common practice, no source";
    case "given":
      return "given";
    case "assumed":
      return `assumed: ${source.why}`;
  }
}

/** Whether the maker should be told to check this figure against something better. */
export const isUnproven = (source: Source): boolean =>
  source.kind === "practice" ||
  source.kind === "assumed" ||
  (source.kind === "published" && source.seen === "memory");
