import { studentQuantile } from "../../numerics/studentQuantile.ts";
import type { ProofRefused } from "../method/ProofOptions.ts";
import { refuse } from "../method/proofRefusal.ts";
import { coverage } from "../uncertainty/StepUncertainty.ts";

/** One load, read once without and once with the adapter (or with the known and the new one), zeros taken off. */
export type AdapterPair = {
  readonly run: string;
  /** Reference force over net indication: gauge alone, or with the known adapter. */
  readonly without: { readonly reference: number; readonly net: number };
  readonly withIt: { readonly reference: number; readonly net: number };
};

export type AdapterFactor = {
  /** Force at the taper over force at the gauge. */
  readonly scale: number;
  /** Standard uncertainty (k = 1) of the scale, relative; few runs are already counted in. */
  readonly relative: number;
  /** Half-width of the 95 % interval of the scale. */
  readonly expanded: number;
  readonly runs: number;
  /** Scale of each run, in the order given: a run that lies apart shows here. */
  readonly byRun: readonly { readonly run: string; readonly scale: number }[];
};

/**
 * The factor of an adapter from the same loads with and without it: both times reference over indication, and the
 * ratio of the two. The mean of each run counts once, since screwing the adapter on anew is what makes runs differ.
 * @param known  scale of the adapter compared with, and its relative standard uncertainty; absent: the gauge alone, 1
 * @param referenceRelative  relative standard uncertainty (k = 1) of the reference's ratios between the two, mostly small
 * @returns  `refused` with fewer than two runs, or where a load or an indication is not above zero
 */
export function adapterFactor(
  pairs: readonly AdapterPair[],
  known: { readonly scale: number; readonly relative: number } = { scale: 1, relative: 0 },
  referenceRelative = 0,
): AdapterFactor | ProofRefused {
  for (const { without, withIt } of pairs) {
    const figures = [without.reference, without.net, withIt.reference, withIt.net];
    if (!figures.every((v) => v > 0 && Number.isFinite(v))) return refuse("factorNotAboveZero");
  }
  const byRun = [...Map.groupBy(pairs, (p) => p.run)].map(([run, members]) => ({
    run,
    scale: members.reduce((sum, p) => sum + (known.scale * ratio(p.withIt)) / ratio(p.without), 0) / members.length,
  }));
  const runs = byRun.length;
  if (runs < 2) return refuse("factorRuns", runs);
  const scale = byRun.reduce((sum, r) => sum + r.scale, 0) / runs;
  const variance = byRun.reduce((sum, r) => sum + (r.scale - scale) ** 2, 0) / (runs - 1) / runs;
  const t = studentQuantile(0.5 + coverage / 2, runs - 1);
  const normal = studentQuantile(0.5 + coverage / 2, Infinity);
  const other = Math.hypot(known.relative, referenceRelative) * scale;
  const expanded = Math.hypot(t * Math.sqrt(variance), normal * other);
  return { scale, relative: expanded / normal / scale, expanded, runs, byRun };
}

const ratio = ({ reference, net }: { readonly reference: number; readonly net: number }) => reference / net;
