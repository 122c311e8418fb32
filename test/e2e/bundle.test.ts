import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { expect, it } from "vitest";

const page = resolve(import.meta.dirname, "..", "..", "out", "renderer");
const LIMIT_BYTES = 350_000;

/** The scripts the first screen needs: the entry and what it imports at once; what is imported when wanted is left out. */
function firstScripts(): readonly string[] {
  const html = readFileSync(join(page, "index.html"), "utf8");
  const waiting = [...html.matchAll(/<script[^>]+src="\.\/([^"]+)"/g)].map((m) => m[1]!);
  const found = new Set<string>();
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (found.has(path)) continue;
    found.add(path);
    const code = readFileSync(join(page, path), "utf8");
    for (const m of code.matchAll(/(?:\bfrom|\bimport)\s*["']\.\/([\w.-]+\.js)["']/g)) waiting.push(`assets/${m[1]}`);
  }
  return [...found];
}

it.runIf(existsSync(join(page, "index.html")))(
  "brings the first screen in less than 350 kB of script, gzipped, and leaves help and tour for later",
  () => {
    const scripts = firstScripts();
    const bytes = scripts.reduce((sum, path) => sum + gzipSync(readFileSync(join(page, path))).length, 0);
    expect(scripts.length).toBeGreaterThan(0);
    expect(bytes).toBeGreaterThan(50_000); // else the entry was not found
    expect(bytes).toBeLessThan(LIMIT_BYTES);
    expect(scripts.filter((path) => /\/(Help|Tour)-/.test(path))).toEqual([]);
  },
);
