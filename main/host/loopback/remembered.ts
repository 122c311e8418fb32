import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { z } from "zod";

const shape = z.object({
  port: z.number().int().min(0).max(65_535),
  tokenHashes: z.array(z.string().regex(/^[0-9a-f]{64}$/)).max(64),
});
export type Remembered = z.infer<typeof shape>;

/** What the last run left, or nothing when there is no such file or it is not ours to read. */
export function readRemembered(path: string): Remembered {
  try {
    return shape.parse(JSON.parse(readFileSync(path, "utf8")));
  } catch {
    return { port: 0, tokenHashes: [] };
  }
}

/** Written whole and moved into place, readable by this user alone. A place that cannot be written only costs the comfort. */
export function remember(
  path: string,
  what: { readonly port: number; readonly tokenHashes: readonly string[] },
): boolean {
  try {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    writeFileSync(`${path}.new`, JSON.stringify(what), { mode: 0o600 });
    renameSync(`${path}.new`, path);
    return true;
  } catch {
    return false;
  }
}
