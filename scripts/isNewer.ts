import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { root } from "./run.ts";

/** Whether one of the sources (files or folders of the checkout) has changed since `built` was made, or it is not there. */
export function isNewer(sources: readonly string[], built: string): boolean {
  const builtAt = statSync(built, { throwIfNoEntry: false })?.mtimeMs ?? 0;
  return builtAt === 0 || sources.some((source) => newest(join(root, source)) > builtAt);
}

/** Whoever builds (a test says "test"), what comes out is what users get; what runs next must not inherit it. */
export async function production<T>(build: () => Promise<T>): Promise<T> {
  const mode = process.env.NODE_ENV;
  process.env.NODE_ENV = "production";
  try {
    return await build();
  } finally {
    if (mode === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = mode;
  }
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
