import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/**
 * One hash over the sources that draw a screen, by path and content, line ends made alike.
 * @param sources  files or folders under `root`, with forward slashes
 * @throws when one of them is not there: a picture must not stay new because its screen was renamed
 */
export function sourceHash(root: string, sources: readonly string[]): string {
  const hash = createHash("sha256");
  for (const path of sources.flatMap((source) => filesOf(root, source)).toSorted()) {
    const text = readFileSync(join(root, path), "utf8").replaceAll("\r\n", "\n");
    hash.update(`${path}\0${text}\0`);
  }
  return hash.digest("hex").slice(0, 16);
}

function filesOf(root: string, path: string): string[] {
  if (!statSync(join(root, path)).isDirectory()) return [path];
  return readdirSync(join(root, path), { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() || /\.(tsx?|css)$/.test(entry.name) ? filesOf(root, `${path}/${entry.name}`) : [],
  );
}
