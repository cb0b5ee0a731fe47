import type { LengthUnit, Mm } from "../units/index.ts";
import type { Feature } from "./feature.ts";
import type { Key } from "./part.ts";

/** What a piece's file says it is. */
export const FORMAT = "latewood-piece";
/** The version that is written; older ones are migrated forward when read. */
export const VERSION = 1;

/** A kind of furniture and the answers to its questions, as typed; what is left out is the kind's default. */
export type Assembly = Readonly<Record<string, string>> & { readonly kind: string };

/** Where the piece will live, and how dry it is made, as typed. */
export type Home = {
  readonly warmth: string;
  readonly driest: string;
  readonly dampest: string;
  readonly made: string;
};

/** Texts by key. */
type ByKey = Readonly<Record<Key, string>>;

/**
 * A part as it is cut: it no longer follows the design. Its own shape is kept whole, and the values
 * that other parts must be fitted to.
 */
export type CutPart = {
  /** along the grain [mm] */
  readonly length: Mm;
  /** [mm] */
  readonly width: Mm;
  /** [mm] */
  readonly thickness: Mm;
  readonly features: readonly Feature[];
  /** values of the part and its joints, by key */
  readonly values: ByKey;
};

/**
 * What is saved of a piece: dimensions and changes, never the piece itself, which is generated from
 * them. Every length is a text with its unit; a bare number takes the side `units` names.
 */
export type PieceDocument = {
  /** where an editor finds the schema, for completion and errors */
  readonly $schema?: string;
  readonly format: typeof FORMAT;
  readonly version: typeof VERSION;
  readonly name: string;
  readonly client: string;
  readonly note: string;
  /** invented, for show */
  readonly demo: boolean;
  readonly units: LengthUnit;
  readonly timber: string;
  readonly home: Home;
  readonly assemblies: Readonly<Record<string, Assembly>>;
  /** values of the maker's own in place of computed ones */
  readonly overrides: ByKey;
  /** values taken off the wood */
  readonly measured: ByKey;
  readonly cut: Readonly<Record<Key, CutPart>>;
};
