import type { Check } from "../../../app/ledger/check.ts";
import type { FiledFigures } from "../../../app/verdict/rejudge.ts";
import { type Db, prepared } from "../db.ts";
import { readEntry } from "../ledger/readEntry.ts";
import { putRow } from "../sealedRow.ts";

type Line = readonly [distribution: keyof typeof longNames, standardN: number, degreesOfFreedom: number | null];
type Earlier = readonly [valueN: number, standardUncertaintyN: number, correlation: number];
type Terms = readonly [
  valueN: number | null,
  budget: readonly [standardN: number, degreesOfFreedom: number | null, lines: readonly Line[]] | null,
  baseline: Earlier | null,
  previous: Earlier | null,
];

const longNames = { n: "normal", r: "rectangular", d: "triangular", t: "t" } as const;
const shortNames = { normal: "n", rectangular: "r", triangular: "d", t: "t" } as const;

/** Keeps what judging a check anew needs of it. */
export function applyTerms(db: Db, check: Check, n: number): void {
  putRow(db, "check_terms", { n, terms: JSON.stringify(termsOfCheck(check)) }, "new");
}

/** The figures a check would be judged by anew, out of the text in its row. */
export function readTerms(text: string): FiledFigures {
  const [valueN, budget, baseline, previous] = JSON.parse(text) as Terms; // `applyTerms` wrote it
  return { valueN, budget: budget && budgetOf(budget), baseline: earlier(baseline), previous: earlier(previous) };
}

/** Every check that is listed: for a file whose checks were filed before there was this table. */
export function fillTerms(db: Db): void {
  for (const n of prepared<number>(db, "SELECT n FROM check_row ORDER BY n").pluck().all()) {
    const entry = readEntry(db, n);
    if (entry?.kind === "check") applyTerms(db, entry.body as Check, n);
    if (entry?.kind === "replacement") applyTerms(db, (entry.body as { by: Check }).by, n);
  }
}

function termsOfCheck({ valueN, budget, baseline, previous }: Check): Terms {
  const lines = budget?.contributions.map((c): Line => [shortNames[c.distribution], c.standardN, c.degreesOfFreedom]);
  const short = (other: Check["baseline"]): Earlier | null =>
    other && [other.valueN, other.standardUncertaintyN, other.correlation];
  return [valueN, budget && [budget.standardN, budget.degreesOfFreedom, lines ?? []], short(baseline), short(previous)];
}

function budgetOf([standardN, degreesOfFreedom, lines]: NonNullable<Terms[1]>): FiledFigures["budget"] {
  const contributions = lines.map(([name, standard, degrees]) => ({
    distribution: longNames[name],
    standardN: standard,
    degreesOfFreedom: degrees,
  }));
  return { standardN, degreesOfFreedom, contributions };
}

const earlier = (other: Earlier | null): FiledFigures["baseline"] =>
  other && { valueN: other[0], standardUncertaintyN: other[1], correlation: other[2] };
