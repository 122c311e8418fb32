import type { Check } from "../../app/ledger/check.ts";
import type { Adapter, Gauge, Spindle, Works } from "../../app/ledger/register.ts";

/** An earlier check as a comparison needs it: what was filed, whole. */
export type EarlierCheck = { readonly checkId: string; readonly check: Check };

/** What the register and the link say today about what the series is tagged with. */
export type FormFacts = {
  readonly works: Works;
  readonly spindle: Spindle | undefined;
  readonly adapter: Adapter | undefined;
  readonly gauge: Gauge | undefined;
  readonly baseline: EarlierCheck | undefined;
  readonly previous: EarlierCheck | undefined;
  /** Standard deviation between clampings of earlier checks of this spindle. */
  readonly earlierScatter: { readonly sN: number; readonly degreesOfFreedom: number } | undefined;
  /** The step of the last digit the gauge sends. */
  readonly resolutionN: number | undefined;
  /** The gauge's newest proof found it off. */
  readonly gaugeFoundOff: boolean;
  /** Plain date. */
  readonly today: string;
};
