const LONGEST = 60;
/** Names that Windows keeps for its devices, whatever comes behind the full stop. */
const DEVICES = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/**
 * The header that makes an answer a file with a name: of letters and digits alone, so that no folder,
 * no other kind of file and no second header can be meant by it.
 *
 * @param name  of the piece, which may be anything
 */
export function disposition(name: string): string {
  const plain = fileName(name.normalize("NFKD").replace(/\p{M}/gu, ""), /[^a-z0-9]+/g);
  const full = fileName(name.normalize("NFC"), /[^\p{L}\p{M}\p{N}]+/gu);
  return `attachment; filename="${plain}.json"; filename*=UTF-8''${encodeURIComponent(full)}.json`;
}

function fileName(name: string, others: RegExp): string {
  const words = Array.from(name.toLowerCase().replace(others, "-")).slice(0, LONGEST).join("");
  const word = words.replace(/^-+|-+$/g, "");
  if (word === "") return "piece";
  return DEVICES.test(word) ? `piece-${word}` : word;
}
