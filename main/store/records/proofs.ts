import type { Proof } from "../../../app/ledger/proof.ts";
import type { Gauge } from "../../../app/ledger/register.ts";
import { type Db, prepared } from "../db.ts";
import { readEntry } from "../ledger/readEntry.ts";
import type { FiledEntry } from "../Store.ts";

/** A proof with its place in the ledger. */
export type FiledProof = { readonly proof: Proof } & Pick<FiledEntry, "origin" | "seq" | "hash" | "n">;

/** A gauge's proofs, oldest first; of one day in the order they were filed. */
export function proofsOf(db: Db, gaugeId: string): FiledProof[] {
  const places = prepared<number>(db, "SELECT n FROM proof_row WHERE gauge_id = ? ORDER BY proved_on, n")
    .pluck()
    .all(gaugeId);
  return places.flatMap((n) => filedAt(db, n) ?? []);
}

/** Plain date of the newest proof where it found the gauge off, and the gauge is still corrected by the curve from before. */
export function foundOffOn(db: Db, gauge: Gauge | undefined): string | undefined {
  if (gauge?.curve === undefined) return undefined; // nothing corrects it: it counts as unproved
  const n = prepared<number>(db, "SELECT n FROM proof_row WHERE gauge_id = ? ORDER BY proved_on DESC, n DESC LIMIT 1")
    .pluck()
    .get(gauge.gaugeId);
  const proof = n === undefined ? undefined : filedAt(db, n)?.proof;
  return proof !== undefined && proof.judged === "off" && !proof.curveTaken ? proof.on : undefined;
}

export function readProof(db: Db, proofId: string): FiledProof | undefined {
  const n = prepared<number>(db, "SELECT n FROM proof_row WHERE proof_id = ?").pluck().get(proofId);
  return n === undefined ? undefined : filedAt(db, n);
}

function filedAt(db: Db, n: number): FiledProof | undefined {
  const entry = readEntry(db, n);
  if (entry === undefined) return undefined;
  const { origin, seq, hash, body } = entry;
  return { proof: body as Proof, origin, seq, hash, n }; // the projection points at a proof
}
