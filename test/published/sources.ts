/** How the value of a source is known to us. */
export type KnownHow =
  | "read second-hand"
  | "definition"
  | "textbook"
  | "independent computation"
  | "read second-hand, then worked by hand";

type SourceRow = {
  readonly cites: string;
  readonly known: KnownHow;
  /**
   * `value`: somebody else's figure. `constants`: the printed equation is somebody else's, the figure
   * our own arithmetic, so that it shows a mistyped constant but not a wrong equation.
   */
  readonly proves: "value" | "constants";
};

const value = (cites: string, known: KnownHow = "read second-hand"): SourceRow => ({
  cites,
  known,
  proves: "value",
});

const byHand = (cites: string): SourceRow => ({
  cites,
  known: "read second-hand, then worked by hand",
  proves: "constants",
});

/** Where the expected values come from, in the order in which they are shown. */
export const sources = {
  "table 4-2": value("Wood Handbook (FPL-GTR-190), Table 4-2, via a trade copy"),
  "table 4-2 quoted": value("Wood Handbook, Table 4-2, via a survey of furniture standards"),
  "eq 13-2": value("Wood Handbook, ch. 13, worked example after Eq 13-2"),
  "table 13-5": value("Wood Handbook, Tables 4-3 and 13-5"),
  "eq 4-9": value("Wood Handbook, ch. 4, at Eq 4-9"),
  "table 4-6": value("Wood Handbook, Table 4-6a, and the printed 12 % gravities of Table 5-3b"),
  "eq 5-3": value("Wood Handbook, ch. 5, worked example after Eq 5-3"),
  "table 5-13": value("Wood Handbook, Table 5-13"),
  "table 5-3": value("Wood Handbook, Table 5-3, footnote c"),
  "chapter 8": value("Wood Handbook, ch. 8: constants of Eqs 8-1, 8-2, 8-10, 8-13 and Table 8-4"),
  "table 8-9": value("Wood Handbook, Table 8-9"),
  "chapter 9": value("Wood Handbook, ch. 9: deflection constants of beams"),
  "chapter 10": value("Wood Handbook, ch. 10, p. 16, via a trade page"),
  nds: value("National Design Specification, eq. 12.2-2, via public notes and a formula handbook"),
  "flooring association": value(
    "A flooring association's technical publication A200, p. 7, from Agriculture Handbook 72 (1987), via two copies",
  ),
  "mesquite example": value("A flooring trade page quoting Agriculture Handbook 72 (1987)"),
  "timber class": value("A university's timber design class, problem 4.34"),
  "extension table": value("A state university's extension table of shrinkage"),
  "din 68100": value("DIN 68100, via a survey of furniture standards"),
  "lumber rules": value("NHLA measurement of lumber, via exporters', importers' and news pages"),
  "public shelf": value("A public page's worked shelf, beside textbook bending"),
  "thread standard": value("Industry standard of rolled-thread screws, via a fastener trade page"),
  definition: value(
    "Definitions of the units, known by heart: exact, or rounded from what is exact",
    "definition",
  ),
  textbook: value("Textbook statics and geometry, worked apart from this code", "textbook"),
  "cup cases": value(
    "Closed form and finite elements of the free board, by two other programs",
    "independent computation",
  ),
  "turning cases": value(
    "Octagon and tipping cases, computed twice by other programs",
    "independent computation",
  ),
  "mortise cases": value(
    "Two mortises in one leg, computed twice by other programs",
    "independent computation",
  ),
  "meeting tenons": value(
    "Geometry of mitred tenons in a 2 in leg, worked apart from this code",
    "textbook",
  ),
  "rule joint cases": value(
    "Rule joints, hanging leaves and swing arms: closed forms, each checked with exact polygons, by other programs",
    "independent computation",
  ),
  "borne leaf cases": value(
    "Leaves on a hinge and arms: closed forms, checked by integrating the beam, by other programs",
    "independent computation",
  ),
  "drop leaf sums": value(
    "Fillet, moved pin and floor under a drop leaf, worked on paper apart from this code",
    "textbook",
  ),
  "eq 4-5 by hand": byHand("Wood Handbook, Eq 4-5, °C form, worked by hand at 10 °C"),
  "chapter 4 by hand": byHand("Wood Handbook, Eqs 4-3, 4-11, 4-13 and 4-14, worked by hand"),
  "chapter 8 by hand": byHand("Wood Handbook, Eqs 8-1, 8-10 and NDS eq. 12.2-2, worked by hand"),
  "eq 8-16 by hand": byHand("Hankinson's formula, Wood Handbook, Eq 8-16, worked by hand"),
  "lumber rules by hand": byHand("NHLA rules as told by those pages, worked by hand"),
} as const satisfies Record<string, SourceRow>;

export type SourceKey = keyof typeof sources;
