import { useState } from "react";
import type { PieceDocument } from "../../piece/index.ts";
import { type PaperName, usualPaper } from "../../sheets/index.ts";
import type { Shop } from "../../shop/index.ts";
import { api } from "../api/index.ts";
import { Either } from "../controls/either.tsx";
import { Enlarged } from "./enlarged.tsx";
import { nameOf, SheetPicture } from "./sheet-picture.tsx";
import { type Sheets, useSheets } from "./use-sheets.ts";

type Props = {
  readonly id: string;
  readonly document: PieceDocument;
  readonly shop: Shop | undefined;
  /** whether every edit is kept: what is printed is what is kept */
  readonly isKept: boolean;
};

const words = { letter: "Letter", a4: "A4" } as const;
const namedBy = (word: (typeof words)[PaperName]): PaperName => (word === "A4" ? "a4" : "letter");

/** The whole set of sheets as it will be printed. */
export function PapersScreen({ id, document, shop, isKept }: Props) {
  const [own, setOwn] = useState<PaperName>();
  const [opened, setOpened] = useState<number>();
  const paper = own ?? usualPaper(document.units);
  const drawn = useSheets(document, shop, paper);
  const { sheets } = drawn;
  const large = sheets.find(({ number }) => number === opened);
  return (
    <div className="papers">
      <h1>Papers</h1>
      <div className="papers-ask">
        <Either
          label="Paper"
          words={[words.letter, words.a4]}
          chosen={words[paper]}
          choose={(word) => setOwn(namedBy(word))}
        />
        <a className="remedy" href={api.papersOf(id, paper)} target="_blank" rel="noopener">
          Open the PDF
        </a>
      </div>
      <p className="tells">
        Print at 100 %: no scaling, no “fit to page”. Then lay a rule to the check bar in the strip
        of any sheet; where it is not true, no dimension taken off the paper is.
      </p>
      {!isKept && (
        <p className="tells">
          The PDF is of the piece as it is kept; the last edit is not kept yet.
        </p>
      )}
      <p className="tells" role="status">
        {saysOf(drawn)}
      </p>
      <ol className="sheets" data-old={drawn.are !== "drawn"}>
        {sheets.map((sheet) => (
          <li key={sheet.id}>
            {/* Over the sheet and not round it: what is written on a sheet is not the button’s name. */}
            <div className="sheet-place">
              <SheetPicture sheet={sheet} isNamed />
              <button
                type="button"
                aria-label={nameOf(sheet)}
                title="Larger"
                onClick={() => setOpened(sheet.number)}
              />
            </div>
            <span aria-hidden="true">
              {sheet.number} · {sheet.title.shows}
            </span>
          </li>
        ))}
      </ol>
      {large && (
        <Enlarged
          sheet={large}
          pdf={api.papersOf(id, paper, large.id)}
          turnTo={setOpened}
          close={() => setOpened(undefined)}
        />
      )}
    </div>
  );
}

function saysOf({ sheets, are, fault }: Sheets): string {
  const last = sheets.length === 0 ? "" : " These are the last ones.";
  switch (are) {
    case "drawn":
      return `${sheets.length} sheets.`;
    case "drawing":
      return `The sheets are being drawn.${last}`;
    case "refused":
      return `The piece cannot be made as it stands, and has no sheets.${last}`;
    case "faulty":
      return `The sheets could not be drawn: ${fault}${last}`;
  }
}
