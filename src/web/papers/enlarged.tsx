import { useEffect, useRef } from "react";
import type { Sheet } from "../../sheets/index.ts";
import { nameOf, SheetPicture } from "./sheet-picture.tsx";

type Props = {
  readonly sheet: Sheet;
  readonly pdf: string;
  /** to a sheet by its number in the set [pieces] */
  readonly turnTo: (number: number) => void;
  readonly close: () => void;
};

/** One sheet over the whole page. */
export function Enlarged({ sheet, pdf, turnTo, close }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const { number, of } = sheet;
  return (
    <dialog ref={dialog} className="enlarged" aria-label={nameOf(sheet)} onClose={close}>
      <div className="enlarged-head">
        <b>{nameOf(sheet)}</b>
        <button
          type="button"
          className="in-line"
          disabled={number === 1}
          onClick={() => turnTo(number - 1)}
        >
          Before<span className="spoken"> this sheet</span>
        </button>
        <button
          type="button"
          className="in-line"
          disabled={number === of}
          onClick={() => turnTo(number + 1)}
        >
          Next<span className="spoken"> sheet</span>
        </button>
        <a href={pdf} target="_blank" rel="noopener">
          <span className="spoken">This sheet as </span>PDF
        </a>
        <button type="button" className="remedy" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      {/* Its type is too small to be read on a small screen, so there it is larger than that. */}
      <section
        className="enlarged-ground"
        aria-label="The sheet"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, also by keyboard
        tabIndex={0}
      >
        <SheetPicture sheet={sheet} />
      </section>
    </dialog>
  );
}
