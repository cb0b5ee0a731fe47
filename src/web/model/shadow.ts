/** What a part covers of the floor, and how its shadow falls there [mm]. */
export type Footprint = {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  /** how soft its edge is */
  readonly blur: number;
  /** how dark it is in its middle [0 to 1] */
  readonly dark: number;
};

/** Darkness over a stretch of floor, row after row from the front [0 to 255]. */
export type Shadow = {
  readonly cells: Uint8Array<ArrayBuffer>;
  readonly columns: number;
  readonly rows: number;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
};

/** Cells along the longer side: the light falls off softly, so few will do. */
const CELLS = 160;

/** How much of a soft-edged stretch is over a place: 1 well inside it, 0 well outside. */
function cover(at: number, [from, to]: readonly [number, number], blur: number): number {
  const step = (d: number) => 1 / (1 + Math.exp((-1.7 * d) / blur));
  return step(at - from) - step(at - to);
}

/** The floor's shadow under the footprints: the darkest of them at each place, added to by no other. */
export function shadowUnder(prints: readonly Footprint[]): Shadow | undefined {
  if (prints.length === 0) return undefined;
  const reach = (side: "x" | "y"): readonly [number, number] => [
    Math.min(...prints.map((print) => print[side][0] - 3 * print.blur)),
    Math.max(...prints.map((print) => print[side][1] + 3 * print.blur)),
  ];
  const [x, y] = [reach("x"), reach("y")];
  const cell = Math.max(x[1] - x[0], y[1] - y[0]) / CELLS;
  const [columns, rows] = [Math.ceil((x[1] - x[0]) / cell), Math.ceil((y[1] - y[0]) / cell)];
  const middle = (span: readonly [number, number], i: number, of: number) =>
    span[0] + ((i + 0.5) / of) * (span[1] - span[0]);
  const cells = new Uint8Array(columns * rows);
  for (const print of prints) {
    const across = Array.from({ length: columns }, (_, i) =>
      cover(middle(x, i, columns), print.x, print.blur),
    );
    for (let row = 0; row < rows; row++) {
      const along = 255 * print.dark * cover(middle(y, row, rows), print.y, print.blur);
      for (let column = 0; column < columns; column++) {
        const i = row * columns + column;
        cells[i] = Math.max(cells[i] as number, along * (across[column] as number));
      }
    }
  }
  return { cells, columns, rows, x, y };
}
