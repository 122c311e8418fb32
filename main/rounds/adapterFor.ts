import type { Adapter } from "../../app/ledger/register.ts";
import { taperFit } from "../../app/verdict/taperFit.ts";

/** The adapter to take for a taper: one that fits for sure, calibrated ones first; undefined where none does. */
export function adapterFor(taper: string, adapters: readonly Adapter[]): Adapter | undefined {
  const fitting = adapters.filter((a) => a.state === "inUse" && taperFit(taper, a.taper) === "fits");
  return fitting.find((a) => !a.assumed) ?? fitting[0];
}
