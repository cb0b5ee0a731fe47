import { published, type Source } from "../worked/index.ts";

/** The Wood Handbook of the USDA Forest Products Laboratory; read through copies unless said. */
export const handbook = (place: string, seen: "secondary" | "memory" = "secondary"): Source =>
  published("Wood Handbook", place, seen);
