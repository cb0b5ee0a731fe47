import { frameOf } from "../src/geometry/index.ts";
import type { Feature, Part } from "../src/piece/index.ts";
import { createKernel, createSolids, solidOf } from "../src/solid/index.ts";
import { mm } from "../src/units/index.ts";
import { type Timing, time } from "./measure.ts";

const part = (key: string, size: readonly [number, number, number], features: readonly Feature[]) =>
  ({
    ...{ key, mark: "A1", name: key, role: "rail", features, isMirrored: false },
    blank: { length: mm(size[0]), width: mm(size[1]), thickness: mm(size[2]) },
    pose: frameOf([0, 0, 0], [1, 0, 0], [0, 1, 0]),
    reference: { face: "show", edge: "upper" },
    ...{ shows: [], sawn: "flat", strips: [] },
  }) satisfies Part;

const haunch = { length: mm(8), isSloped: true };
const tenon = (end: "left" | "right"): Feature => ({
  ...{ feature: "tenon", key: end, end, length: mm(30), haunch, isMitred: true },
  y: [mm(15), mm(80)],
  z: [mm(6), mm(13)],
});
const mortise = (face: "show" | "upper"): Feature => ({
  ...{ feature: "mortise", key: face, face, depth: mm(30), haunch },
  x: [mm(20), mm(85)],
  across: [mm(14), mm(23)],
});

const rail = part("rail", [540, 100, 20], [tenon("left"), tenon("right")]);
const leg = part("leg", [700, 45, 45], [mortise("show"), mortise("upper")]);
const bored = part(
  "cleat",
  [300, 40, 20],
  [
    {
      ...{ feature: "screw-slot", key: "s", runs: "along" },
      ...{ x: mm(60), z: mm(10), travel: mm(9), diameter: mm(5) },
      ...{ headDiameter: mm(10), headDepth: mm(12) },
    },
  ],
);

/** Building a part's solid, comparing posed parts, cutting and writing them; sizes are invented. */
export async function solids(): Promise<readonly Timing[]> {
  const kernel = await createKernel();
  const kept = createSolids(kernel);
  const parts = [rail, leg, bored].flatMap((one) =>
    [0, 40, 80, 120].map(
      (y, i): Part => ({
        ...one,
        key: `${one.key}/${i}`,
        pose: frameOf([0, y, 0], [1, 0, 0], [0, 1, 0]),
      }),
    ),
  );
  const across = frameOf([300, 0, 0], [0, 1, 0], [0, 0, 1]);
  return [
    time("solid of a rail with two haunched tenons", () => solidOf(kernel, rail)),
    time("solid of a leg with two haunched mortises", () => solidOf(kernel, leg)),
    time("solid of a cleat with a screw slot", () => solidOf(kernel, bored)),
    time("twelve parts found in the store", () => parts.map((one) => kept.of(one))),
    time("interference of twelve parts, 66 pairs", () => kept.interference(parts)),
    time("section through twelve parts", () => kept.sections(parts, across)),
  ];
}
