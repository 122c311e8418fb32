import type { PolynomialFit } from "../../app/numerics/fitPolynomial.ts";
import { e74Proof } from "../../app/proof/e74/e74Proof.ts";
import { iso376Proof } from "../../app/proof/iso376/iso376Proof.ts";
import { isRefused, type ProofOptions, type ProofRefused } from "../../app/proof/method/ProofOptions.ts";
import { polynomialProof } from "../../app/proof/method/polynomialProof.ts";
import { readAstmE74Table } from "../../app/proof/tables/astmE74Table.ts";
import { readIso376Table } from "../../app/proof/tables/iso376Table.ts";
import { workingCheck } from "../../app/proof/working/workingCheck.ts";
import { fromNewtons, toNewtons } from "../../app/quantity/forceUnits.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";
import { type Command, UsageError } from "./Command.ts";
import { parseOptions } from "./parseOptions.ts";
import {
  decisionOf,
  type Method,
  methodOf,
  methods,
  type ProveTexts,
  proofOptionsOf,
  tableOf,
} from "./proveOptions.ts";
import { provePdf } from "./provePdf.ts";
import { e74Report, iso376Report, type ProveReport, polynomialReport, workingReport } from "./proveReport.ts";
import { proveText } from "./proveText.ts";
import { readInput } from "./readInput.ts";
import { type ProofFile, readProofCsv } from "./readProofCsv.ts";
import { writeNew } from "./writeNew.ts";

const text = { type: "string" } as const;

export const command: Command = {
  usage: `FILE.csv --method ${methods.join("|")} [--degree N] [--mpe "0.5 %"] [--rule R] [--resolution "0.01 kN"] [--reference-uncertainty "0.02 %"] [--table FILE.json] [--pdf OUT.pdf [--paper A4|Letter] [--language en|de]] [--json]   a gauge against a reference`,
  async run(args, io) {
    const { values, files } = parseOptions(args, {
      method: text,
      degree: text,
      mpe: text,
      rule: text,
      table: text,
      resolution: text,
      "reference-uncertainty": text,
      "temperature-coefficient": text,
      "temperature-range": text,
      pdf: text,
      paper: text,
      language: text,
      json: { type: "boolean" },
    });
    const method = methodOf(values);
    if (files.length !== 1) throw new UsageError("one FILE.csv holds the readings; - stands for standard input");
    const file = files[0]!;
    const bytes = await readInput(file, io);
    const proof = readProofCsv(bytes, file);
    const report = await proved(method, proof, values, file);
    if (values.pdf !== undefined) {
      const { paper, language } = values;
      writeNew(values.pdf, await provePdf(proof, { method, texts: values, file, bytes, paper, language }));
    }
    io.out(values.json === true ? `${JSON.stringify(report)}\n` : proveText(report));
    return 0;
  },
};

async function proved(method: Method, proof: ProofFile, texts: ProveTexts, file: string): Promise<ProveReport> {
  const options = proofOptionsOf(texts, proof);
  const done = <T extends object>(result: T | ProofRefused): T => {
    if (isRefused(result)) throw new UsageError(`${file}: ${result.refused}`);
    return result;
  };
  switch (method) {
    case "polynomial":
      return polynomialReport(proof, done(polynomialProof(proof.readings, options)));
    case "iso376":
      return iso376Report(
        proof,
        done(iso376Proof(proof.readings, options, await tableOf(texts.table, readIso376Table))),
      );
    case "astm-e74":
      return e74Report(proof, done(e74Proof(proof.readings, options, await tableOf(texts.table, readAstmE74Table))));
    case "working":
      return working(
        inReferenceUnit(proof, file),
        texts,
        { ...options, resolution: resolutionInReference(proof, options) },
        done,
      );
  }
}

function working(
  proof: ProofFile,
  texts: ProveTexts,
  options: ProofOptions,
  done: <T extends object>(result: T | ProofRefused) => T,
): ProveReport {
  const { mpe, rule } = decisionOf(texts, proof);
  const check = done(workingCheck(proof.readings, mpe, rule, options));
  return workingReport(proof, check, lineBeside(proof, options, done));
}

/** A curve beside the errors: of the degree asked for, else a line where the readings carry one. */
function lineBeside(
  proof: ProofFile,
  options: ProofOptions,
  done: <T extends object>(result: T | ProofRefused) => T,
): PolynomialFit | undefined {
  const curve = polynomialProof(proof.readings, { ...options, degree: options.degree ?? 1 });
  if (options.degree === undefined && isRefused(curve)) return undefined;
  return done(curve).fit;
}

function resolutionInReference(
  { referenceUnit, indicationUnit }: ProofFile,
  { resolution }: ProofOptions,
): number | undefined {
  if (resolution === undefined) return undefined;
  const factor = indicationPerReference(referenceUnit, indicationUnit);
  return factor === undefined ? resolution : resolution * factor;
}

/** Units of the reference in one of the indication; undefined where either is no force. */
function indicationPerReference(
  referenceUnit: string | undefined,
  indicationUnit: string | undefined,
): number | undefined {
  const from = parseForceUnit(indicationUnit ?? "");
  const to = parseForceUnit(referenceUnit ?? "");
  return from.kind === "force" && to.kind === "force" ? fromNewtons(toNewtons(1, from.unit), to.unit) : undefined;
}

/** Errors are differences: the indication is taken to the reference's unit first. */
function inReferenceUnit(proof: ProofFile, file: string): ProofFile {
  const { referenceUnit, indicationUnit } = proof;
  if (indicationUnit === undefined || indicationUnit === referenceUnit) return proof;
  const from = parseForceUnit(indicationUnit);
  const to = parseForceUnit(referenceUnit ?? "");
  if (from.kind !== "force" || to.kind !== "force") {
    throw new UsageError(
      `${file}: reference in ${referenceUnit ?? "no unit"} and indication in ${indicationUnit} cannot be compared; a working check needs both in units of force`,
    );
  }
  const readings = proof.readings.map((r) => ({
    ...r,
    indication: fromNewtons(toNewtons(r.indication, from.unit), to.unit),
  }));
  return { readings, referenceUnit, indicationUnit: referenceUnit };
}
