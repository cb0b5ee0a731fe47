/** The longest line that is kept, in characters: far above any row of answers. */
export const LONGEST_LINE = 64 * 1024;

/** A line that is longer than that. */
export type LongLine = { readonly begins: string };

/**
 * Parts text into lines, whatever their ends: LF, CR LF, or CR alone as old spreadsheets write it.
 * CR LF gives an empty line between, so the reader must pass over those.
 *
 * A line that is too long is told as soon as that shows, and the rest of it is not kept: input
 * without line ends may never end.
 *
 * @param text  in pieces of any size
 */
export async function* linesOf(text: AsyncIterable<string>): AsyncGenerator<string | LongLine> {
  // Joined once a line is whole: joining with each piece costs the square of a line's length.
  let parts: string[] = [];
  let length = 0;
  for await (const piece of text) {
    for (const [i, part] of piece.split(/[\r\n]/).entries()) {
      if (i > 0) {
        if (length <= LONGEST_LINE) yield parts.join("");
        parts = [];
        length = 0;
      }
      const was = length;
      length += part.length;
      if (length <= LONGEST_LINE) parts.push(part);
      else if (was <= LONGEST_LINE) {
        yield { begins: (parts.join("") + part).trimStart().slice(0, 40) };
        parts = [];
      }
    }
  }
  if (length <= LONGEST_LINE) yield parts.join("");
}
