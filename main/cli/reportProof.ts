import { proofData } from "../report/proof/proofData.ts";
import { openReader } from "../store/open.ts";
import { gaugeList } from "../store/records/gauges.ts";
import { proofsOf } from "../store/records/proofs.ts";
import { UsageError } from "./Command.ts";

/** A proof by its id, or a gauge's newest by the gauge's name. @throws UsageError  no such gauge, several, or one never proved */
export function proofIdOf(path: string, named: string | undefined): string | undefined {
  const wanted = named?.trim().toLowerCase();
  if (wanted === undefined || /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(wanted)) return wanted;
  const db = openReader(path);
  try {
    const gauges = gaugeList(db).filter(({ name }) => name.toLowerCase() === wanted);
    if (gauges.length !== 1)
      throw new UsageError(
        gauges.length === 0
          ? `there is no gauge ${named}; name a proof by its id or a gauge by its name`
          : `there are ${gauges.length} gauges ${named}; name the proof by its id`,
      );
    const newest = proofsOf(db, gauges[0]!.gaugeId).at(-1);
    if (newest === undefined) throw new UsageError(`the gauge ${named} was never proved`);
    return newest.proof.proofId;
  } finally {
    db.close();
  }
}

/** The proof as data where the file to write is named .csv or .json; undefined where it is a PDF. @throws UsageError  no such proof */
export function proofDataFor(path: string, proofId: string, out: string): Buffer | undefined {
  const as = /\.(csv|json)$/i.exec(out)?.[1]?.toLowerCase() as "csv" | "json" | undefined; // the two the pattern knows
  if (as === undefined) return undefined;
  const db = openReader(path);
  try {
    const data = proofData(db, proofId, as);
    if (data === undefined) throw new UsageError("There is no such proof in this data file.");
    return Buffer.from(data.base64, "base64");
  } finally {
    db.close();
  }
}
