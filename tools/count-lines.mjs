/**
 * The end of `npm test`: the last line is the count and nothing else, for machines to read, so what
 * was skipped stands on a line before it.
 */
export function countLines({ passed, failed, skipped }) {
  const count = `${passed} passed, ${failed} failed`;
  return skipped > 0 ? `${skipped} skipped, counted in neither:\n${count}` : count;
}
