import { randomInt } from "node:crypto";

/** Without letters and digits that are taken for one another. */
const SIGNS = "23456789abcdefghjkmnpqrstuvwxyz";
const LONGEST_NAME = 32;

/** A short name for a piece that can stand in an address: from what it is called, and by chance. */
export function newId(name: string): string {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST_NAME)
    .replace(/^-+|-+$/g, "");
  const chance = Array.from({ length: 6 }, () => SIGNS[randomInt(SIGNS.length)]).join("");
  return `${plain || "piece"}-${chance}`;
}
