import type { GaugeCurve } from "../../correction/GaugeCurve.ts";
import { findRoot } from "../../numerics/findRoot.ts";
import { fitPolynomial, type PolynomialFit } from "../../numerics/fitPolynomial.ts";
import { normalQuantile } from "../../numerics/normalQuantile.ts";
import { polynomialAt } from "../../numerics/polynomialAt.ts";
import { type ForceUnit, toNewtons } from "../../quantity/forceUnits.ts";
import type { ProofRefused } from "../method/ProofOptions.ts";
import { refuse } from "../method/proofRefusal.ts";
import type { UncertaintyCurve } from "../uncertainty/uncertaintyCurve.ts";

/** What every method of proof ends in: indication on reference, and its expanded uncertainty (95 %) in the reference's unit. */
export type ProvedCurve = {
  readonly fit: PolynomialFit;
  readonly steps: readonly { readonly reference: number; readonly uncertainty: { readonly expanded: number } }[];
  readonly uncertaintyCurve: UncertaintyCurve;
};

/** Most points of uncertainty a curve keeps. */
const MOST_POINTS = 40;

/**
 * The curve a gauge is corrected with, made of a proof: the fitted curve turned round, from net indication to force,
 * in newtons. Its uncertainty is the stated 95 % interval over the normal factor 1.96, so that few degrees of freedom
 * of the proof are not lost in a budget that takes it as known.
 * @param version  one more than that of the curve it replaces
 * @returns  `refused` when the indication does not rise with the force all the way between least and greatest load
 */
export function gaugeCurveOf(
  proof: ProvedCurve,
  units: { readonly reference: ForceUnit; readonly indication: ForceUnit },
  version: number,
): GaugeCurve | ProofRefused {
  const least = proof.steps[0]?.reference;
  const greatest = proof.steps.at(-1)?.reference;
  if (least === undefined || greatest === undefined || !(greatest > least)) return refuse("twoLoads");
  const at = (reference: number) => polynomialAt(proof.fit, reference);
  const grid = Array.from({ length: 101 }, (_, i) => least + ((greatest - least) * i) / 100);
  if (grid.some((x) => !(at(x).slope > 0))) return refuse("notRising");
  if (!(at(greatest).value > 0)) return refuse("notAboveZero");
  const net = (x: number) => toNewtons(at(x).value, units.indication);
  const force = (x: number) => toNewtons(x, units.reference);
  return {
    version,
    coefficients: turnedRound(proof, least, greatest).map(
      (c, k) => c * (force(1) / toNewtons(1, units.indication) ** k),
    ),
    fromN: Math.max(0, net(least)),
    toN: net(greatest),
    uncertainty: uncertaintyPoints(proof, greatest)
      .map(({ reference, expanded }) => ({
        atN: net(reference),
        relative: Math.min(1, expanded / normalQuantile(0.975) / reference),
      }))
      .filter((p) => p.atN >= 0),
  };
}

/** A polynomial of force on indication through the curve itself, of the lowest degree that misses it by a hundredth of its uncertainty. */
function turnedRound({ fit, steps }: ProvedCurve, least: number, greatest: number): readonly number[] {
  const value = (x: number) => polynomialAt(fit, x).value;
  const [low, high] = [value(least), value(greatest)];
  // Dense toward both ends, where a polynomial through evenly spread points would swing.
  const nodes = Array.from({ length: 61 }, (_, i) => low + ((high - low) * (1 - Math.cos((Math.PI * i) / 60))) / 2);
  const forces = nodes.map((y, i) =>
    i === 0 ? least : i === 60 ? greatest : findRoot((x) => value(x) - y, least, greatest),
  );
  const finest = Math.min(...steps.map((s) => s.uncertainty.expanded));
  const allowed = Math.max(0.01 * finest, 1e-9 * greatest);
  // A straight fit turned round is straight again: no constant appears where none was fitted.
  for (let degree = 1; degree <= 6; degree += 1) {
    const turned = fitPolynomial(nodes, forces, degree, fit.constant || least <= 0);
    if (degree === 6 || turned.residuals.every((r) => Math.abs(r) <= allowed)) return turned.coefficients;
  }
  throw new RangeError("unreachable: the loop ends at degree 6");
}

function uncertaintyPoints(
  { steps, uncertaintyCurve: curve }: ProvedCurve,
  greatest: number,
): readonly { reference: number; expanded: number }[] {
  const loaded = steps.filter((s) => s.reference > 0);
  if (loaded.length <= MOST_POINTS)
    return loaded.map((s) => ({ reference: s.reference, expanded: s.uncertainty.expanded }));
  const least = loaded[0]!.reference;
  return Array.from({ length: MOST_POINTS }, (_, i) => {
    const reference = least + ((greatest - least) * i) / (MOST_POINTS - 1);
    return { reference, expanded: Math.hypot(curve.constant, curve.proportional * reference) };
  });
}
