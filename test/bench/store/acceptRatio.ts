import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { openStore } from "../../../main/store/open.ts";
import type { Store } from "../../../main/store/Store.ts";
import type { BenchRow } from "../BenchRow.ts";
import { type CheckToFile, checkToFile, fileSpindles } from "./checksToFile.ts";
import { median } from "./median.ts";

const RUNS = 9;
const PER_RUN = 100;

/**
 * One accept (ledger entry, projections, waveforms, durable) against one bare durable transaction writing the same bytes:
 * entry, rows and waveforms of the check as one blob into a plain table. Both in turns, check by check, so that what
 * else the machine does falls on both.
 */
export function acceptRatio(): BenchRow[] {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-bench-"));
  const store = openStore({ path: join(folder, "accept.sqlite"), now: Date.now });
  const bare = openBare(join(folder, "bare.sqlite"));
  try {
    const spindles = fileSpindles(store, 50);
    const runs = Array.from({ length: RUNS + 1 }, (_, run) => {
      const checks = Array.from({ length: PER_RUN }, (_, i) =>
        checkToFile(store, spindles, run * PER_RUN + i + 1, true),
      );
      const figures = oneRun(store, bare, checks);
      store.tidy(); // as it comes by itself between two accepts
      return figures;
    }).slice(1); // the first warms up
    const ratio = median(runs.map(({ accept, plain }) => accept / plain));
    const ms = (pick: "accept" | "plain") => median(runs.map((run) => run[pick])).toFixed(3);
    const note = `accept ${ms("accept")} ms, bare ${ms("plain")} ms, medians of ${RUNS} runs of ${PER_RUN}`;
    return [
      {
        name: "accept against a bare durable transaction",
        measured: ratio,
        limit: 1.6,
        unit: "x",
        met: ratio <= 1.6,
        note,
      },
    ];
  } finally {
    store.close();
    bare.db.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

type Bare = { readonly db: Database.Database; readonly write: (bytes: Buffer) => void };

function openBare(path: string): Bare {
  const db = new Database(path);
  db.pragma("journal_mode = WAL");
  db.pragma("synchronous = FULL");
  db.exec("CREATE TABLE bare (n INTEGER PRIMARY KEY, bytes BLOB NOT NULL) STRICT");
  const insert = db.prepare("INSERT INTO bare (bytes) VALUES (?)");
  const inOne = db.transaction((bytes: Buffer) => insert.run(bytes));
  return { db, write: (bytes) => void inOne.immediate(bytes) };
}

function oneRun(store: Store, bare: Bare, checks: readonly CheckToFile[]): { accept: number; plain: number } {
  const accepts: number[] = [];
  const plains: number[] = [];
  for (const { draft, extra, waveforms } of checks) {
    accepts.push(timed(() => store.append([draft], extra)));
    const bytes = Buffer.concat([...rowsOf(store), ...waveforms.map((w) => w.bytes)]);
    plains.push(timed(() => bare.write(bytes)));
  }
  return { accept: mean(accepts), plain: mean(plains) };
}

/** What the last accept wrote, less the waveforms: the entry, and the rows of the lists. */
function rowsOf(store: Store): Buffer[] {
  const n = store.lastPlace();
  const one = (sql: string, key: unknown) => store.db.prepare(sql).raw().get(key) as unknown[];
  const entry = one("SELECT packed, hash, kind FROM entry WHERE n = ?", n);
  const row = one("SELECT * FROM check_row WHERE n = ?", n);
  const status = one("SELECT status FROM spindle_status WHERE spindle_id = ?", row[2]);
  return [...entry, JSON.stringify(row), ...status].map((part) =>
    Buffer.isBuffer(part) ? part : Buffer.from(String(part)),
  );
}

function timed(work: () => void): number {
  const startedAt = performance.now();
  work();
  return performance.now() - startedAt;
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
