import type { ReactNode } from "react";

/** Where a dimension is taken in a diagram. */
export type Line = readonly [x1: number, y1: number, x2: number, y2: number];

/** A diagram's own sheet, with the dimension that is meant in blue. */
export function Frame(props: { readonly meant: Line | undefined; readonly children: ReactNode }) {
  const { meant, children } = props;
  return (
    <svg className="diagram" viewBox="0 0 500 170" aria-hidden="true">
      {children}
      {meant && (
        <g className="diagram-meant">
          <path d={`M${meant[0]} ${meant[1]}L${meant[2]} ${meant[3]}`} />
          <Ends line={meant} />
        </g>
      )}
    </svg>
  );
}

/** The short strokes at a dimension's ends, square to it. */
function Ends({ line: [x1, y1, x2, y2] }: { readonly line: Line }) {
  const size = Math.hypot(x2 - x1, y2 - y1);
  const [dx, dy] = [((y1 - y2) / size) * 5, ((x2 - x1) / size) * 5];
  return (
    <path
      d={`M${x1 - dx} ${y1 - dy}L${x1 + dx} ${y1 + dy}M${x2 - dx} ${y2 - dy}L${x2 + dx} ${y2 + dy}`}
    />
  );
}

/** Where dimensions lie in the corner. */
export const inCorner: Readonly<Record<string, Line>> = {
  "rail-thickness": [460, 98, 460, 118],
  setback: [446, 118, 446, 124],
  tips: [414, 92, 430, 108],
  haunch: [414, 92, 430, 108],
};

/** The corner of leg and rails, cut level and seen from above; the front is below. */
export function Corner({ isMitred }: { readonly isMitred: boolean }) {
  return (
    <>
      <g className="diagram-wood">
        <path d="M404 74H440V124H404Z" />
        <path d="M440 98H496V118H440Z" />
        <path d="M410 8V74H430V8Z" />
      </g>
      <g className="diagram-hidden">
        <path d={isMitred ? "M440 104H422L414 112H440" : "M440 104H428V112H440"} />
        <path d={isMitred ? "M416 74V106L424 98V74" : "M416 74V92H424V74"} />
        <path d="M404 150H496" />
      </g>
    </>
  );
}
