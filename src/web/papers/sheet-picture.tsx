import { memo } from "react";
import type { Sheet } from "../../sheets/index.ts";
import { DrawingMarks } from "../controls/drawing-marks.tsx";

/** `Sheet 3 of 9: Joints in the legs`. */
export const nameOf = ({ number, of, title }: Sheet): string =>
  `Sheet ${number} of ${of}: ${title.shows}`;

/** A sheet as it comes on paper, as large as its place. */
export const SheetPicture = memo(function SheetPicture(props: {
  readonly sheet: Sheet;
  /** whether its name stands beside it, so that it need not be said twice */
  readonly isNamed?: boolean;
}) {
  const { sheet, isNamed = false } = props;
  const { width, height } = sheet.paper;
  return (
    <svg
      className="on-paper"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={nameOf(sheet)}
      aria-hidden={isNamed}
    >
      <rect width={width} height={height} />
      <DrawingMarks placed={sheet.placed} height={height} isOnPaper />
    </svg>
  );
});
