const LONGEST = 60;
/** Names that Windows keeps for its devices, whatever comes behind the full stop. */
const DEVICES = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** What becomes of a file in a browser: it is kept, or shown, and named when it is kept from there. */
const manners = { json: "attachment", pdf: "inline" } as const;

/**
 * The header that makes an answer a file with a name: of letters and digits alone, so that no folder,
 * no other kind of file and no second header can be meant by it.
 *
 * @param name  of the piece, which may be anything
 * @param kind  of the file
 */
export function disposition(name: string, kind: keyof typeof manners): string {
  const plain = fileName(name.normalize("NFKD").replace(/\p{M}/gu, ""), /[^a-z0-9]+/g);
  const full = fileName(name.normalize("NFC"), /[^\p{L}\p{M}\p{N}]+/gu);
  return `${manners[kind]}; filename="${plain}.${kind}"; filename*=UTF-8''${encodeURIComponent(full)}.${kind}`;
}

function fileName(name: string, others: RegExp): string {
  const words = Array.from(name.toLowerCase().replace(others, "-")).slice(0, LONGEST).join("");
  const word = words.replace(/^-+|-+$/g, "");
  if (word === "") return "piece";
  return DEVICES.test(word) ? `piece-${word}` : word;
}
