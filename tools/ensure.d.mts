export class Stop extends Error {}
export const root: string;
export function isFileFault(fault: unknown): boolean;
export function inWords(fault: unknown): string;
export function note(file: string, text: string): void;
