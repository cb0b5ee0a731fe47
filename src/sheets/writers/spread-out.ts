type Block = { readonly first: number; readonly count: number; readonly sum: number };

/**
 * Places in a row, moved as little as keeps each so far from the next: least squares by pooling
 * neighbours that would come too close.
 *
 * @param wanted  where each would like to stand, in order [mm]
 * @param pitch  least from one to the next [mm]
 */
export function spreadOut(wanted: readonly number[], pitch: number): readonly number[] {
  const blocks: Block[] = [];
  const mean = ({ sum, count }: Block) => sum / count;
  for (const [i, place] of wanted.entries()) {
    let block: Block = { first: i, count: 1, sum: place - i * pitch };
    for (;;) {
      const last = blocks.at(-1);
      if (!last || mean(last) <= mean(block)) break;
      blocks.pop();
      block = { first: last.first, count: last.count + block.count, sum: last.sum + block.sum };
    }
    blocks.push(block);
  }
  return blocks.flatMap((block) =>
    Array.from({ length: block.count }, (_, i) => mean(block) + (block.first + i) * pitch),
  );
}
