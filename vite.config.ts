import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

export default defineConfig({
  root: "src/web",
  base: "./",
  plugins: [react()],
  worker: { format: "es" },
  build: {
    outDir: "../../dist/web",
    emptyOutDir: true,
    sourcemap: false,
    // The server's content-security policy allows neither inline scripts nor data: fonts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
