/** What reading a text gives: the value, or what was wrong and how to put it right. */
export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: Fault };

/** A fault in a text: where it stands, what was read there, why not, what would be right. */
export type Fault = {
  readonly code: string;
  /** index of the first character at fault [characters] */
  readonly start: number;
  /** index behind the last character at fault [characters] */
  readonly end: number;
  readonly read: string;
  readonly reason: string;
  readonly remedy: string;
};

/** A reading that succeeded. */
export const readAs = <T>(value: T): Read<T> => ({ ok: true, value });

/** A refused reading of `text`; `start` and `end` bound the characters at fault. */
export function refuse(
  code: string,
  text: string,
  start: number,
  end: number,
  reason: string,
  remedy: string,
): { readonly ok: false; readonly fault: Fault } {
  const read = text.slice(start, end);
  return { ok: false, fault: { code, start, end, read, reason, remedy } };
}

/** Where a fault stands, in words: `at character 3, “x”`; counting from 1 as people do. */
export function placeOf(fault: Fault): string {
  return fault.read === ""
    ? `at character ${fault.start + 1}, where nothing stands`
    : `at character ${fault.start + 1}, “${shortened(fault.read)}”`;
}

const shortened = (read: string) => (read.length > 24 ? `${read.slice(0, 22)}…` : read);
