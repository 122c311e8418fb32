import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Rejudged } from "../../app/contract/recordViews.ts";
import type { Works } from "../../app/ledger/register.ts";
import { Jobs } from "../../main/jobs/Jobs.ts";
import { openStore } from "../../main/store/open.ts";
import type { EntryDraft } from "../../main/store/Store.ts";
import { aCheck, idOf } from "../support/aCheck.ts";
import { aSpindle } from "../support/aSpindle.ts";
import type { BenchRow } from "./BenchRow.ts";

const CHECKS = 100_000;
const SPINDLES = 500;
const TRIES = 3;
const works: Works = {
  worksId: idOf(10),
  name: "Quarry Lane works",
  timeZone: "Europe/Vienna",
  rule: { rule: "iso14253" },
  cautionDrop: 0.1,
  actDrop: 0.2,
  unitShown: "kN",
  intervalDays: 90,
};

/** What today's limits would say of all checks in a data file: the whole job, from its start to its result. */
export async function rejudgeBench(): Promise<readonly BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-bench-"));
  const path = join(folder, "holdfast.sqlite");
  fill(path);
  const jobs = new Jobs({ path, demo: false, newId: () => crypto.randomUUID(), onChange: () => {} });
  const seconds: number[] = [];
  let found: Rejudged | undefined;
  for (let i = 0; i < TRIES; i += 1) {
    const start = performance.now();
    found = await jobs.run("rejudge", { works });
    seconds.push((performance.now() - start) / 1000);
  }
  await jobs.close();
  rmSync(folder, { recursive: true, force: true });
  const judged = found!.counts.reduce((sum, { count }) => sum + count, 0);
  if (judged !== CHECKS) throw new Error(`the bench judged ${judged} checks anew, not ${CHECKS}`);
  const measured = seconds.sort((a, b) => a - b)[Math.floor(TRIES / 2)]!;
  return [
    {
      name: `today's word on ${CHECKS} stored checks, the whole job`,
      measured,
      limit: 2,
      unit: "s",
      met: measured < 2,
      note: `median of ${TRIES}; ${found!.changedCount} would change`,
    },
  ];
}

function fill(path: string): void {
  const store = openStore({ path, now: Date.now });
  const spindles = Array.from({ length: SPINDLES }, (_, i) => idOf(11 + i));
  store.append(
    spindles.map((spindleId, i) => ({ kind: "spindle", body: aSpindle({ spindleId, name: `Larch ${i + 1}` }) })),
  );
  for (let from = 0; from < CHECKS; from += 1_000) {
    store.append(
      Array.from({ length: 1_000 }, (_, i): EntryDraft => {
        const seed = from + i + 10_000;
        const measuredAt = new Date(Date.UTC(2015, 0, 1) + (from + i) * 3_600_000).toISOString();
        return { kind: "check", body: aCheck({ seed, spindleId: spindles[(from + i) % SPINDLES]!, measuredAt }) };
      }),
    );
  }
  store.close();
}
