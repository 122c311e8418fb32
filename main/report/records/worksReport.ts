import type { DueItem } from "../../../app/round/due/DueFacts.ts";
import type { FleetPlace } from "../../../app/trend/rankFleet.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";
import { serviceTexts } from "../../../app/words/recordTexts.ts";
import { fleetOf } from "../../fleet/fleetOf.ts";
import { dueNow } from "../../rounds/dueNow.ts";
import { entriesOfKind } from "../../store/ledger/readEntry.ts";
import { adapterList } from "../../store/records/adapters.ts";
import { gaugeList } from "../../store/records/gauges.ts";
import { allServiceEvents } from "../../store/records/serviceEvents.ts";
import { type SpindleStanding, spindleList } from "../../store/records/spindles.ts";
import { readWorks } from "../../store/records/works.ts";
import { drawFacts } from "../pdf/drawFacts.ts";
import { drawTable } from "../pdf/drawTable.ts";
import { PdfSheet } from "../pdf/PdfSheet.ts";
import { type About, sheetOptions } from "./About.ts";
import { drawProof } from "./drawProof.ts";
import { forecastWords } from "./forecastWords.ts";
import { reportTexts } from "./reportTexts.ts";
import { sinceThen } from "./sinceThen.ts";
import { unitOf, type Writing } from "./Writing.ts";
import { worksReportTexts } from "./worksReportTexts.ts";

/** The works on a few pages: what to do first, what is due, what has changed since a day. @param sinceMs  the summary before, say */
export async function worksReport(about: About, sinceMs: number): Promise<Buffer> {
  const { db, nowMs, goOn, write } = about;
  const words = worksReportTexts[write.language];
  const title = words.title(readWorks(db)?.name ?? words.theWorks);
  const standings = spindleList(db).filter((s) => s.spindle.state === "inUse");
  const { rows, commonMode } = fleetOf(db, goOn);
  const sheet = new PdfSheet(sheetOptions(about, `${title}, ${write.day(nowMs)}`, words.subject));
  sheet.title(title, write.day(nowMs));
  drawCounts(sheet, standings, write);
  for (const move of commonMode) sheet.paragraph(moveSentence(about, move), { bold: true });
  drawRanking(sheet, about, standings, rows);
  drawChanges(sheet, about, standings, sinceMs);
  drawProof(sheet, about, `summary ${isoDay(nowMs)}`);
  return sheet.finish();
}

const isoDay = (ms: number) => new Date(ms).toISOString().slice(0, 10);
const verdictOf = (s: SpindleStanding): Verdict | undefined => (s.stop === undefined ? s.last?.verdict : "stop");

function drawCounts(sheet: PdfSheet, standings: readonly SpindleStanding[], write: Writing): void {
  const words = worksReportTexts[write.language];
  const count = (verdict: Verdict | undefined) => String(standings.filter((s) => verdictOf(s) === verdict).length);
  const verdicts = ["stop", "act", "watch", "good", "cannotTell"] as const;
  drawFacts(sheet, [
    [words.inUse, String(standings.length)],
    ...verdicts.map((verdict) => [write.verdict(verdict), count(verdict)] as const),
    [words.never, count(undefined)],
  ]);
}

function moveSentence({ db, write }: About, move: ReturnType<typeof fleetOf>["commonMode"][number]): string {
  const words = worksReportTexts[write.language];
  const names = new Map([
    ...gaugeList(db).map((g) => [g.gaugeId, g.name] as const),
    ...adapterList(db).map((a) => [a.adapterId, a.name] as const),
  ]);
  const which = [move, ...move.or].map((one) => words[one.by](names.get(one.id) ?? one.id)).join(words.or);
  const { spindleIds, spindles, shift, sinceMs } = move;
  return words.moved(which, spindleIds.length, spindles, write.percent(shift), write.day(sinceMs));
}

function drawRanking(
  sheet: PdfSheet,
  { db, write, nowMs }: About,
  standings: readonly SpindleStanding[],
  rows: readonly FleetPlace[],
): void {
  const words = worksReportTexts[write.language];
  const known = new Map(standings.map((s) => [s.spindle.spindleId, s]));
  const works = readWorks(db);
  const shown = works?.unitShown;
  sheet.heading(words.ranking);
  drawTable(
    sheet,
    [
      { title: "", share: 0.5, align: "right" },
      { title: words.spindle, share: 1.7 },
      { title: words.verdict, share: 1.75 },
      { title: words.lastForce, share: 1.2, align: "right" },
      { title: words.fromBaseline, share: 1.2, align: "right" },
      { title: words.why, share: 1.7 },
      { title: words.reached, share: 2.4 },
      { title: words.due, share: 1.65 },
    ],
    rows.map((row) => {
      const standing = known.get(row.spindleId);
      const { forecast } = row;
      return [
        String(row.rank),
        standing?.spindle.name ?? row.spindleId,
        write.verdict(standing && verdictOf(standing)),
        write.force(standing?.last?.valueN, unitOf(standing?.spindle.unitShown, shown)),
        write.percent(standing?.dropFromBaseline === undefined ? undefined : -standing.dropFromBaseline),
        words[`why.${row.why.code}`],
        `${reportTexts[write.language][forecast.limit]}: ${forecastWords(forecast, write)}`,
        dueWords(works && standing && dueNow(db, works, standing, forecast, nowMs), write),
      ];
    }),
  );
}

function dueWords(due: DueItem | undefined, write: Writing): string {
  if (due === undefined) return "–";
  const day = write.plainDay(due.dueOn);
  return due.overdueDays > 0 ? worksReportTexts[write.language].past(day) : day;
}

function drawChanges(
  sheet: PdfSheet,
  { db, write }: About,
  standings: readonly SpindleStanding[],
  sinceMs: number,
): void {
  const words = worksReportTexts[write.language];
  const moved = sinceThen(db, sinceMs);
  const total = [...moved.values()].reduce((sum, one) => sum + one.checks, 0);
  const ended = [...entriesOfKind(db, "void"), ...entriesOfKind(db, "replacement")].filter(
    (e) => Date.parse(e.at) >= sinceMs,
  );
  const events = allServiceEvents(db).filter((event) => event.at >= isoDay(sinceMs));
  const names = new Map(standings.map((s) => [s.spindle.spindleId, s.spindle.name]));
  sheet.heading(words.changed(write.day(sinceMs)));
  sheet.paragraph(words.counts(total, ended.length, events.length));
  const changes = [...moved].filter(([id, one]) => names.has(id) && one.before !== one.now);
  if (changes.length > 0) {
    drawTable(
      sheet,
      [
        { title: words.spindle, share: 2 },
        { title: words.before, share: 1.5 },
        { title: words.now, share: 1.5 },
        { title: words.since, share: 1.2, align: "right" },
      ],
      changes.map(([id, one]) => [
        names.get(id)!,
        write.verdict(one.before),
        write.verdict(one.now),
        String(one.checks),
      ]),
    );
  } else sheet.paragraph(words.same, { quiet: true });
  if (events.length === 0) return;
  drawTable(
    sheet,
    [
      { title: words.date, share: 1 },
      { title: words.spindle, share: 2 },
      { title: words.what, share: 1.5 },
      { title: words.parts, share: 4 },
    ],
    events.map((e) => [
      write.plainDay(e.at),
      names.get(e.spindleId) ?? e.spindleId,
      serviceTexts[write.language][e.kind],
      [e.parts, e.note].filter((t) => t !== undefined).join("; "),
    ]),
  );
}
