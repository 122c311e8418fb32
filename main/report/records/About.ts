import type { Db } from "../../store/db.ts";
import type { Paper, SheetOptions } from "../pdf/PdfSheet.ts";
import { reportTexts } from "./reportTexts.ts";
import type { Writing } from "./Writing.ts";

/** What every report is made with. */
export type About = {
  readonly db: Db;
  readonly nowMs: number;
  readonly paper: Paper;
  readonly write: Writing;
  readonly version: string;
  /** Of the measuring core; undefined where its sources are not beside the program. */
  readonly programHash: string | undefined;
  readonly demo: boolean;
  /** Called between spindles; may throw. */
  readonly goOn: () => void;
};

/** What stands on each page of a report of records, and in the document's own data. @param standing  what it is, said at each foot; absent: no accredited certificate */
export function sheetOptions(
  about: Omit<About, "db" | "goOn">,
  title: string,
  subject: string,
  standing?: string,
): SheetOptions {
  const { nowMs, paper, version, programHash, demo, write } = about;
  const words = reportTexts[write.language];
  const made = `${write.speech.dateTime(nowMs)} UTC`;
  const core = programHash === undefined ? words.noCore : words.core(programHash);
  const invented = demo ? `${words.invented} ` : "";
  return {
    title,
    subject,
    paper,
    nowMs,
    language: write.language,
    footer: `${invented}${standing ?? words.notAccredited}\nHoldfast ${version}, ${words.made(made)}\n${core}`,
    pageWords: words.page,
  };
}
