import { resolve } from "node:path";
import react from "@vitejs/plugin-react";
import { defineConfig } from "electron-vite";

/**
 * The one build description: main and preload for Electron, and the page that Electron's window and a browser share.
 * Native packages stay outside the bundles; the preload is CommonJS because a sandboxed window takes nothing else.
 */
const here = import.meta.dirname;

export default defineConfig({
  main: {
    build: {
      outDir: resolve(here, "out/main"),
      externalizeDeps: true,
      rollupOptions: {
        input: {
          main: resolve(here, "main/host/electron/main.ts"),
          worker: resolve(here, "main/jobs/worker.ts"),
        },
        output: { format: "es", entryFileNames: "[name].js" },
      },
    },
  },
  preload: {
    build: {
      outDir: resolve(here, "out/preload"),
      rollupOptions: {
        input: { preload: resolve(here, "main/host/electron/preload.ts") },
        output: { format: "cjs", entryFileNames: "[name].cjs" },
      },
    },
  },
  renderer: {
    root: resolve(here, "renderer"),
    base: "./",
    plugins: [react()],
    build: {
      outDir: resolve(here, "out/renderer"),
      emptyOutDir: true,
      target: "es2023",
      minify: true, // electron-vite would leave it long
      assetsInlineLimit: 0, // the page's policy allows nothing inline
      modulePreload: { polyfill: false },
      rollupOptions: { input: resolve(here, "renderer/index.html") },
    },
  },
});
