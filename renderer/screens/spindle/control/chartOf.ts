import type { SpindlePage } from "../../../../app/contract/recordViews.ts";
import { normalCdf } from "../../../../app/numerics/normalCdf.ts";
import { type ChartSignal, type LevelCharts, levelCharts } from "../../../../app/trend/control/levelCharts.ts";
import { cusumRunLength, ewmaRunLength } from "../../../../app/trend/control/runLength.ts";
import { allRunRules, defaultRunRules, type RunRule, zoneRules } from "../../../../app/trend/control/runRules.ts";

export type ChartKind = "calm" | "cusum" | "ewma" | "individuals";
export type ChosenRules = { readonly rules: readonly RunRule[]; readonly ranges: boolean };
export const firstRules: ChosenRules = { rules: defaultRunRules, ranges: false };

const LAMBDA = 0.2;
/** `calm` is what the level alarm uses; `cusum` the textbook's choice for small shifts. */
const sums = { calm: { k: 2, h: 4 }, cusum: { k: 0.5, h: 5 } } as const;

export type OwnPoint = SpindlePage["trend"]["points"][number];

/** The checks since the last service: what a chart may hold against each other. */
export function ownPoints({ trend }: SpindlePage): readonly OwnPoint[] {
  return trend.points.slice(trend.segments.findLast(({ startedBy }) => startedBy === "service")?.from ?? 0);
}

export function chartsOf(points: readonly OwnPoint[], kind: ChartKind, chosen: ChosenRules): LevelCharts | undefined {
  const strays = points.flatMap(({ stray }, i) => (stray ? [i] : []));
  const values = Float64Array.from(points, ({ valueN }) => valueN);
  return levelCharts(values, strays, { ...chosen, lambda: LAMBDA, ...sums[kind === "cusum" ? "cusum" : "calm"] });
}

export function signalsOf(charts: LevelCharts, kind: ChartKind): readonly ChartSignal[] {
  return charts[kind === "calm" ? "cusum" : kind].signals;
}

const sameRules = (a: readonly RunRule[], b: readonly RunRule[]) =>
  a.length === b.length && b.every((r) => a.includes(r));

export type FalseAlarms = {
  /** Checks from one to the next on average, limits known. */
  readonly runLength: number;
  /** Share of unchanged spindles that have one within forty checks, limits from eight. */
  readonly withinForty: number;
};

/** How often a chart errs; undefined where the choice of rules has no figure. */
export function falseAlarms(kind: ChartKind, { rules, ranges }: ChosenRules): FalseAlarms | undefined {
  if (kind === "ewma") return { runLength: ewmaRunLength(LAMBDA, 3, 0), withinForty: simulated.ewma };
  if (kind !== "individuals") {
    const { k, h } = sums[kind];
    return { runLength: cusumRunLength(k, h, 0), withinForty: simulated[kind] };
  }
  if (ranges) return undefined;
  if (sameRules(rules, defaultRunRules)) return { runLength: 1 / (2 * normalCdf(-3)), withinForty: simulated.one };
  return sameRules(rules, zoneRules) ? { runLength: ZONE_RULES_LENGTH, withinForty: simulated.zone } : undefined;
}

/** Of 20,000 runs of independent normal values each; the test of this file repeats it with fewer. */
const simulated = { calm: 0.04, one: 0.36, zone: 0.64, ewma: 0.4, cusum: 0.43 } as const;

/** NIST/SEMATECH e-Handbook 6.3.2. */
const ZONE_RULES_LENGTH = 91.75;

export type Preset = "one" | "zone" | "all" | "own";
export const presets = { one: defaultRunRules, zone: zoneRules, all: allRunRules } as const;

export function presetOf({ rules, ranges }: ChosenRules): Preset {
  if (ranges) return "own";
  const found = Object.entries(presets).find(([, of]) => sameRules(rules, of));
  return found === undefined ? "own" : (found[0] as Preset); // a key of `presets`
}
