import { mean } from "../numerics/mean.ts";
import { studentQuantile } from "../numerics/studentQuantile.ts";
import type { CheckPoint, History, ServiceKind, ServiceMark } from "./History.ts";
import { inTime } from "./inTime.ts";
import { serviceCuts } from "./serviceCuts.ts";

export type ServiceEffect = {
  readonly eventId: string | undefined;
  readonly kind: ServiceKind;
  readonly atMs: number;
  readonly beforeN: number;
  readonly afterN: number;
  /** After less before, and its 95 % interval; the interval is undefined where no scatter is known. */
  readonly changeN: number;
  readonly lowN: number | undefined;
  readonly highN: number | undefined;
  readonly judged: "rose" | "fell" | "unchanged" | "cannotTell";
  /** Mean scatter inside the checks, after over before; undefined where either is not known. */
  readonly scatterRatio: number | undefined;
  /** Gauge or adapter differ between the last check before and the first after: part of the change may be theirs. */
  readonly otherGauge: boolean;
  readonly otherAdapter: boolean;
};

/** Checks on each side that are compared: few enough that a slope does not count for much. */
const SIDE = 3;

/**
 * What each service did to the force: up to three checks before it against up to three after it, from the first
 * check after it on. The scatter comes from the same checks, or from their stated uncertainty where they are too few.
 * @returns  in the order of time; services without a check on both sides are left out
 */
export function serviceEffects(history: History): ServiceEffect[] {
  const points = inTime(history.points);
  const cuts = serviceCuts(points, history.events);
  return cuts.flatMap(({ mark, firstAfter }) => {
    // Two services between the same checks have one effect, told at both.
    const from = cuts.findLast((cut) => cut.firstAfter < firstAfter)?.firstAfter ?? 0;
    const to = cuts.find((cut) => cut.firstAfter > firstAfter)?.firstAfter ?? points.length;
    const before = points.slice(Math.max(from, firstAfter - SIDE), firstAfter);
    const after = points.slice(firstAfter, Math.min(to, firstAfter + SIDE));
    return before.length === 0 || after.length === 0 ? [] : [effectOf(mark, before, after)];
  });
}

function effectOf(mark: ServiceMark, before: readonly CheckPoint[], after: readonly CheckPoint[]): ServiceEffect {
  const beforeN = mean(before.map((p) => p.valueN));
  const afterN = mean(after.map((p) => p.valueN));
  const changeN = afterN - beforeN;
  const half = halfWidth(before, after);
  const last = before.at(-1)!;
  const first = after[0]!;
  const judged = half === undefined ? "cannotTell" : changeN > half ? "rose" : changeN < -half ? "fell" : "unchanged";
  return {
    eventId: mark.eventId,
    kind: mark.kind,
    atMs: mark.atMs,
    beforeN,
    afterN,
    changeN,
    lowN: half === undefined ? undefined : changeN - half,
    highN: half === undefined ? undefined : changeN + half,
    judged,
    scatterRatio: scatterRatio(before, after),
    otherGauge: last.gaugeId !== first.gaugeId,
    otherAdapter: last.adapterId !== first.adapterId,
  };
}

function halfWidth(before: readonly CheckPoint[], after: readonly CheckPoint[]): number | undefined {
  const stated = 1.96 * Math.sqrt(statedVariance(before) + statedVariance(after));
  const freedom = before.length + after.length - 2;
  if (freedom < 2) return stated > 0 ? stated : undefined;
  const pooled = (squares(before) + squares(after)) / freedom;
  const seen = studentQuantile(0.975, freedom) * Math.sqrt(pooled * (1 / before.length + 1 / after.length));
  return seen > 0 || stated > 0 ? Math.max(seen, stated) : undefined;
}

/** Of the mean; what the checks share with the other side (same gauge) is in it too: on the safe side. */
function statedVariance(points: readonly CheckPoint[]): number {
  return mean(points.map((p) => (p.standardUncertaintyN ?? 0) ** 2)) / points.length;
}

function squares(points: readonly CheckPoint[]): number {
  const middle = mean(points.map((p) => p.valueN));
  return points.reduce((sum, p) => sum + (p.valueN - middle) ** 2, 0);
}

function scatterRatio(before: readonly CheckPoint[], after: readonly CheckPoint[]): number | undefined {
  const of = (points: readonly CheckPoint[]) => {
    const known = points.flatMap((p) => (p.seriesSN === undefined ? [] : [p.seriesSN]));
    return known.length === 0 ? undefined : mean(known);
  };
  const [old, now] = [of(before), of(after)];
  return old === undefined || now === undefined || !(old > 0) ? undefined : now / old;
}
