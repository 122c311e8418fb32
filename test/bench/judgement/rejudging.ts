import { combine } from "../../../app/correction/combine.ts";
import { contributionsOf } from "../../../app/correction/contributionsOf.ts";
import { type Filed, rejudge } from "../../../app/verdict/rejudge.ts";
import { measureOnce } from "./measureOnce.ts";
import { randomPlace } from "./randomPlace.ts";
import { SeededRandom } from "./SeededRandom.ts";

/**
 * Seconds to say of `count` filed checks, already in memory, what today's limits say, under the slowest rule.
 * @param fewProved  every gauge's proof states few degrees of freedom: the budget then has two t to fold
 */
export function rejudging(count: number, fewProved: boolean, seed: number): number {
  const random = new SeededRandom(seed);
  const checks = Array.from({ length: 2_000 }, (): Filed => {
    const { valueN, input } = measureOnce(randomPlace(random), random.whole(3, 8), random);
    const proof = { relative: input.gaugeProof!.relative };
    const budgetInput = fewProved ? input : { ...input, gaugeProof: proof };
    const earlier = { valueN: valueN * 1.05, standardUncertaintyN: valueN * 0.005, correlation: 0.3 };
    return { valueN, budget: combine(contributionsOf(budgetInput)), baseline: earlier, previous: earlier };
  });
  const today = (valueN: number) => ({
    limits: { minimumN: 0.9 * valueN, warningN: 0.93 * valueN, maximumN: 1.2 * valueN },
    rule: { rule: "probability" as const },
  });
  const start = performance.now();
  let good = 0;
  for (let i = 0; i < count; i += 1) {
    const check = checks[i % checks.length]!;
    if (rejudge(check, today(check.valueN!)).verdict === "good") good += 1;
  }
  const seconds = (performance.now() - start) / 1000;
  if (good === 0) throw new Error("the bench judged no check good: it does not measure what it should");
  return seconds;
}
