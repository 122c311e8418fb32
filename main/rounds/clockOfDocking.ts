import type { Docking } from "../../app/ledger/round.ts";
import { clockJumps } from "../../app/round/clock/clockJumps.ts";
import { clockOf, correctedMs } from "../../app/round/clock/clockOf.ts";
import type { GaugeClock } from "../../app/round/clock/GaugeClock.ts";
import type { DumpRecord } from "../../app/round/dump/DumpReading.ts";

export type DockedTimes = {
  readonly clock: (GaugeClock & { readonly assumed: boolean }) | undefined;
  /** Positions of the records, oldest first. */
  readonly order: readonly number[];
  /** Positions of records before which the clock was put back. */
  readonly putBack: readonly number[];
  /** Their instants by the PC's clock; undefined where the clock has been put back since. */
  readonly atMs: readonly (number | undefined)[];
};

/**
 * When the readings were taken. The gauge's clock is known from what it showed while docked; where it did not say, its newest
 * reading is taken as just made, so that at least the gaps between readings are right.
 * @param before  earlier dockings of the gauge, oldest first
 */
export function clockOfDocking(
  records: readonly DumpRecord[],
  gaugeNowMs: number | undefined,
  pcMs: number,
  before: readonly Docking[],
): DockedTimes {
  const stamps = records.map((r) => r.gaugeMs);
  const { order, jumps } = clockJumps(stamps);
  const newest = order.findLast((i) => stamps[i] !== undefined);
  const shown = gaugeNowMs ?? (newest === undefined ? undefined : stamps[newest]);
  if (shown === undefined) return { clock: undefined, order, putBack: [], atMs: stamps };
  const assumed = gaugeNowMs === undefined;
  const last = before.findLast((d) => d.clock !== null)?.clock ?? undefined;
  const clock = clockOf({ gaugeMs: shown, pcMs }, assumed ? undefined : last);
  const place = new Map(order.map((i, k) => [i, k]));
  const lastJump = Math.max(-1, ...jumps.map(({ at }) => place.get(at)!));
  return {
    clock: { ...clock, assumed },
    order,
    putBack: jumps.map(({ at }) => at),
    atMs: stamps.map((stamp, i) =>
      stamp === undefined || place.get(i)! < lastJump ? undefined : correctedMs(clock, stamp),
    ),
  };
}
