import { existsSync } from "node:fs";
import { dirname, join } from "node:path";

/** The folder the program lies in: the checkout, also for the bundle that Electron runs in `out/main`. */
export const programRoot = folderWithManifest(import.meta.dirname);

/** Electron runs bundles; everything else runs the sources. */
export const isBundled = import.meta.dirname.startsWith(join(programRoot, "out"));

function folderWithManifest(from: string): string {
  const above = dirname(from);
  if (existsSync(join(from, "package.json")) || above === from) return from;
  return folderWithManifest(above);
}
