import { join } from "node:path";
import { build } from "electron-vite";
import { isNewer, production } from "./isNewer.ts";
import { root } from "./run.ts";

const sources = ["main", "app", "renderer", "electron.config.ts", "package-lock.json"];

/** Builds all that Electron needs (main, preload, page) when a source is newer than the last build; answers whether it did. */
export async function buildWindow(): Promise<boolean> {
  if (!isNewer(sources, join(root, "out/main/main.js"))) return false;
  await production(() => build({ root, configFile: "electron.config.ts", logLevel: "warn" }));
  return true;
}
