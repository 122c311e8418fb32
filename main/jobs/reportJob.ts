import { type ReportOrder, reportOrder } from "../../app/contract/reports.ts";
import type { MadeFile } from "../../app/contract/roundViews.ts";
import { programVersion } from "../programVersion.ts";
import { proofReport } from "../report/proof/proofReport.ts";
import type { About } from "../report/records/About.ts";
import { checkReport } from "../report/records/checkReport.ts";
import { spindleReport } from "../report/records/spindleReport.ts";
import { writingOf } from "../report/records/Writing.ts";
import { worksReport } from "../report/records/worksReport.ts";
import { roundReport } from "../report/round/result/roundReport.ts";
import { programHash } from "../validate/programHash.ts";
import { defineJob } from "./Job.ts";

const MONTH_MS = 30 * 86_400_000;

/** Makes a report of the records as a PDF. */
export const job = defineJob({
  args: reportOrder,
  async run(order, { db, demo, goOn }): Promise<MadeFile> {
    const nowMs = Date.now();
    const { paper } = order;
    const write = writingOf(order.language);
    const about: About = { db, nowMs, paper, write, demo, goOn, version: programVersion, programHash: programHash() };
    const pdf = await make(order, about);
    const day = new Date(nowMs).toISOString().slice(0, 10);
    return { fileName: `${order.what}-${day}.pdf`, mime: "application/pdf", base64: pdf.toString("base64") };
  },
});

function make(order: ReportOrder, about: About): Promise<Buffer> {
  if (order.what === "check") return checkReport(about, order.checkId);
  if (order.what === "spindle") return spindleReport(about, order.spindleId);
  if (order.what === "proof") return proofReport(about, order.proofId);
  if (order.what === "round") return roundReport(about, order.roundId);
  return worksReport(about, order.since === undefined ? about.nowMs - MONTH_MS : Date.parse(order.since));
}
