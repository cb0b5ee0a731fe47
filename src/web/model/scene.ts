import { Box3, type BufferGeometry, Matrix4, Mesh, Scene, Vector3 } from "three";
import { type Motion, posedAt, statesOf, type Turns } from "../../piece/index.ts";
import type { DrawnPart, Shape } from "../../workup/index.ts";
import { apartOffsets } from "./apart.ts";
import { footprintsOf } from "./footprints.ts";
import { createGround } from "./ground.ts";
import { createInk, EDGE } from "./ink.ts";
import { createShapeStore } from "./shape-store.ts";
import type { Standing } from "./standing.ts";
import type { Tones } from "./tones.ts";
import type { Place, Size } from "./view.ts";
import { createWood, paintWood, type Wood, woodTones } from "./wood-material.ts";

type Drawn = {
  standing: Standing;
  readonly wood: Wood;
  readonly edges: Mesh;
  readonly hidden: Mesh;
};

/** What is drawn over what, where neither is nearer. */
const order = { shadow: 0, edges: 1, hidden: 2, lifted: 3 };

/** What is shown of a piece, and how it stands. */
export type Shown = {
  /** their poses with every motion at 0 */
  readonly parts: readonly DrawnPart[];
  readonly motions: readonly Motion[];
  readonly turns: Turns;
  readonly shapes: ReadonlyMap<string, Shape>;
  readonly isApart: boolean;
};

export type PieceScene = {
  readonly scene: Scene;
  readonly standing: () => readonly Standing[];
  /** The corners of every part's box, as large as what it goes through from state to state. */
  readonly corners: () => readonly Place[];
  readonly show: (shown: Shown) => void;
  readonly lift: (keys: ReadonlySet<string>) => void;
  /** @param pixel  pixels of the screen in one of the page */
  readonly paint: (tones: Tones, size: Size, pixel: number) => void;
  /** Sets the faces behind their edges as this view needs it. */
  readonly sink: (mmPerPx: number, pixel: number) => void;
  readonly dispose: () => void;
};

/**
 * A line's inner half lies over a slanting face that may be nearer to the eye than the edge itself:
 * so faces stand back by their own slope over half a line. But no further than this, seen square
 * to the face, or what is cut into its other side would show through [mm].
 */
const DEEPEST_SINK = 2.5;

export function createPieceScene(): PieceScene {
  const scene = new Scene();
  const shapes = createShapeStore();
  const tones = woodTones();
  const ink = createInk();
  const ground = createGround();
  ground.mesh.renderOrder = order.shadow;
  scene.add(ground.mesh);
  const drawn = new Map<string, Drawn>();
  let lifted: ReadonlySet<string> = new Set();
  let reach: readonly Place[] = [];
  let last: Shown | undefined;

  const drop = (key: string, { standing, wood, edges, hidden }: Drawn) => {
    scene.remove(standing.faces, edges, hidden);
    wood.dispose();
    drawn.delete(key);
  };

  function place(part: DrawnPart, offset: Place): void {
    const shape = shapes.of(part.shape);
    if (!shape) return;
    const known = drawn.get(part.key);
    const wood = known?.wood ?? createWood(tones);
    const faces = known?.standing.faces ?? new Mesh(shape.faces, wood.material);
    const edges = known?.edges ?? new Mesh(shape.edges, ink.edge);
    const hidden = known?.hidden ?? new Mesh(shape.edges, ink.hidden);
    if (!known) {
      for (const object of [faces, edges, hidden]) object.matrixAutoUpdate = false;
      hidden.renderOrder = order.hidden;
      scene.add(faces, edges, hidden);
    }
    faces.geometry = shape.faces;
    edges.geometry = shape.edges;
    hidden.geometry = shape.edges;
    if (!known || !isSameWood(known.standing.part, part)) wood.grow(part);
    const matrix = matrixOf(part.pose, offset);
    for (const object of [faces, edges, hidden]) {
      object.matrix.copy(matrix);
      object.matrixWorldNeedsUpdate = true;
    }
    const box = boxIn(shape.faces, matrix);
    drawn.set(part.key, { standing: { part, faces, box }, wood, edges, hidden });
  }

  function lift(keys: ReadonlySet<string>): void {
    lifted = keys;
    for (const [key, { wood, edges, hidden }] of drawn) {
      const isLifted = keys.has(key);
      wood.lift(isLifted);
      edges.material = isLifted ? ink.lifted : ink.edge;
      edges.renderOrder = isLifted ? order.lifted : order.edges;
      hidden.visible = isLifted;
    }
  }

  const standing = () => [...drawn.values()].map((each) => each.standing);

  /** Where each part comes to in any state: so that nothing jumps while one is moved. */
  function reachOf({ parts, motions }: Shown, offsetOf: (key: string) => Place): readonly Place[] {
    const boxes = new Map(standing().map(({ part }) => [part.key, new Box3()]));
    for (const { turns } of statesOf(motions)) {
      for (const part of posedAt(parts, motions, turns)) {
        const faces = drawn.get(part.key)?.standing.faces.geometry;
        const matrix = matrixOf(part.pose, offsetOf(part.key));
        if (faces) boxes.get(part.key)?.union(boxIn(faces, matrix));
      }
    }
    return [...boxes.values()].flatMap(cornersOf);
  }

  return {
    scene,
    standing,
    corners: () => reach,
    show: (shown) => {
      const { parts, motions, turns, shapes: given, isApart } = shown;
      // As they go apart when nothing is turned: a leaf that is moved pushes nothing about.
      const offsets = isApart ? apartOffsets(parts) : undefined;
      const offsetOf = (key: string): Place => offsets?.get(key) ?? [0, 0, 0];
      shapes.keep(given);
      // One whose new shape has not come yet stays as it was.
      const staying = new Set(parts.map((p) => p.key));
      for (const [key, each] of drawn) if (!staying.has(key)) drop(key, each);
      for (const part of posedAt(parts, motions, turns)) place(part, offsetOf(part.key));
      if (!last || !isTurned(last, shown)) reach = reachOf(shown, offsetOf);
      last = shown;
      ground.shade(footprintsOf(standing()));
      lift(lifted);
    },
    lift,
    paint: (given, size, pixel) => {
      paintWood(tones, given, pixel);
      ink.paint(given, size, pixel);
      ground.paint(given);
    },
    sink: (mmPerPx, pixel) => {
      const factor = Math.min((EDGE * pixel) / 2 + 0.5, (DEEPEST_SINK * pixel) / mmPerPx);
      for (const { wood } of drawn.values()) wood.sink(factor);
    },
    dispose: () => {
      for (const [key, each] of drawn) drop(key, each);
      shapes.dispose();
      ink.dispose();
      ground.dispose();
    },
  };
}

/** Whether two differ in their turns alone. */
const isTurned = (a: Shown, b: Shown): boolean =>
  a.parts === b.parts &&
  a.motions === b.motions &&
  a.shapes === b.shapes &&
  a.isApart === b.isApart;

/** Whether the same strips lie in the same hand; a part that was only moved is not grown anew. */
const isSameWood = (a: DrawnPart, b: DrawnPart): boolean =>
  a.strips === b.strips && a.blank === b.blank && a.isMirrored === b.isMirrored;

const boxIn = ({ boundingBox }: BufferGeometry, matrix: Matrix4): Box3 =>
  new Box3().copy(boundingBox ?? new Box3()).applyMatrix4(matrix);

function matrixOf({ origin, x, y, z }: DrawnPart["pose"], offset: Place): Matrix4 {
  return new Matrix4()
    .makeBasis(new Vector3(...x), new Vector3(...y), new Vector3(...z))
    .setPosition(origin[0] + offset[0], origin[1] + offset[1], origin[2] + offset[2]);
}

const cornersOf = ({ min, max }: Box3): readonly Place[] =>
  [min.x, max.x].flatMap((x) =>
    [min.y, max.y].flatMap((y) => [min.z, max.z].map((z): Place => [x, y, z])),
  );
