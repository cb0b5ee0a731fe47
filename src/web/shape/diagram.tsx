type Line = readonly [x1: number, y1: number, x2: number, y2: number];

type Dimension = { readonly line: Line };

/** Elevation of a table that stands for any: where each dimension is taken. */
const inFront: Readonly<Record<string, Dimension>> = {
  length: { line: [20, 14, 280, 14] },
  height: { line: [292, 26, 292, 150] },
  "top-thickness": { line: [12, 26, 12, 35] },
  "end-overhang": { line: [20, 44, 46, 44] },
  leg: { line: [46, 44, 66, 44] },
  foot: { line: [46, 158, 57, 158] },
  "taper-start": { line: [76, 62, 76, 72] },
  "rail-width": { line: [150, 35, 150, 62] },
};

/** The corner of leg and rails, cut level and seen from above; the front is below. */
const inCorner: Readonly<Record<string, Dimension>> = {
  width: { line: [392, 8, 392, 150] },
  "side-overhang": { line: [392, 124, 392, 150] },
  "rail-thickness": { line: [460, 98, 460, 118] },
  setback: { line: [446, 118, 446, 124] },
  tips: { line: [414, 92, 430, 108] },
  haunch: { line: [414, 92, 430, 108] },
};

/** A small drawing that shows which dimension is meant: the one being touched, in blue. */
export function Diagram(props: {
  readonly dimension: string | undefined;
  readonly texts: Readonly<Record<string, string>>;
}) {
  const { dimension, texts } = props;
  const isTapered = texts["leg-form"] !== "square";
  const isMitred = texts.tips === "mitred";
  const meant = dimension === undefined ? undefined : (inFront[dimension] ?? inCorner[dimension]);
  return (
    <svg className="diagram" viewBox="0 0 500 170" aria-hidden="true">
      <g className="diagram-wood">
        <path d="M20 26H280V35H20Z" />
        <path d="M66 35H234V62H66Z" />
        <path d={isTapered ? "M46 35H66V72L57 150H46Z" : "M46 35H66V150H46Z"} />
        <path d={isTapered ? "M254 35H234V72L243 150H254Z" : "M254 35H234V150H254Z"} />
        <path d="M404 74H440V124H404Z" />
        <path d="M440 98H496V118H440Z" />
        <path d="M410 8V74H430V8Z" />
      </g>
      <g className="diagram-hidden">
        {isMitred ? (
          <>
            <path d="M440 104H422L414 112H440" />
            <path d="M416 74V106L424 98V74" />
          </>
        ) : (
          <>
            <path d="M440 104H428V112H440" />
            <path d="M416 74V92H424V74" />
          </>
        )}
        <path d="M404 150H496" />
      </g>
      {meant && (
        <g className="diagram-meant">
          <path d={`M${meant.line[0]} ${meant.line[1]}L${meant.line[2]} ${meant.line[3]}`} />
          <Ends line={meant.line} />
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
