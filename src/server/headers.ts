const contentSecurityPolicy = [
  "default-src 'none'",
  // The model's solids are computed by WebAssembly, in a worker. It is under the policy its own
  // script came with, and compiling counts as evaluating; of text as code nothing is let through.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/** Sent with every answer, refusals and errors included. */
export const strictHeaders: readonly (readonly [name: string, value: string])[] = [
  ["content-security-policy", contentSecurityPolicy],
  ["x-content-type-options", "nosniff"],
  ["referrer-policy", "no-referrer"],
  ["cross-origin-opener-policy", "same-origin"],
  ["cross-origin-resource-policy", "same-origin"],
  ["permissions-policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=()"],
];
