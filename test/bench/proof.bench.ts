import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fitPolynomial } from "../../app/numerics/fitPolynomial.ts";
import { proofReport } from "../../main/report/proof/proofReport.ts";
import { writingOf } from "../../main/report/records/Writing.ts";
import { openStore } from "../../main/store/open.ts";
import { aProof } from "../support/aProof.ts";
import { proofCoverage, proofWorlds } from "../support/proofCoverage.ts";
import { streamTrial } from "../support/streamTrial.ts";
import type { BenchRow } from "./BenchRow.ts";

/** The numbers of the proof room: digits of the fits, honest intervals, two instruments on ports of their own. */
export async function proofBench(): Promise<readonly BenchRow[]> {
  return [...digits(), ...coverage(), ...streams(), await reportTime()];
}

type Fitted = {
  inputs: { x: number[]; y: number[] };
  expected: { coefficients: number[]; coefficient_sd: number[]; residual_sd: number };
};
const published = (name: string): Fitted =>
  JSON.parse(readFileSync(join(import.meta.dirname, "../published", `${name}.json`), "utf8"));

function digits(): BenchRow[] {
  const least = (got: readonly number[], certified: readonly number[]) =>
    Math.min(15, ...got.map((v, i) => -Math.log10(Math.abs(v / certified[i]! - 1))));
  const row = (name: string, measured: number, limit: number): BenchRow => ({
    name,
    measured,
    limit,
    unit: "digits",
    met: measured >= limit,
  });
  const rows = (["pontius", "wampler4"] as const).flatMap((set) => {
    const { inputs, expected } = published(`nist-strd-${set}`);
    const fit = fitPolynomial(inputs.x, inputs.y, expected.coefficients.length - 1);
    const wanted = set === "pontius" ? 9 : 7;
    return [
      row(`NIST ${set}: coefficients`, least(fit.coefficients, expected.coefficients), wanted),
      row(`NIST ${set}: their standard deviations`, least(fit.coefficientSd, expected.coefficient_sd), 9),
      row(`NIST ${set}: residual standard deviation`, least([fit.residualSd], [expected.residual_sd]), 9),
    ];
  });
  const { inputs } = published("nist-strd-wampler1");
  const worst = Math.max(...fitPolynomial(inputs.x, inputs.y, 5).residuals.map(Math.abs));
  return [
    ...rows,
    {
      name: "NIST wampler1: greatest residual of an exact polynomial",
      measured: worst,
      limit: 1e-9,
      unit: "",
      met: worst <= 1e-9,
    },
  ];
}

function coverage(): BenchRow[] {
  return (["polynomial", "working", "iso376", "astm-e74"] as const).flatMap((method) =>
    proofWorlds.map((world): BenchRow => {
      const { covered, meanExpandedN } = proofCoverage(method, world, 2000, 1);
      const most = method === "polynomial" || method === "working" ? 97 : 100;
      const least = most === 97 ? 93 : 95;
      const measured = 100 * covered;
      return {
        name: `${method}: truth inside the stated 95 %, noise ${world.noiseN} N, mounting ${world.mounting}, reference ${world.reference}, ${world.runs} runs`,
        measured,
        limit: least,
        unit: "%",
        met: measured >= least && measured <= most,
        note: `${least} to ${most} %; mean interval ±${meanExpandedN.toFixed(1)} N`,
      };
    }),
  );
}

/** A report in a data file of its own: reading, laying out, fonts and all. The middle of nine. */
async function reportTime(): Promise<BenchRow> {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-proof-"));
  const store = openStore({ path: join(folder, "a.sqlite"), demo: false, readOnly: false, now: Date.now });
  try {
    const proof = aProof({ method: "astm-e74" }); // three runs, ten steps
    store.append([{ kind: "proof", body: proof }]);
    const about = {
      db: store.db,
      nowMs: 0,
      paper: "A4",
      write: writingOf("de"),
      version: "",
      programHash: undefined,
    } as const;
    const times: number[] = [];
    for (let i = 0; i < 9; i += 1) {
      const from = performance.now();
      await proofReport({ ...about, demo: false, goOn: () => {} }, proof.proofId);
      times.push((performance.now() - from) / 1000);
    }
    const measured = times.sort((a, b) => a - b)[4]!;
    return { name: "PDF of a proof of three runs and ten steps", measured, limit: 2, unit: "s", met: measured <= 2 };
  } finally {
    store.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

function streams(): BenchRow[] {
  const trials = Array.from({ length: 500 }, (_, i) => streamTrial(i + 1));
  const most = (of: (t: (typeof trials)[number]) => number) => trials.reduce((worst, t) => Math.max(worst, of(t)), 0);
  const row = (name: string, measured: number, limit: number, unit: string, note?: string): BenchRow => ({
    name: `two ports, 500 proofs: ${name}`,
    measured,
    limit,
    unit,
    met: measured <= limit,
    ...(note === undefined ? {} : { note }),
  });
  return [
    row("greatest error of the time offset", 1000 * most((t) => Math.abs(t.offsetErrorS ?? Infinity)), 50, "ms"),
    row(
      "greatest error of a step value",
      100 * most((t) => t.worstStep),
      0.01,
      "%",
      "noise 0.3 N and 0.5 N, loads from 3 kN",
    ),
    row("proofs in which a load was missed or taken twice", trials.filter((t) => !t.complete).length, 0, ""),
    row(
      "greatest speed of the load while a step was taken",
      most((t) => t.worstSpeedNPerS),
      5,
      "N/s",
      "ramps run at 700 N/s and more; loads settle at up to 4 N/s after a ramp",
    ),
  ];
}

if (import.meta.main) {
  for (const { name, measured, limit, unit, met, note } of await proofBench()) {
    process.stdout.write(
      `${met ? "met    " : "NOT MET"}  ${measured.toPrecision(4)} ${unit} (limit ${limit})  ${name}${note === undefined ? "" : `; ${note}`}\n`,
    );
  }
}
