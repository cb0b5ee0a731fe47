import { coverOf, type Ends, hiddenBy } from "./cover.ts";
import { gridOf } from "./grid.ts";
import { joinedUp } from "./joined-up.ts";
import type { Scene } from "./scene.ts";
import { type Lines, merged, type Segment } from "./stretches.ts";

/** Shorter than this an edge is seen end on [mm]. */
const END_ON = 1e-5;
/** Less of an edge than this is rounding: where it dives behind a face it starts from, most of all [mm]. */
const SCRAP = 5e-3;

/**
 * A scene's edges, cut exactly where faces begin to hide them; what lies on one line is joined, and
 * a hidden line under a visible one is none.
 */
export function linesOf(scene: Scene): Lines {
  const { visible, hidden } = cutEdges(scene);
  return joinedUp(visible, hidden);
}

function cutEdges({ triangles, edges }: Scene) {
  const cover = coverOf(triangles);
  const grid = gridOf(cover);
  const visible: Segment[] = [];
  const hidden: Segment[] = [];
  for (let i = 0; i < edges.length; i += 6) {
    const edge = [...edges.subarray(i, i + 6)] as unknown as Ends;
    const [x0, y0, , x1, y1] = edge;
    const size = Math.hypot(x1 - x0, y1 - y0);
    if (size < END_ON) continue;
    const stretches = grid.near(edge).flatMap((face) => {
      const stretch = hiddenBy(cover, face, edge);
      return stretch ? [stretch] : [];
    });
    const put = (list: Segment[], from: number, to: number) => {
      if ((to - from) * size < SCRAP) return;
      const along = (t: number) => [x0 + t * (x1 - x0), y0 + t * (y1 - y0)] as const;
      list.push([...along(from), ...along(to)]);
    };
    let seen = 0;
    for (const [from, to] of merged(stretches, SCRAP / size)) {
      put(visible, seen, from);
      put(hidden, from, to);
      seen = to;
    }
    put(visible, seen, 1);
  }
  return { visible, hidden };
}
