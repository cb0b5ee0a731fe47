import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

const noNode = fileURLToPath(new URL("./tools/no-node.mjs", import.meta.url));

export default defineConfig({
  root: "src/web",
  base: "./",
  plugins: [react()],
  worker: { format: "es" },
  // manifold-3d and the writer of GLB name Node's modules, which they reach only in Node.
  resolve: { alias: [{ find: /^node:(fs|path|module)$/, replacement: noNode }] },
  build: {
    outDir: "../../dist/web",
    emptyOutDir: true,
    sourcemap: false,
    // The server's content-security policy allows neither inline scripts nor data: fonts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
