export function build(options?: { readonly force?: boolean }): Promise<boolean>;
export function bundleProgram(): Promise<Readonly<Record<string, Uint8Array>>>;
export function putInPlace(made: string, place: string): void;
