import type { Edit } from "../../src/piece/index.ts";
import { below, pick, seeded } from "../fuzz/strings.ts";

/** What the child that is killed does at a step, and what the model must do: the same for both. */
export type Move = { readonly move: "undo" | "redo" } | { readonly move: "edit"; edit: Edit };

const places = [
  ["assemblies", "table", "top"],
  ["assemblies", "table", "leg"],
  ["overrides", "table/leg/width"],
  ["client"],
  ["note"],
] as const;

/** The move that makes a step, of a seed. */
export function moveTo(step: number, seed: number, can: { undo: boolean; redo: boolean }): Move {
  const chance = seeded(seed * 1_000_003 + step);
  const roll = chance();
  if (roll < 0.25 && can.undo) return { move: "undo" };
  if (roll < 0.45 && can.redo) return { move: "redo" };
  const count = 1 + below(chance, 3);
  const changes = Array.from({ length: count }, () => ({
    at: pick(chance, places),
    to: `${below(chance, 1000)} ${"in".repeat(below(chance, 40))}`,
  }));
  return { move: "edit", edit: { says: `step ${step}`, changes } };
}

/** How often the child writes a backup amid its steps. */
export const isBackupStep = (step: number): boolean => step % 173 === 0;
