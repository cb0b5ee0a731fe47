declare const LATEWOOD_VERSION: string;

/** The version in package.json, which the build puts in place of the name; unbuilt sources have none. */
export const version = typeof LATEWOOD_VERSION === "undefined" ? "unbuilt" : LATEWOOD_VERSION;
