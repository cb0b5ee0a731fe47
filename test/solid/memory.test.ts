import { createRequire } from "node:module";
import { afterEach, describe, expect, test, vi } from "vitest";
import { createKernel, createSolids, type Kernel } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { bore, home, mortise, partOf, slopedHaunch, slot, tenon, turned } from "./samples.ts";

afterEach(() => void vi.restoreAllMocks());

/** Works that use every way into the kernel, with sizes of their own for each round. */
function work(kernel: Kernel, most: number) {
  const solids = createSolids(kernel, most);
  const round = (by: number): void => {
    const features = [
      tenon({ haunch: slopedHaunch, isMitred: true }),
      bore({ diameter: mm(8 + by / 10) }),
      slot({ x: mm(200) }),
      { feature: "taper", key: "t", face: "upper", from: mm(300), depth: mm(4) },
    ] as const;
    const rail = partOf([540 + by, 100, 20], features);
    const leg = partOf([700, 45 + by, 45], [mortise("show"), mortise("upper")], { key: "leg" });
    solids.interference([rail, { ...leg, isMirrored: true, pose: turned(45) }]);
    solids.swept([rail], [[{ ...leg, pose: turned(40) }], [{ ...leg, pose: turned(45) }]]);
    solids.sections([rail, leg], home);
    solids.outline(rail, home);
    const bad = partOf([540, 100, 20], [tenon(), bore({ diameter: mm(0) })]);
    expect(() => solids.of(bad)).toThrow();
  };
  return { solids, round };
}

type Obj = { delete(): void };
const isObj = (made: unknown): made is Obj =>
  typeof made === "object" && made !== null && "delete" in made;

/** Watches every object that the kernel makes, by whichever method, until it is deleted. */
function watched(kernel: Kernel): ReadonlySet<Obj> {
  const live = new Set<Obj>();
  const watch = (holder: Record<string, unknown>) => {
    for (const [name, plain] of Object.entries(holder)) {
      if (typeof plain !== "function") continue;
      vi.spyOn(holder as Record<string, (...args: unknown[]) => unknown>, name).mockImplementation(
        function (this: unknown, ...args) {
          const made = Reflect.apply(plain, this, args);
          for (const one of [made].flat()) if (isObj(one)) live.add(one);
          return made;
        },
      );
    }
  };
  const { Manifold, CrossSection } = kernel.wasm;
  // The kernel's own class lies under the one that it shows.
  const base = (shown: { prototype: object }) => Object.getPrototypeOf(shown.prototype);
  for (const shown of [Manifold, CrossSection]) watch(base(shown));
  watch(Manifold as never);
  const handle = Object.getPrototypeOf(base(Manifold)) as Obj;
  const free = handle.delete;
  vi.spyOn(handle, "delete").mockImplementation(function (this: Obj) {
    live.delete(this);
    free.call(this);
  });
  return live;
}

describe("the kernel's objects", () => {
  test("are all deleted but for the shapes that are held", async () => {
    const kernel = await createKernel();
    const live = watched(kernel);
    const { solids, round } = work(kernel, 5);
    for (let i = 0; i < 4; i++) round(i / 100);
    expect(solids.counts()).toEqual({ held: 5, built: 12 });
    expect(live.size).toBe(5);
    solids.free();
    expect(live.size).toBe(0);
  });

  test("are seen by this test when they are left lying", async () => {
    const { wasm } = await createKernel();
    const live = watched({ wasm });
    const cube = wasm.Manifold.cube([1, 2, 3]);
    const [first] = cube.decompose();
    const slice = cube.slice(1);
    expect([first, slice, cube].map((one) => one && live.has(one))).toEqual([true, true, true]);
    for (const one of [first, slice, cube]) one?.delete();
    expect(live.size).toBe(0);
  });
});

/** A kernel of its own, and how large its memory is: which the kernel does not tell. */
async function measured(): Promise<{ readonly kernel: Kernel; readonly bytes: () => number }> {
  const seen: WebAssembly.Memory[] = [];
  const plain = WebAssembly.instantiate;
  vi.spyOn(WebAssembly, "instantiate").mockImplementation((async (
    ...args: Parameters<typeof plain>
  ) => {
    const made = (await plain(...args)) as unknown as WebAssembly.WebAssemblyInstantiatedSource;
    const parts = Object.values(made.instance.exports);
    seen.push(...parts.filter((one) => one instanceof WebAssembly.Memory));
    return made;
  }) as unknown as typeof plain);
  const wasmUrl = createRequire(import.meta.url).resolve("manifold-3d/manifold.wasm");
  const kernel = await createKernel({ wasmUrl });
  return { kernel, bytes: () => seen.reduce((sum, memory) => sum + memory.buffer.byteLength, 0) };
}

test("the kernel's memory does not grow with rebuilds", async () => {
  const { kernel, bytes } = await measured();
  expect(bytes()).toBeGreaterThan(0);
  const { solids, round } = work(kernel, 10);
  for (let i = 0; i < 15; i++) round(i / 100);
  const before = bytes();
  for (let i = 15; i < 60; i++) round(i / 100);
  expect(bytes()).toBe(before);
  solids.free();

  // It does grow when things are left lying.
  const { Manifold } = kernel.wasm;
  const left = Array.from({ length: 150 }, () => Manifold.cylinder(10, 10, 10, 400));
  expect(bytes()).toBeGreaterThan(before);
  for (const one of left) one.delete();
});
