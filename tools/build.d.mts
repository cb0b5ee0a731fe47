export function build(options?: { readonly force?: boolean }): Promise<boolean>;
export function bundleProgram(): Promise<Uint8Array>;
export function putInPlace(made: string, place: string): void;
