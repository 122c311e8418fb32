import type { RouteStop } from "../../app/round/route/Route.ts";
import { routeOf } from "../../app/round/route/routeOf.ts";
import { invented } from "../support/aCheck.ts";
import type { BenchRow } from "./BenchRow.ts";
import { usualHabits } from "./rounds/drawWorks.ts";
import { fullDocking } from "./rounds/fullDocking.ts";
import { tally } from "./rounds/tally.ts";

const ROUNDS = 1000;

/** The numbers of rounds and docking: readings filed right, wrong and silent; routes. */
export async function roundsBench(): Promise<BenchRow[]> {
  return [...matching(), ...routes(), ...(await fullDocking())];
}

function matching(): BenchRow[] {
  const located = tally(ROUNDS, true, usualHabits);
  const timed = tally(ROUNDS, false, usualHabits);
  const fallen = tally(ROUNDS, false, { ...usualHabits, fallen: 0.05 }, 2);
  const keyed = tally(ROUNDS, true, { ...usualHabits, keyedWrong: 0.02 }, 3);
  const at = (name: string, share: number, least: number, note: string): BenchRow => ({
    name: `${ROUNDS} simulated rounds: ${name}`,
    measured: 100 * share,
    limit: 100 * least,
    unit: "%",
    met: share >= least,
    note,
  });
  const wrong = (name: string, { wrongSilent, takes }: typeof located): BenchRow => ({
    name: `${ROUNDS} simulated rounds: filed wrong without a question, ${name}`,
    measured: (100 * wrongSilent) / takes,
    limit: 0.1,
    unit: "%",
    met: wrongSilent <= 0.001 * takes,
    note: `${wrongSilent} of ${takes} readings`,
  });
  return [
    at(
      "filed right without a question, with location numbers",
      located.right / located.takes,
      0.995,
      `${located.takes} readings`,
    ),
    at(
      "filed right without a question, by time and plausibility",
      timed.rightTold / timed.told,
      0.97,
      `of the ${timed.told} of ${timed.takes} readings whose spindle the program can tell from every other of the round by three ` +
        `scatters; by the true scatters, which it cannot know, ${((100 * timed.rightApart) / timed.apart).toFixed(1)} % of ${timed.apart}; ` +
        `proposed right, asked or not, ${((100 * timed.proposed) / timed.takes).toFixed(1)} % of all`,
    ),
    wrong("with location numbers", located),
    wrong("by time and plausibility", timed),
    wrong("by time and plausibility, 5 % of the spindles fallen by 5 to 25 %", fallen),
    wrong("with location numbers, 2 % of them keyed the wrong way round", keyed),
  ];
}

function works(n: number, seed: number): RouteStop[] {
  const next = invented(seed);
  return Array.from({ length: n }, (_, i) => ({
    spindleId: `s${i}`,
    machine: `m${i}`,
    area: `area ${Math.floor(next() * (2 + n / 25))}`,
    order: Math.floor(next() * 1.5 * n),
    tool: `tool ${Math.floor(next() * (2 + n / 40))}`,
  }));
}

function routes(): BenchRow[] {
  let slowest = 0;
  for (let seed = 1; seed <= 10; seed += 1) {
    const stops = works(200, seed);
    const from = performance.now();
    routeOf(stops);
    slowest = Math.max(slowest, (performance.now() - from) / 1000);
  }
  let worst = 1;
  let cases = 0;
  for (let seed = 1; seed <= 300; seed += 1) {
    const stops = works(3 + (seed % 20), seed);
    const exact = routeOf(stops);
    if (exact.found !== "exact" || exact.walk === 0) continue;
    const good = routeOf(stops, "good");
    worst = Math.max(worst, good.adapterChanges > exact.adapterChanges ? Infinity : good.walk / exact.walk);
    cases += 1;
  }
  return [
    { name: "route for 200 machines, slowest of ten", measured: slowest, limit: 1, unit: "s", met: slowest < 1 },
    {
      name: `walk of an improved route over the optimum, worst of ${cases} cases solved exactly`,
      measured: worst,
      limit: 1.05,
      unit: "",
      met: worst <= 1.05,
    },
  ];
}
