import type { Round } from "../../app/ledger/round.ts";
import type { Simulator } from "../link/simulated.ts";
import type { Db } from "../store/db.ts";
import { gaugeList } from "../store/records/gauges.ts";
import { type SpindleStanding, spindleList } from "../store/records/spindles.ts";

/** So long a visit with the way to the next one lasts, and so long ago the walk ended. */
const VISIT_MS = 6 * 60_000;
const BACK_MS = 5 * 60_000;
const STOPS = 8;
/** Of a spindle nobody has measured yet. */
const NOMINAL_N = 20_000;

/** The gauge that comes back in the demo: the one with the most spindles behind it, and those spindles. */
export function demoStops(
  db: Db,
): { readonly gaugeId: string; readonly spindles: readonly SpindleStanding[] } | undefined {
  const measured = spindleList(db).filter(
    ({ spindle, last, stop }) => spindle.state === "inUse" && last?.valueN !== undefined && stop === undefined,
  );
  const groups = gaugeList(db)
    .filter((gauge) => gauge.state === "inUse")
    .map(({ gaugeId }) => ({ gaugeId, spindles: measured.filter(({ last }) => last?.gaugeId === gaugeId) }))
    .sort((a, b) => b.spindles.length - a.spindles.length);
  const [most] = groups;
  return most === undefined || most.spindles.length < STOPS - 2
    ? undefined
    : { gaugeId: most.gaugeId, spindles: most.spindles.slice(0, STOPS) };
}

/** When a walk of so many stops that has just ended began, wall clock. */
export const walkBegan = (stops: number, nowMs: number) => nowMs - BACK_MS - stops * VISIT_MS;

/** Has the simulated gauge walk the round: its memory then holds what it would bring back. */
export async function walkDemo(simulator: Simulator, round: Round, seed: number, nowMs: number): Promise<void> {
  const local = (ms: number) => ms - new Date(ms).getTimezoneOffset() * 60_000;
  const plan = {
    seed,
    unit: "kN",
    fromMs: local(walkBegan(round.stops.length, nowMs)),
    toMs: local(nowMs - BACK_MS),
    forcesN: round.stops.map((stop) => stop.expectedN ?? NOMINAL_N),
  };
  await simulator.command(`walk ${JSON.stringify(plan)}`);
}
