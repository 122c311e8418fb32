import { chiSquareCdf } from "../../app/numerics/chiSquareCdf.ts";
import { fCdf } from "../../app/numerics/fCdf.ts";
import { incompleteBeta } from "../../app/numerics/incompleteBeta.ts";
import { normalCdf } from "../../app/numerics/normalCdf.ts";
import { normalQuantile } from "../../app/numerics/normalQuantile.ts";
import { studentCdf } from "../../app/numerics/studentCdf.ts";
import { studentQuantile } from "../../app/numerics/studentQuantile.ts";
import { published, worstError } from "../app/numerics/publishedProbability.ts";
import type { BenchRow } from "./BenchRow.ts";
import { type ConformityRow, conformity } from "./judgement/conformity.ts";
import { type CoverageRow, coverage } from "./judgement/coverage.ts";
import { rejudging } from "./judgement/rejudging.ts";

const PLACES = 60;
const TRIALS = 20_000; // for each place and number of clampings: 3.6 million measurements in all
const RUN = 1_000_000;
const SEED = 20_260_101;

type Tables = { readonly coverage: readonly CoverageRow[]; readonly conformity: readonly ConformityRow[] };

function tables(): Tables {
  return {
    coverage: [3, 5, 8].flatMap((n) => coverage(n, PLACES, TRIALS, SEED + n)),
    conformity: conformity(PLACES, RUN, SEED),
  };
}

/** The numbers the judgement is held to: coverage and probability of conformity by Monte Carlo, digits, speed. */
export async function judgementBench(): Promise<BenchRow[]> {
  return rowsOf(tables());
}

function rowsOf(found: Tables): BenchRow[] {
  const apart = Math.max(...found.conformity.map((row) => row.apart));
  return [
    ...coverageRows(found.coverage, "three clampings", (n) => n === 3, 0.92),
    ...coverageRows(found.coverage, "five and more", (n) => n >= 5, 0.93),
    {
      name: `probability of conformity against JCGM 101 runs of a million, greatest difference over ${PLACES} budgets`,
      measured: apart,
      limit: 0.002,
      unit: "",
      met: apart <= 0.002,
    },
    ...digits(),
    ...[false, true].map((few) => {
      const seconds = rejudging(100_000, few, SEED);
      const proofs = few ? "proofs of few readings" : "proofs taken as known";
      return {
        name: `re-judging 100,000 checks in memory, ${proofs}`,
        measured: seconds,
        limit: 2,
        unit: "s",
        met: seconds < 2,
      };
    }),
  ];
}

function coverageRows(
  rows: readonly CoverageRow[],
  name: string,
  counts: (n: number) => boolean,
  least: number,
): BenchRow[] {
  const covered = rows.filter(({ n }) => counts(n)).map((row) => row.covered);
  const [low, high] = [Math.min(...covered), Math.max(...covered)];
  const of = `of the stated 95 % interval, ${name}, over ${covered.length} budgets of ${TRIALS} trials`;
  return [
    { name: `least coverage ${of}`, measured: 100 * low, limit: 100 * least, unit: "%", met: low >= least },
    { name: `greatest coverage ${of}`, measured: 100 * high, limit: 98, unit: "%", met: high <= 0.98 },
  ];
}

function digits(): BenchRow[] {
  const beta = (x: number, a: number, b: number) => incompleteBeta(x, a, b);
  const worst: Record<string, number> = {
    "normal distribution": worstError(
      published.normalCdf.filter(([, p]) => p! > 2.3e-308),
      normalCdf,
    ).error,
    "its quantile": worstError(published.normalQuantile, normalQuantile).error,
    "Student's t": worstError(published.studentCdf, studentCdf).error,
    "quantile of t": worstError(published.studentQuantile, studentQuantile).error,
    "incomplete beta": worstError(published.incompleteBeta, beta).error,
    "F distribution": worstError(published.fCdf, fCdf).error,
    "chi-square": worstError(published.chiSquareCdf, chiSquareCdf).error,
  };
  return Object.entries(worst).map(([name, error]) => ({
    name: `${name}, worst relative error against 50-digit values`,
    measured: error,
    limit: 1e-12,
    unit: "",
    met: error <= 1e-12,
  }));
}

if (import.meta.main) {
  const found = tables();
  process.stdout.write(" n  coverage %   U/F %     k  dominant\n");
  for (const { n, covered, relative, factor, dominant } of found.coverage) {
    process.stdout.write(
      `${String(n).padStart(2)}  ${(100 * covered).toFixed(2).padStart(10)}  ${(100 * relative).toFixed(2).padStart(6)}  ${factor.toFixed(2)}  ${dominant}\n`,
    );
  }
  process.stdout.write("\n n  apart    dominant\n");
  for (const { n, apart, dominant } of found.conformity) {
    process.stdout.write(`${String(n).padStart(2)}  ${apart.toFixed(5)}  ${dominant}\n`);
  }
  process.stdout.write("\n");
  for (const row of rowsOf(found)) {
    process.stdout.write(
      `${row.met ? "met    " : "NOT MET"} ${row.name}: ${Number(row.measured.toPrecision(4))} ${row.unit} (${row.limit})\n`,
    );
  }
}
