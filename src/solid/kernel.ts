import loadModule, { type ManifoldToplevel } from "manifold-3d";

/** The loaded kernel, to be handed about; only this room looks into it. */
export type Kernel = { readonly wasm: ManifoldToplevel };

/** One for each place the WASM was loaded from: a second one would only take memory. */
const loading = new Map<string, Promise<Kernel>>();

/**
 * Loads the kernel's WASM, the first time it is asked for.
 *
 * @param options.wasmUrl  where `manifold.wasm` is: a URL, or in Node also a path. Left out, it lies
 *   beside the module that this one is bundled into, or in its own package.
 */
export function createKernel(options: { readonly wasmUrl?: string } = {}): Promise<Kernel> {
  const { wasmUrl } = options;
  const known = loading.get(wasmUrl ?? "");
  if (known) return known;
  const kernel = load(wasmUrl).catch((fault: unknown) => {
    // Another attempt may find what this one did not.
    loading.delete(wasmUrl ?? "");
    throw fault;
  });
  loading.set(wasmUrl ?? "", kernel);
  return kernel;
}

async function load(wasmUrl: string | undefined): Promise<Kernel> {
  const wasm = await loadModule(wasmUrl === undefined ? undefined : { locateFile: () => wasmUrl });
  wasm.setup();
  return { wasm };
}

/** What lies in the kernel's memory and is not collected as garbage. */
type Freed = { delete(): void };

export type Scope = {
  readonly wasm: ManifoldToplevel;
  /** Hands back what it is given, to be freed when the scope ends. */
  readonly keep: <T extends Freed>(made: T) => T;
  /** Takes something out of the scope, which then someone else must free. */
  readonly handOut: <T extends Freed>(kept: T) => T;
};

/** Does some work and then frees all that was kept, whether the work came to an end or threw. */
export function withKernel<R>({ wasm }: Kernel, work: (scope: Scope) => R): R {
  const kept = new Set<Freed>();
  const keep = <T extends Freed>(made: T): T => {
    kept.add(made);
    return made;
  };
  const handOut = <T extends Freed>(held: T): T => {
    if (!kept.delete(held)) throw new Error("handed out of a scope that does not hold it");
    return held;
  };
  try {
    return work({ wasm, keep, handOut });
  } finally {
    for (const made of kept) made.delete();
  }
}
