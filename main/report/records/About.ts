import type { Db } from "../../store/db.ts";
import type { Paper, SheetOptions } from "../pdf/PdfSheet.ts";

/** What every report is made with. */
export type About = {
  readonly db: Db;
  readonly nowMs: number;
  readonly paper: Paper;
  readonly version: string;
  /** Of the measuring core; undefined where its sources are not beside the program. */
  readonly programHash: string | undefined;
  readonly demo: boolean;
  /** Called between spindles; may throw. */
  readonly goOn: () => void;
};

/** What stands on each page of a report of records, and in the document's own data. */
export function sheetOptions(about: About, title: string, subject: string): SheetOptions {
  const { nowMs, paper, version, programHash, demo } = about;
  const made = `${new Date(nowMs).toISOString().slice(0, 16).replace("T", " ")} UTC`;
  const core = programHash === undefined ? "measuring core not at hand" : `measuring core SHA-256 ${programHash}`;
  const invented = demo ? "Invented data of the demo. " : "";
  return {
    title,
    subject,
    paper,
    nowMs,
    footer: `${invented}${NOT_ACCREDITED}\nHoldfast ${version}, made ${made}\n${core}`,
  };
}

export const NOT_ACCREDITED = "A record of one's own measurements, not an accredited certificate.";
