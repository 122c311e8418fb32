import { join } from "node:path";
import { build } from "electron-vite";

/** Everything Electron needs: main, preload and page, as `electron.config.ts` describes them. */
await build({ root: join(import.meta.dirname, ".."), configFile: "electron.config.ts", logLevel: "warn" });
