import { BufferAttribute, BufferGeometry } from "three";
import { LineSegmentsGeometry } from "three/addons/lines/LineSegmentsGeometry.js";
import type { Shape } from "../../workup/index.ts";

/** A shape on the graphics card, shared by all parts that have it. */
type Kept = {
  readonly faces: BufferGeometry;
  readonly edges: LineSegmentsGeometry;
};

export type ShapeStore = {
  /** Lets go of every shape that is no longer among these, and takes these as what there is. */
  readonly keep: (shapes: ReadonlyMap<string, Shape>) => void;
  /** The shape of that name, built when it is first asked for. */
  readonly of: (name: string) => Kept | undefined;
  readonly dispose: () => void;
};

export function createShapeStore(): ShapeStore {
  const kept = new Map<string, Kept>();
  let known: ReadonlyMap<string, Shape> = new Map();
  const keep = (shapes: ReadonlyMap<string, Shape>) => {
    for (const [name, { faces, edges }] of kept) {
      if (shapes.has(name)) continue;
      faces.dispose();
      edges.dispose();
      kept.delete(name);
    }
    known = shapes;
  };
  return {
    keep,
    of: (name) => {
      const built = kept.get(name);
      const shape = known.get(name);
      if (built || !shape) return built;
      const made = {
        faces: facesOf(shape),
        edges: new LineSegmentsGeometry().setPositions(shape.edges),
      };
      kept.set(name, made);
      return made;
    },
    dispose: () => keep(new Map()),
  };
}

function facesOf({ positions, normals, indices }: Shape): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(positions, 3));
  geometry.setAttribute("normal", new BufferAttribute(normals, 3));
  geometry.setIndex(new BufferAttribute(indices, 1));
  geometry.computeBoundingBox();
  return geometry;
}
