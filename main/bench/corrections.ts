import { type AssumptionName, assumption } from "../../app/correction/assumptions.ts";
import type { BudgetInput } from "../../app/correction/BudgetInput.ts";
import type { Corrections } from "../../app/correction/correctForce.ts";
import { curveUncertainty } from "../../app/correction/curveUncertainty.ts";
import type { FormFacts } from "./FormFacts.ts";

/** The temperature a gauge is taken to have been proved at (common practice, no source). */
const PROOF_TEMPERATURE_C = 20;
const YEAR_MS = 365.25 * 86_400_000;

/** The curve and the scale that stand today between net indication and force at the taper. */
export function correctionsOf({ gauge, adapter }: FormFacts): Corrections {
  return {
    curve: gauge?.curve,
    adapter: adapter && { scale: adapter.scale, version: adapter.version },
  };
}

/** The lines of the budget that come from gauge, adapter and place; defaults nobody has confirmed are marked so. */
export function gaugeShares(
  { gauge, adapter, today, works }: FormFacts,
  netN: number,
  temperatureC: number | undefined,
): Pick<BudgetInput, "gaugeProof" | "adapter" | "temperature" | "drift" | "misalignment"> {
  const proved = gauge?.curve && curveUncertainty(gauge.curve.uncertainty, netN);
  const taken = (name: AssumptionName) => assumption(works.assumptions, name);
  const { value: perKelvin, assumed: kelvinAssumed } = taken("perKelvin");
  const { value: perYear, assumed: yearAssumed } = taken("driftPerYear");
  const { value: unproved, assumed: unprovedAssumed } = taken("unprovedShare");
  const { value: halfWidth, assumed: misalignmentAssumed } = taken("misalignment");
  return {
    gaugeProof: proved === undefined ? { relative: unproved, assumed: unprovedAssumed } : { relative: proved },
    adapter: adapter && { relative: adapter.scaleUncertainty, assumed: adapter.assumed },
    temperature:
      temperatureC === undefined
        ? undefined
        : { perKelvin, differenceK: temperatureC - PROOF_TEMPERATURE_C, assumed: kelvinAssumed },
    drift:
      gauge?.provedOn === undefined
        ? undefined
        : { perYear, years: yearsBetween(gauge.provedOn, today), assumed: yearAssumed },
    misalignment: { halfWidth, assumed: misalignmentAssumed },
  };
}

const yearsBetween = (from: string, to: string) => Math.max(0, (Date.parse(to) - Date.parse(from)) / YEAR_MS);

/** Names a version of a gauge's curve or of an adapter, so that two checks can be held against one another. */
export function versionNames(
  gaugeId: string | null | undefined,
  curveVersion: number | undefined,
  adapterId: string | null | undefined,
  adapterVersion: number | null | undefined,
): { readonly curve: string | undefined; readonly adapter: string | undefined } {
  return {
    curve: gaugeId && curveVersion !== undefined ? `${gaugeId} ${curveVersion}` : undefined,
    adapter: adapterId && adapterVersion != null ? `${adapterId} ${adapterVersion}` : undefined,
  };
}
