import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { build } from "vite";
import description from "../electron.config.ts";

const root = join(import.meta.dirname, "..");
const sources = ["renderer", "app", "electron.config.ts", "package-lock.json"];

/** Builds the page when one of its sources is newer than the last build; answers whether it did. */
export async function buildPage(): Promise<boolean> {
  const built = join(root, "out/renderer/index.html");
  const builtAt = existsSync(built) ? statSync(built).mtimeMs : 0;
  if (builtAt > 0 && sources.every((source) => newest(join(root, source)) <= builtAt)) return false;
  if (!("renderer" in description) || description.renderer === undefined)
    throw new Error("electron.config.ts names no page");
  const { entry: _, ...page } = description.renderer as Record<string, unknown>; // plain Vite settings but for names Vite does not know
  // Whoever builds (a test says "test"), the page is the one users get; what runs next must not inherit it.
  const mode = process.env.NODE_ENV;
  process.env.NODE_ENV = "production";
  await build({ ...page, configFile: false, logLevel: "warn" });
  if (mode === undefined) delete process.env.NODE_ENV;
  else process.env.NODE_ENV = mode;
  return true;
}

function newest(path: string): number {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) return 0;
  if (!found.isDirectory()) return found.mtimeMs;
  let latest = 0;
  for (const entry of readdirSync(path, { withFileTypes: true }))
    latest = Math.max(latest, newest(join(path, entry.name)));
  return latest;
}
