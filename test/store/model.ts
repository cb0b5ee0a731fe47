import { applyEdit, documentText, type Edit, type PieceDocument } from "../../src/piece/index.ts";

/** What the store should do, told with plain lists: nothing of it is shared with the store. */
export class Model {
  /** the text after each step, from 0 */
  readonly texts: string[];
  readonly undos: { readonly before: PieceDocument; readonly after: PieceDocument }[] = [];
  redos: { readonly before: PieceDocument; readonly after: PieceDocument }[] = [];
  document: PieceDocument;

  constructor(document: PieceDocument) {
    this.document = document;
    this.texts = [documentText(document)];
  }

  get step(): number {
    return this.texts.length - 1;
  }

  get text(): string {
    return documentText(this.document);
  }

  edit(edit: Edit): void {
    const before = this.document;
    const after = applyEdit(before, edit).document;
    this.undos.push({ before, after });
    this.redos = [];
    this.stand(after);
  }

  undo(): void {
    const last = this.undos.pop();
    if (!last) throw new Error("the model has nothing to undo");
    this.redos.push(last);
    this.stand(last.before);
  }

  redo(): void {
    const last = this.redos.pop();
    if (!last) throw new Error("the model has nothing to redo");
    this.undos.push(last);
    this.stand(last.after);
  }

  private stand(document: PieceDocument): void {
    this.document = document;
    this.texts.push(documentText(document));
  }
}

/** An edit that sets one field. */
export const setting = (at: readonly string[], to: string): Edit => ({
  says: `${at.at(-1)} ${to}`,
  changes: [{ at, to }],
});
