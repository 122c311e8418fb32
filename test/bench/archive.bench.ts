import { fork } from "node:child_process";
import { mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openStore } from "../../main/store/open.ts";
import type { ArchiveRun } from "./archive/runArchive.ts";
import type { BenchRow } from "./BenchRow.ts";
import { checkToFile, fileSpindles } from "./store/checksToFile.ts";

const CHECKS = 100_000;
const SMALL = 5_000;
/** Large enough for the collector to have found its pace: from here on memory must not grow with the records. */
const MIDDLE = 20_000;
const WITH_READINGS = 10_000;

/** Export and import of 100,000 checks, each in a process of its own so that its memory can be seen. */
export async function archiveBench(): Promise<BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-bench-"));
  try {
    const at = (name: string) => join(folder, name);
    fill(at("small.sqlite"), SMALL, false);
    fill(at("middle.sqlite"), MIDDLE, false);
    fill(at("big.sqlite"), CHECKS, false);
    fill(at("waved.sqlite"), WITH_READINGS, true);
    const smallOut = await run("export", at("small.sqlite"), at("small.zip"));
    const middleOut = await run("export", at("middle.sqlite"), at("middle.zip"));
    const out = await run("export", at("big.sqlite"), at("big.zip"));
    const smallIn = await run("import", at("small-again.sqlite"), at("small.zip"));
    const into = await run("import", at("again.sqlite"), at("big.zip"));
    const waved = await run("export", at("waved.sqlite"), at("waved.zip"));
    const wavedIn = await run("import", at("waved-again.sqlite"), at("waved.zip"));
    const size = `archive of ${(statSync(at("big.zip")).size / 1e6).toFixed(0)} MB`;
    return [
      seconds("export of 100,000 checks", out.tookS, `${size}; ${processor(out)}`),
      memory("export: memory with 100,000 checks above that with 5,000", out, smallOut),
      memory("export: memory with 100,000 checks above that with 20,000", out, middleOut),
      seconds(
        "import of 100,000 checks",
        into.tookS,
        `every entry checked, all in one transaction; ${processor(into)}`,
      ),
      memory("import: memory with 100,000 checks above that with 5,000", into, smallIn),
      seconds(
        "export of 100,000 checks with 400,000 cycles of 700 readings",
        waved.tookS * (CHECKS / WITH_READINGS),
        "measured on 10,000 checks, times ten",
      ),
      seconds("import of the same", wavedIn.tookS * (CHECKS / WITH_READINGS), "measured on 10,000 checks, times ten"),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function fill(path: string, checks: number, waved: boolean): void {
  const store = openStore({ path, now: Date.now, machine: "bench" });
  const spindles = fileSpindles(store, 60);
  for (let i = 0; i < checks; i += 1_000) {
    const made = Array.from({ length: Math.min(1_000, checks - i) }, (_, k) =>
      checkToFile(store, spindles, i + k + 1, waved),
    );
    store.append(
      made.map(({ draft }) => draft),
      { waveforms: made.flatMap(({ waveforms }) => waveforms) },
    );
  }
  store.close();
}

function run(act: "export" | "import", path: string, file: string): Promise<ArchiveRun> {
  return new Promise((done, fail) => {
    const child = fork(join(import.meta.dirname, "archive", "runArchive.ts"), [act, path, file]);
    child.on("message", (message) => done(message as ArchiveRun)); // what `runArchive` sends
    child.on("exit", (code) => fail(new Error(`${act} ended with ${code}`))); // no-op when it has answered
  });
}

const processor = (run: ArchiveRun) => `${run.processorS.toFixed(0)} s of processor time, all threads`;

const seconds = (name: string, measured: number, note: string): BenchRow => ({
  name,
  measured,
  limit: 60,
  unit: "s",
  met: measured < 60,
  note,
});

function memory(name: string, big: ArchiveRun, small: ArchiveRun): BenchRow {
  const measured = (big.peakBytes - small.peakBytes) / 1e6;
  const note = `peak resident ${(small.peakBytes / 1e6).toFixed(0)} MB and ${(big.peakBytes / 1e6).toFixed(0)} MB`;
  return { name, measured, limit: 100, unit: "MB", met: measured < 100, note };
}

if (import.meta.main) {
  for (const row of await archiveBench()) process.stdout.write(`${JSON.stringify(row)}\n`);
}
