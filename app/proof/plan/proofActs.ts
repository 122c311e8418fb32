import type { Direction } from "../data/ProofReading.ts";
import type { PlannedRun, ProofPlan } from "./ProofPlan.ts";

/** One thing to do, in the order of the plan. `targetN` 0: unloaded. */
export type ProofAct =
  | { readonly kind: "cautions" }
  | { readonly kind: "mount"; readonly run: string; readonly positionDeg: number }
  | { readonly kind: "preload"; readonly run: string; readonly number: number; readonly targetN: number }
  | {
      readonly kind: "read";
      readonly run: string;
      readonly positionDeg: number;
      readonly direction: Direction;
      /** Step number from 1 by rising load; undefined for zero and creep. */
      readonly step: number | undefined;
      readonly targetN: number;
      /** How long the load stands, or the gauge rests, before it is read, and how long it is read. */
      readonly waitS: number;
      readonly readS: number;
    };

/** Every act of a plan, first to last: cautions, then run by run mounting, preloads, zero, loads, creep, falling loads, zero. */
export function proofActs(plan: ProofPlan): readonly ProofAct[] {
  return [{ kind: "cautions" }, ...plan.runs.flatMap((run, i) => runActs(plan, run, i))];
}

function runActs(plan: ProofPlan, planned: PlannedRun, index: number): readonly ProofAct[] {
  const { run, positionDeg, falling } = planned;
  const greatest = plan.loadsN.at(-1) ?? 0;
  const read = (direction: Direction, targetN: number, waitS: number, step?: number): ProofAct => ({
    kind: "read",
    run,
    positionDeg,
    direction,
    step,
    targetN,
    waitS,
    readS: plan.readS,
  });
  const turned = index === 0 || plan.runs[index - 1]!.positionDeg !== positionDeg;
  // All preloads before the first run, one after each turn: the gauge has to seat again.
  const preloads = index === 0 ? plan.preloads : turned ? Math.min(1, plan.preloads) : 0;
  const up = plan.loadsN.map((load, i) => read("up", load, plan.dwellS, i + 1));
  const down = up
    .slice(0, -1)
    .toReversed()
    .map((act): ProofAct => ({ ...act, direction: "down" }) as ProofAct); // a read stays a read
  const creep = plan.creep && index === 0 ? [read("creep30", greatest, 30), read("creep300", greatest, 300)] : [];
  return [
    ...(turned ? [{ kind: "mount", run, positionDeg } as const] : []),
    ...Array.from(
      { length: preloads },
      (_, i) => ({ kind: "preload", run, number: i + 1, targetN: greatest }) as const,
    ),
    read("zeroBefore", 0, plan.restS),
    ...up,
    ...creep,
    ...(falling ? down : []),
    read("zeroAfter", 0, plan.restS),
  ];
}
