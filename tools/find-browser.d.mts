export function findBrowser(): string | undefined;
export function browserRemedy(): string;
