import { Document, type Material, type Mesh, WebIO } from "@gltf-transform/core";
import { type Frame, times, type Vec3 } from "../geometry/index.ts";
import type { Part } from "../piece/index.ts";
import { flatMesh } from "./flat-mesh.ts";
import type { Solid } from "./mesh.ts";
import { matrixOf } from "./placed.ts";

/** A part with its solid, and what it is to look like. */
export type GlbPart = {
  readonly part: Pick<Part, "mark" | "name" | "pose">;
  readonly solid: Solid;
  /** a name, and its colour as `#rrggbb` */
  readonly timber: { readonly name: string; readonly colour: string };
};

/**
 * A piece as a binary glTF: a node a part, named by its mark and name, in metres and y up. Equal
 * parts share a mesh, parts of one timber a material.
 */
export async function writeGlb(parts: readonly GlbPart[]): Promise<Uint8Array> {
  const made = new Document();
  made.getRoot().getAsset().generator = "Latewood";
  made.createBuffer();
  const materialFor = shared((name: string, colour: string) => materialOf(made, name, colour));
  const meshFor = shared((solid: Solid, material: Material) => meshOf(made, solid, material));
  const scene = made.createScene("piece");
  for (const { part, solid, timber } of parts) {
    const mesh = meshFor(solid, materialFor(timber.name, timber.colour));
    const node = made.createNode(`${part.mark} ${part.name}`).setMesh(mesh);
    scene.addChild(node.setMatrix(matrixOf(upright(part.pose))));
  }
  return new WebIO().writeBinary(made);
}

/** Remembers what was made for two things, each looked up as itself. */
function shared<A, B, R>(make: (a: A, b: B) => R): (a: A, b: B) => R {
  const all = new Map<A, Map<B, R>>();
  return (a, b) => {
    const some = all.get(a) ?? new Map<B, R>();
    all.set(a, some);
    const one = some.get(b) ?? make(a, b);
    some.set(b, one);
    return one;
  };
}

const METRES = 1e-3;

/** A pose as glTF sees it: ours is y away and z up, theirs is y up and z towards the viewer. */
function upright({ origin, x, y, z }: Frame): Frame {
  const turned = ([right, away, up]: Vec3): Vec3 => [right, up, -away];
  return { origin: turned(times(origin, METRES)), x: turned(x), y: turned(y), z: turned(z) };
}

function meshOf(made: Document, solid: Solid, material: Material): Mesh {
  const { positions, normals, indices } = flatMesh(solid, METRES);
  const buffer = made.getRoot().listBuffers()[0] ?? null;
  const accessor = (
    array: Float32Array | Uint16Array | Uint32Array,
    type: "VEC3" | "SCALAR" = "VEC3",
  ) => made.createAccessor().setArray(array).setType(type).setBuffer(buffer);
  return made
    .createMesh()
    .addPrimitive(
      made
        .createPrimitive()
        .setAttribute("POSITION", accessor(positions))
        .setAttribute("NORMAL", accessor(normals))
        .setIndices(accessor(indices, "SCALAR"))
        .setMaterial(material),
    );
}

const materialOf = (made: Document, name: string, colour: string): Material =>
  made
    .createMaterial(name)
    .setBaseColorFactor([...linear(colour), 1])
    .setMetallicFactor(0)
    .setRoughnessFactor(0.8);

/** A colour as it is shone, not as it is written: the curve of IEC 61966-2-1 taken off. */
function linear(colour: string): [number, number, number] {
  const [, ...parts] = /^#([\da-f]{2})([\da-f]{2})([\da-f]{2})$/i.exec(colour) ?? [];
  if (parts.length !== 3) throw new Error(`${colour} is not a colour of the form #rrggbb`);
  const shone = parts.map((two) => {
    const n = Number.parseInt(two, 16) / 255;
    return n <= 0.04045 ? n / 12.92 : ((n + 0.055) / 1.055) ** 2.4;
  });
  return shone as [number, number, number];
}
