import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { programRoot } from "../programRoot.ts";

/**
 * The measuring core by its own bytes: SHA-256 over every file of `app/`, by path in the order of its characters, each
 * as its path, a line end, its own SHA-256, a line end. Two installations with the same figure measure and judge alike.
 * @returns  lower-case hex; undefined where the sources are not beside the program
 */
export function programHash(root = join(programRoot, "app")): string | undefined {
  if (!existsSync(root)) return undefined;
  const files = readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => join(entry.parentPath, entry.name));
  const named = files.map((file) => [relative(root, file).split(sep).join("/"), file] as const);
  const sum = createHash("sha256");
  for (const [name, file] of named.sort(([a], [b]) => (a < b ? -1 : 1))) {
    sum.update(`${name}\n${createHash("sha256").update(readFileSync(file)).digest("hex")}\n`);
  }
  return sum.digest("hex");
}
