/** A piece of JSON Schema, of the few words that are used and read here. */
export type Schema = Readonly<Record<string, unknown>>;

/** Longer than this no length, name or key is [characters]. */
export const LONGEST_TEXT = 120;
/** More entries than this no table or list has [pieces]. */
export const MOST_ENTRIES = 2000;
/** Farther than this nothing of a piece lies [mm]. */
const FARTHEST = 100_000;

/**
 * A text of some length at most.
 *
 * @param maxLength  [characters]
 */
export const text = (says: string, maxLength: number = LONGEST_TEXT): Schema => ({
  type: "string",
  description: says,
  maxLength,
});

/** One of a few words. */
export const oneOf = (says: string, words: readonly string[]): Schema => ({
  enum: words,
  description: says,
});

/** Yes or no. */
export const switched = (says: string): Schema => ({ type: "boolean", description: says });

/** A place or distance in millimetres, of either sign. */
export const place = (says: string): Schema => ({
  type: "number",
  description: says,
  minimum: -FARTHEST,
  maximum: FARTHEST,
});

/** A size in millimetres, above nought. */
export const size = (says: string): Schema => ({
  type: "number",
  description: says,
  minimum: 1e-3,
  maximum: FARTHEST,
});

/**
 * Things of one sort, in order.
 *
 * @param count  how many; of any number where none is given [pieces]
 */
export const list = (says: string, items: Schema, count?: number): Schema => ({
  type: "array",
  description: says,
  items,
  maxItems: count ?? MOST_ENTRIES,
  ...(count === undefined ? {} : { minItems: count }),
});

/** Entries of one sort by names of one pattern. */
export const table = (says: string, names: string, of: Schema): Schema => ({
  type: "object",
  description: says,
  propertyNames: { pattern: names, maxLength: LONGEST_TEXT },
  maxProperties: MOST_ENTRIES,
  additionalProperties: of,
});

/** Just these fields; all of them, but those named optional. */
export const record = (
  says: string,
  properties: Readonly<Record<string, Schema>>,
  optional: readonly string[] = [],
): Schema => ({
  type: "object",
  description: says,
  properties,
  required: Object.keys(properties).filter((name) => !optional.includes(name)),
  additionalProperties: false,
});
