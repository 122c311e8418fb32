import { exportArchive } from "../../../main/archive/exportArchive.ts";
import { importArchive } from "../../../main/archive/importArchive.ts";
import { openReader, openStore } from "../../../main/store/open.ts";

/** What one act took. */
export type ArchiveRun = { readonly tookS: number; readonly processorS: number; readonly peakBytes: number };

const [act, path, file] = process.argv.slice(2) as [string, string, string];
const watch = { progress: () => {}, goOn: () => {} };
const startedAt = performance.now();
if (act === "export") {
  const db = openReader(path);
  await exportArchive(db, { file, waveforms: true, program: "bench", demo: false, nowMs: Date.now(), watch });
  db.close();
} else {
  const store = openStore({ path, now: Date.now, machine: "elsewhere" });
  importArchive(store, file, watch);
  store.close();
}
const tookS = (performance.now() - startedAt) / 1000;
const { user, system } = process.cpuUsage();
process.send?.({
  tookS,
  processorS: (user + system) / 1e6,
  peakBytes: process.resourceUsage().maxRSS * 1024,
} satisfies ArchiveRun);
