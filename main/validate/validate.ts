import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Validation, ValidationCase } from "../../app/contract/reportViews.ts";
import { programRoot } from "../programRoot.ts";
import { programVersion } from "../programVersion.ts";
import { conformity, decisionRules, gum, units } from "./cases/judging.ts";
import { iso376, spikes, stepResponse } from "./cases/measuring.ts";
import { fitTo, inverse, loadCell, outliers, probability, runs, univariate } from "./cases/numerics.ts";
import { air, canonical, checksums, degreeFactors, gravity, hashes, signatures } from "./cases/records.ts";
import { cusum, ewma, individuals, steps, tolerance, trends } from "./cases/trends.ts";
import { programHash } from "./programHash.ts";
import { type Published, passes, type Runner, type Trial } from "./Trial.ts";

export type ValidateOptions = {
  /** Where the published files lie; absent: those that came with the program. */
  readonly folder?: string;
  readonly nowMs: number;
  readonly goOn?: () => void;
  readonly progress?: (done: number, total: number) => void;
};

/** Which runner reads which file. Where a data set belongs to another file, that file is handed in. */
const runners: Readonly<Record<string, (read: (id: string) => Published) => Runner>> = {
  "air-density-buoyancy": () => air,
  "astm-e74-lower-limit": () => degreeFactors,
  "change-point-tests": () => steps,
  checksums: () => checksums,
  "decision-rules": () => decisionRules,
  "fips180-4-sha256": () => hashes,
  "force-units": () => units,
  "gum-annex-examples": () => gum,
  "inverse-prediction": () => inverse,
  "iso376-classes": () => iso376,
  "jcgm106-conformity": () => conformity,
  "local-gravity": () => gravity,
  "nist-cusum": () => cusum,
  "nist-ewma": () => ewma,
  "nist-individuals": () => individuals,
  "nist-load-cell-case-study": (read) => loadCell(read("nist-strd-pontius")),
  "nist-runs-autocorrelation": (read) => runs(read("nist-strd-univariate")),
  "nist-strd-pontius": () => fitTo(2, 1e-12),
  "nist-strd-univariate": () => univariate,
  "nist-strd-wampler1": () => fitTo(5, 1e-12),
  "nist-strd-wampler4": () => fitTo(5, 1e-12),
  "outlier-tests": () => outliers,
  "peak-detection": () => spikes,
  "probability-functions": () => probability,
  "rfc8032-ed25519": () => signatures,
  "rfc8785-canonical-json": () => canonical,
  "step-response-overshoot": () => stepResponse,
  "tolerance-prediction-limits": () => tolerance,
  "trend-tests": () => trends,
};

/**
 * Runs the published checks on this installation, as ISO/IEC 17025:2017, 7.11.2 asks of a laboratory before use and
 * after each change. A file that is missing or that its runner cannot read is a case that fails, never one that is left out.
 */
export function validate({
  folder = join(programRoot, "test", "published"),
  nowMs,
  goOn,
  progress,
}: ValidateOptions): Validation {
  const read = (id: string): Published => JSON.parse(readFileSync(join(folder, `${id}.json`), "utf8"));
  const ids = Object.keys(runners);
  const cases = ids.flatMap((id, i) => {
    goOn?.();
    progress?.(i, ids.length);
    return casesOf(id, read);
  });
  return {
    program: programVersion,
    programHash: programHash() ?? null,
    runtime: `${process.version} on ${process.platform} ${process.arch}`,
    madeAt: new Date(nowMs).toISOString(),
    cases,
    failed: cases.filter((one) => !one.pass).map((one) => one.id),
  };
}

/** Published files that no runner reads: they are checked where the program is built, not here. */
export function notRun(folder = join(programRoot, "test", "published")): string[] {
  if (!existsSync(folder)) return [];
  const names = readdirSync(folder).map((name) => name.replace(/\.json$/, ""));
  return names.filter((name) => !Object.hasOwn(runners, name)).sort();
}

function casesOf(id: string, read: (id: string) => Published): ValidationCase[] {
  try {
    const data = read(id);
    const trials = runners[id]!(read)(data);
    if (trials.length === 0) throw new Error("there is no case in it");
    return trials.map((trial, i) => toCase(`${id}/${i + 1}`, { ...trial, source: withOrigin(trial, data) }));
  } catch (cause) {
    const got = cause instanceof Error ? cause.message : String(cause);
    return [
      { id: `${id}/1`, what: "the file as a whole", source: id, expected: "readable", got, within: "", pass: false },
    ];
  }
}

/** The source with what the file says of how its values were come by: found in print, recomputed, or from memory. */
function withOrigin({ name, source }: Trial, data: Published): string {
  const own = (data.cases ?? []).find((one: Published) => one.name !== undefined && name.startsWith(one.name));
  const provenance: unknown = own?.provenance ?? data.provenance;
  return typeof provenance === "string" ? `${source}; ${provenance}` : source;
}

function toCase(id: string, trial: Trial): ValidationCase {
  const { name, source, expected, got, within } = trial;
  const bound =
    within === undefined ? "the same" : "absolute" in within ? String(within.absolute) : `${within.relative} of it`;
  return { id, what: name, source, expected: String(expected), got: String(got), within: bound, pass: passes(trial) };
}
