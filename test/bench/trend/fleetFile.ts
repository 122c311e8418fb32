import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fleetOf } from "../../../main/fleet/fleetOf.ts";
import { openStore } from "../../../main/store/open.ts";
import { allHistoryPoints } from "../../../main/store/records/histories.ts";
import type { Store } from "../../../main/store/Store.ts";
import { aCheck, idOf } from "../../support/aCheck.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { worksOfSpindles } from "../../support/worksOfSpindles.ts";
import { SeededRandom } from "../judgement/SeededRandom.ts";
import { leastSeconds } from "./slopes.ts";

const SPINDLES = 2_000;
const CHECKS = 60;

/** Least milliseconds to rank 2,000 spindles of 60 checks each out of a data file, and of that to read the rows. */
export function fleetFileMilliseconds(seed: number): { whole: number; rows: number; ranked: number } {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-bench-"));
  const store = openStore({ path: join(folder, "fleet.sqlite"), now: Date.now });
  try {
    fill(store, seed);
    let ranked = 0;
    const [whole, rows] = leastSeconds(
      6,
      () => {
        ranked = fleetOf(store.db).rows.length;
      },
      () => allHistoryPoints(store.db),
    );
    return { whole: 1000 * whole!, rows: 1000 * rows!, ranked };
  } finally {
    store.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

function fill(store: Store, seed: number): void {
  const random = new SeededRandom(seed);
  const histories = worksOfSpindles(
    () => random.normal(),
    () => random.unit(),
    { spindles: SPINDLES, checks: CHECKS, gauges: 4, adapters: 6 },
  );
  const ids = new Map<string, string>();
  const idFor = (name: string) => {
    if (!ids.has(name)) ids.set(name, idOf(900_000_000 + ids.size));
    return ids.get(name)!;
  };
  const spindleIds = histories.map(() => store.newId());
  store.append(
    histories.map(({ points }, i) => {
      const first = points[0]!.valueN;
      const limits = { minimumN: 0.8 * first, warningN: 0.88 * first, nominalN: first };
      return { kind: "spindle", body: aSpindle({ spindleId: spindleIds[i]!, name: `Larch ${i}`, limits }) };
    }),
  );
  // Round by round, as a works measures: a spindle's checks lie far apart in the file.
  for (let round = 0; round < CHECKS; round += 1) {
    store.append(
      histories.map(({ points }, i) => {
        const { atMs, valueN, gaugeId, adapterId } = points[round]!;
        const body = aCheck({
          seed: round,
          cycleCount: 1,
          checkId: store.newId(),
          spindleId: spindleIds[i]!,
          measuredAt: new Date(atMs).toISOString(),
          valueN,
          gaugeId: idFor(gaugeId!),
          adapterId: idFor(adapterId!),
        });
        return { kind: "check", body };
      }),
    );
  }
}
