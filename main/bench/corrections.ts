import type { BudgetInput } from "../../app/correction/BudgetInput.ts";
import type { Corrections } from "../../app/correction/correctForce.ts";
import { curveUncertainty } from "../../app/correction/curveUncertainty.ts";
import type { FormFacts } from "./FormFacts.ts";

/** What a gauge nobody has proved is taken to be off by, relative, k = 1 (common practice, no source). */
const UNPROVED = 0.01;
/** Greatest change of a gauge in a year, as a share (common practice, no source). */
const DRIFT_PER_YEAR = 0.002;
/** Change of a gauge's reading per kelvin (common practice, no source), against a proof at 20 °C. */
const PER_KELVIN = 0.0003;
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
  { gauge, adapter, today }: FormFacts,
  netN: number,
  temperatureC: number | undefined,
): Pick<BudgetInput, "gaugeProof" | "adapter" | "temperature" | "drift"> {
  const proved = gauge?.curve && curveUncertainty(gauge.curve.uncertainty, netN);
  return {
    gaugeProof: proved === undefined ? { relative: UNPROVED, assumed: true } : { relative: proved },
    adapter: adapter && { relative: adapter.scaleUncertainty, assumed: adapter.assumed },
    temperature:
      temperatureC === undefined
        ? undefined
        : { perKelvin: PER_KELVIN, differenceK: temperatureC - PROOF_TEMPERATURE_C, assumed: true },
    drift:
      gauge?.provedOn === undefined
        ? undefined
        : { perYear: DRIFT_PER_YEAR, years: yearsBetween(gauge.provedOn, today), assumed: true },
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
