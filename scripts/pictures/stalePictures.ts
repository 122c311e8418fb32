import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Picture } from "./pictureList.ts";
import { sourceHash } from "./sourceHash.ts";

/** Where the hashes of the sources stand as they were when the pictures were taken. */
export const recordPath = "docs/pictures.json";

/** The names of pictures that are older than the screen they show, or were never taken. */
export function stalePictures(root: string, pictures: readonly Picture[]): readonly string[] {
  const path = join(root, recordPath);
  const taken: Record<string, string> = existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : {};
  return pictures.filter(({ name, sources }) => taken[name] !== sourceHash(root, sources)).map(({ name }) => name);
}
