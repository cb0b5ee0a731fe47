import type { PieceDocument } from "../../piece/index.ts";
import type { PaperName, Sheet } from "../../sheets/index.ts";

/** What the page asks of its printer. */
export type Asked = {
  readonly ask: number;
  readonly document: PieceDocument;
  readonly paper: PaperName;
  /** as it is to stand in the strip */
  readonly date: string;
};

/** What the printer tells; a document that stands for no piece has no sheets. */
export type Told = { readonly ask: number } & (
  | { readonly kind: "sheets"; readonly sheets: readonly Sheet[] }
  | { readonly kind: "refused" }
  | { readonly kind: "fault"; readonly says: string }
);
