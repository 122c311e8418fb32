import type { MadeFile } from "../../../app/contract/roundViews.ts";
import { proofPage } from "../../proofs/proofViews.ts";
import type { Db } from "../../store/db.ts";
import { proofCsv } from "./proofCsv.ts";
import { proofJson } from "./proofJson.ts";

/** A filed proof as a file for other programs; undefined where there is none. */
export function proofData(db: Db, proofId: string, as: "csv" | "json"): MadeFile | undefined {
  const page = proofPage(db, proofId);
  if (page === undefined) return undefined;
  const text = as === "csv" ? proofCsv(page) : proofJson(page);
  return {
    fileName: `proof-${page.proof.on}.${as}`,
    mime: as === "csv" ? "text/csv;charset=utf-8" : "application/json",
    base64: Buffer.from(text).toString("base64"),
  };
}
