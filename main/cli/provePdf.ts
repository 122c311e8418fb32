import { createHash } from "node:crypto";
import { basename } from "node:path";
import type { ProofReading } from "../../app/proof/data/ProofReading.ts";
import { isRefused } from "../../app/proof/method/ProofOptions.ts";
import { proveReadings } from "../../app/proof/result/proveReadings.ts";
import { type ForceUnit, toNewtons } from "../../app/quantity/forceUnits.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";
import { programVersion } from "../programVersion.ts";
import { fileProofReport } from "../report/proof/fileProofReport.ts";
import { writingOf } from "../report/records/Writing.ts";
import { programHash } from "../validate/programHash.ts";
import { UsageError } from "./Command.ts";
import { languageOf } from "./languageOf.ts";
import { paperOf } from "./paperOf.ts";
import { decisionOf, type Method, type ProveTexts, proofOptionsOf, tablesOf } from "./proveOptions.ts";
import type { ProofFile } from "./readProofCsv.ts";

type Asked = {
  readonly method: Method;
  readonly texts: ProveTexts;
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly paper: string | undefined;
  readonly language: string | undefined;
};

/**
 * A file's proof as a report. It is in newtons inside, so both columns must name a unit of force.
 * @throws UsageError  they do not, or an option cannot be read
 */
export async function provePdf(proof: ProofFile, asked: Asked): Promise<Buffer> {
  const { method, texts, file, bytes } = asked;
  const look = { paper: paperOf(asked.paper), language: languageOf(asked.language) };
  const units = { reference: unitOf(proof.referenceUnit), indication: unitOf(proof.indicationUnit) };
  if (units.reference === undefined || units.indication === undefined)
    throw new UsageError(
      `${file}: a report needs both columns in units of force; name them as reference_kN and indication_kN, or leave --pdf out`,
    );
  const { reference, indication } = { reference: units.reference, indication: units.indication };
  const readings = proof.readings.map(
    (r): ProofReading => ({
      ...r,
      reference: toNewtons(r.reference, reference),
      indication: toNewtons(r.indication, indication),
    }),
  );
  const options = proofOptionsOf(texts, proof);
  const { mpe, rule } = decisionOf(texts, proof);
  const allowed = mpe?.kind === "absolute" ? { ...mpe, force: toNewtons(mpe.force, reference) } : mpe;
  const resolution = options.resolution === undefined ? undefined : toNewtons(options.resolution, indication);
  const proved = proveReadings(method, readings, {
    options: { ...options, resolution },
    mpe: allowed,
    rule,
    tables: await tablesOf(method, texts),
  });
  if (isRefused(proved)) throw new UsageError(`${file}: ${proved.refused}`);
  return fileProofReport(
    {
      nowMs: Date.now(),
      paper: look.paper,
      write: writingOf(look.language),
      version: programVersion,
      programHash: programHash(),
      demo: false,
    },
    {
      file: file === "-" ? "-" : basename(file),
      sha256: createHash("sha256").update(bytes).digest("hex"),
      method,
      unit: reference,
      readings,
      proved,
      choices: { mpe: allowed ?? null, rule },
    },
  );
}

function unitOf(name: string | undefined): ForceUnit | undefined {
  const meaning = parseForceUnit(name ?? "");
  return meaning.kind === "force" ? meaning.unit : undefined;
}
