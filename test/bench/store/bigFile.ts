import { mkdtempSync, rmSync, statSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { Jobs } from "../../../main/jobs/Jobs.ts";
import { openStore } from "../../../main/store/open.ts";
import { spindleList } from "../../../main/store/records/spindles.ts";
import type { Store } from "../../../main/store/Store.ts";
import type { BenchRow } from "../BenchRow.ts";
import { checkToFile, fileSpindles } from "./checksToFile.ts";
import { median } from "./median.ts";

const SPINDLES = 60;

/** What grows with the records: size, start, accept and verify, with 100, 100,000 and, when asked, a million checks. */
export async function bigFile(million: boolean): Promise<BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-bench-"));
  try {
    const small = filledFile(join(folder, "small.sqlite"), 100);
    const big = filledFile(join(folder, "big.sqlite"), 100_000);
    const rows = [sizeRow(big, 100_000), startRow(small, big), await verifyRow(big)];
    if (!million) return rows;
    const huge = filledFile(join(folder, "huge.sqlite"), 1_000_000);
    return [...rows, listRow(huge), acceptRow(small, huge)];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const open = (path: string): Store => openStore({ path, now: Date.now, machine: "bench" });

function filledFile(path: string, checks: number): string {
  const store = open(path);
  const spindles = fileSpindles(store, SPINDLES);
  for (let i = 0; i < checks; i += 1_000) {
    const count = Math.min(1_000, checks - i);
    store.append(Array.from({ length: count }, (_, k) => checkToFile(store, spindles, i + k + 1, false).draft));
  }
  store.close();
  return path;
}

function sizeRow(path: string, checks: number): BenchRow {
  const measured = statSync(path).size / checks / 1000;
  const name = "file size per check without waveforms, 100,000 checks";
  return { name, measured, limit: 6, unit: "KB", met: measured <= 6 };
}

/** Open the file and list the spindles: what the first screen waits for. */
function startRow(small: string, big: string): BenchRow {
  const pairs = Array.from({ length: 15 }, () => [start(small), start(big)] as const);
  const measured = median(pairs.map(([s, b]) => b / s));
  const note = `${median(pairs.map(([s]) => s)).toFixed(1)} ms and ${median(pairs.map(([, b]) => b)).toFixed(1)} ms`;
  return { name: "start with 100,000 checks against 100", measured, limit: 1.5, unit: "x", met: measured <= 1.5, note };
}

function start(path: string): number {
  const startedAt = performance.now();
  const store = open(path);
  const list = spindleList(store.db);
  const tookMs = performance.now() - startedAt;
  if (list.length !== SPINDLES) throw new Error("the list is not whole");
  store.close();
  return tookMs;
}

/** The list a page opens with, against SQL alone that reads the same rows, in turns. */
function listRow(path: string): BenchRow {
  const store = open(path);
  const pairs = Array.from({ length: 45 }, () => [timed(() => spindleList(store.db)), timed(() => bareList(store))]);
  store.close();
  const [ours, bare] = [0, 1].map((i) => median(pairs.slice(5).map((pair) => pair[i]!))) as [number, number];
  return {
    name: "list of spindles with 1,000,000 checks against the bare SQL that reads the same rows",
    measured: ours / bare,
    limit: 1.2,
    unit: "x",
    met: ours / bare <= 1.2,
    note: `${ours.toFixed(2)} ms and ${bare.toFixed(2)} ms`,
  };
}

function bareList({ db }: Store): void {
  const status = db.prepare("SELECT spindle_id, status FROM spindle_status").raw().all() as [string, string][];
  const spindles = db.prepare("SELECT body FROM register WHERE kind = 'spindle' ORDER BY id").pluck().all() as string[];
  const row = db.prepare("SELECT * FROM check_row WHERE n = ?");
  for (const text of spindles) JSON.parse(text);
  for (const [, text] of status) {
    const { last, baseline } = JSON.parse(text) as { last: [number, number] | null; baseline: [number, number] | null };
    for (const at of [last, baseline]) if (at !== null) row.get(at[1]);
  }
  if (spindles.length !== SPINDLES) throw new Error("the list is not whole");
}

function timed(work: () => void): number {
  const startedAt = performance.now();
  work();
  return performance.now() - startedAt;
}

async function verifyRow(path: string): Promise<BenchRow> {
  const jobs = new Jobs({ path, demo: false, newId: () => crypto.randomUUID(), onChange: () => {} });
  const perSecond: number[] = [];
  for (let run = 0; run < 5; run += 1) {
    const startedAt = performance.now();
    const { entries, damagedCount } = await jobs.run("verify", {});
    if (damagedCount > 0) throw new Error("the bench's own file is damaged");
    perSecond.push(entries / ((performance.now() - startedAt) / 1000));
  }
  const measured = median(perSecond);
  const note = `the whole walk of the whole file, threads started and all, on ${availableParallelism()} cores`;
  return { name: "verify", measured, limit: 50_000, unit: "entries/s", met: measured >= 50_000, note };
}

/** The same checks in turns into both files. */
function acceptRow(small: string, huge: string): BenchRow {
  const [a, b] = [open(small), open(huge)];
  const [forA, forB] = [a, b].map((store) => spindleList(store.db).map((s) => s.spindle.spindleId)) as [
    string[],
    string[],
  ];
  const ratios: number[] = [];
  for (let run = 0; run < 10; run += 1) {
    let [tookA, tookB] = [0, 0];
    for (let i = 0; i < 60; i += 1) {
      const number = 2_000_000 + run * 60 + i;
      tookA += acceptOne(a, forA, number);
      tookB += acceptOne(b, forB, number);
    }
    for (const store of [a, b]) store.tidy();
    if (run > 0) ratios.push(tookB / tookA); // the first warms up
  }
  for (const store of [a, b]) store.close();
  const measured = median(ratios);
  return { name: "accept with 1,000,000 checks against 100", measured, limit: 1.2, unit: "x", met: measured <= 1.2 };
}

function acceptOne(store: Store, spindles: readonly string[], i: number): number {
  const { draft, extra } = checkToFile(store, spindles, i, true);
  const startedAt = performance.now();
  store.append([draft], extra);
  return performance.now() - startedAt;
}
