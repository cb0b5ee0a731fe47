import type { Change, PieceDocument } from "../../piece/index.ts";
import type { DrawnPart, Shape, Workup } from "../../workup/index.ts";
import type { Said } from "../api/index.ts";

/** What the page asks of its worker. */
export type Asked = { readonly ask: number; readonly document: PieceDocument };

/** Why a document stands for no piece, and where there is one, the change that puts it right. */
export type Refusal = Said & { readonly mend?: Change };

/** What the worker tells: figures first, then each new shape, then that all are there. */
export type Told = { readonly ask: number } & (
  | { readonly kind: "figures"; readonly workup: Workup; readonly parts: readonly DrawnPart[] }
  | { readonly kind: "shape"; readonly key: string; readonly shape: Shape }
  | { readonly kind: "drawn" }
  /** shapes that stay; every other may be dropped, and is sent anew when it is needed */
  | { readonly kind: "forget"; readonly keep: readonly string[] }
  | { readonly kind: "refused"; readonly problems: readonly Refusal[] }
  | { readonly kind: "fault"; readonly says: string }
);
