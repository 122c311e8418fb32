import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openStore } from "../../main/store/open.ts";
import { flipBits } from "../support/flipBits.ts";
import { fillStore } from "../support/fullStore.ts";

/** Flips single bits of a data file, `count` of them. Answers the sentence to print, and whether all were found. */
export async function storeFlips(count = 1000, seed = 8785): Promise<{ ok: boolean; said: string }> {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-flips-"));
  try {
    const path = join(folder, "whole.sqlite");
    const store = openStore({ path, now: () => 1_709_542_800_000, machine: "bench" });
    fillStore(store, 30);
    store.close();
    const { changed, found, refused, missed } = await flipBits(
      readFileSync(path),
      join(folder, "flipped.sqlite"),
      count,
      seed,
    );
    const said = `${count} bit flips (seed ${seed}): ${changed} change an answer; ${found} found by verify, ${refused} refused at opening, ${missed.length} missed ${missed.join("; ")}`;
    return { ok: missed.length === 0 && changed > 0, said };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

if (import.meta.main) {
  const { ok, said } = await storeFlips(Number(process.argv[2] ?? 1000), Number(process.argv[3] ?? 8785));
  console.log(said);
  process.exitCode = ok ? 0 : 1;
}
