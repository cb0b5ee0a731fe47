import { Corner, Frame, inCorner, type Line } from "./diagram-kit.tsx";

/** Elevation of a table that stands for any, and its corner: where each dimension is taken. */
const lines: Readonly<Record<string, Line>> = {
  length: [20, 14, 280, 14],
  height: [292, 26, 292, 150],
  "top-thickness": [12, 26, 12, 35],
  "end-overhang": [20, 44, 46, 44],
  leg: [46, 44, 66, 44],
  foot: [46, 158, 57, 158],
  "taper-start": [76, 62, 76, 72],
  "rail-width": [150, 35, 150, 62],
  ...inCorner,
  width: [392, 8, 392, 150],
  "side-overhang": [392, 124, 392, 150],
};

export function PlainTableDiagram(props: {
  readonly dimension: string | undefined;
  readonly texts: Readonly<Record<string, string>>;
}) {
  const { dimension, texts } = props;
  const isTapered = texts["leg-form"] !== "square";
  return (
    <Frame meant={dimension === undefined ? undefined : lines[dimension]}>
      <g className="diagram-wood">
        <path d="M20 26H280V35H20Z" />
        <path d="M66 35H234V62H66Z" />
        <path d={isTapered ? "M46 35H66V72L57 150H46Z" : "M46 35H66V150H46Z"} />
        <path d={isTapered ? "M254 35H234V72L243 150H254Z" : "M254 35H234V150H254Z"} />
      </g>
      <Corner isMitred={texts.tips === "mitred"} />
    </Frame>
  );
}
