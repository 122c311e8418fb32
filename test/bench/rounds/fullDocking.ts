import { setTimeout as sleep } from "node:timers/promises";
import { coreInTemp } from "../../support/coreInTemp.ts";
import { acceptedAsShown, fullMemory, yesterday } from "../../support/fullMemory.ts";
import { longestTurn } from "../../support/longestTurn.ts";
import { roundWorks } from "../../support/roundWorks.ts";
import type { BenchRow } from "../BenchRow.ts";

const MOST = 10_000;
const TIMES = 3;

/** A full memory read and accepted: how long it takes, and how long it holds up the thread that listens to the gauge. */
export async function fullDocking(): Promise<BenchRow[]> {
  const held = { read: Number.POSITIVE_INFINITY, accept: Number.POSITIVE_INFINITY };
  let acceptS = 0;
  for (let time = 0; time < TIMES; time += 1) {
    const core = await coreInTemp();
    try {
      const { gaugeId, spindleIds } = await roundWorks(core);
      const stops = spindleIds.map((spindleId) => ({ spindleId }));
      const { roundId, ...round } = await core.call("rounds.save", {
        name: "r",
        on: yesterday(Date.now()),
        made: "byHand",
        stops,
      });
      const text = fullMemory(round.stops, MOST, Date.now());
      const reading = longestTurn();
      const view = await core.call("docking.read", { roundId, gaugeId, text });
      await sleep(10);
      held.read = Math.min(held.read, reading.stop());
      const input = acceptedAsShown(view);
      await sleep(100); // what read it has to be swept away first
      const accepting = longestTurn();
      const startMs = performance.now();
      await core.call("docking.accept", input);
      acceptS = Math.max(acceptS, (performance.now() - startMs) / 1000);
      await sleep(10);
      held.accept = Math.min(held.accept, accepting.stop());
    } finally {
      await core.close();
    }
  }
  const row = (what: string, measured: number): BenchRow => ({
    name: `docking of ${MOST} readings: longest hold of the core while it is ${what}`,
    measured,
    limit: 50,
    unit: "ms",
    met: measured <= 50,
    note: `least of ${TIMES} times: what the program does happens every time`,
  });
  return [
    {
      name: `docking of ${MOST} readings: accept, slowest of ${TIMES}`,
      measured: acceptS,
      limit: 10,
      unit: "s",
      met: acceptS <= 10,
      note: "in a thread of its own; the limit is ours",
    },
    row("read", held.read),
    row("accepted", held.accept),
  ];
}
