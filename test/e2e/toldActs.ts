import { readFileSync } from "node:fs";
import { resolve } from "node:path";

/** How many acts of the hand a job takes by `docs/acts.md`; NaN where it does not tell. */
export function toldActs(job: string): number {
  const told = readFileSync(resolve(import.meta.dirname, "../../docs/acts.md"), "utf8");
  return Number(new RegExp(`\\| ${job}[^|]*\\| (\\d+)`).exec(told)?.[1]);
}
