import { join } from "node:path";
import { build } from "vite";
import description from "../electron.config.ts";
import { isNewer, production } from "./isNewer.ts";
import { root } from "./run.ts";

const sources = ["renderer", "app", "electron.config.ts", "package-lock.json"];

/** Builds the page when one of its sources is newer than the last build; answers whether it did. */
export async function buildPage(): Promise<boolean> {
  if (!isNewer(sources, join(root, "out/renderer/index.html"))) return false;
  if (!("renderer" in description) || description.renderer === undefined)
    throw new Error("electron.config.ts names no page");
  const { entry: _, ...page } = description.renderer as Record<string, unknown>; // plain Vite settings but for names Vite does not know
  await production(() => build({ ...page, configFile: false, logLevel: "warn" }));
  return true;
}
