import { type ForceUnit, fromNewtons } from "../../../app/quantity/forceUnits.ts";
import type { Trend } from "../../../app/trend/trendOf.ts";
import { hintEvidence, hintTexts, noteWords } from "../../../app/words/evidenceWords.ts";
import { checkReasonTexts, serviceTexts } from "../../../app/words/recordTexts.ts";
import { settlingTexts } from "../../../app/words/settlingWords.ts";
import { forecastInFile } from "../../fleet/forecastInFile.ts";
import { trendInFile } from "../../fleet/trendInFile.ts";
import { dueNow } from "../../rounds/dueNow.ts";
import type { CheckSummary } from "../../store/records/checkSummary.ts";
import { checkPage } from "../../store/records/checks.ts";
import { serviceEvents } from "../../store/records/serviceEvents.ts";
import { readSpindle, type SpindleStanding } from "../../store/records/spindles.ts";
import { readWorks } from "../../store/records/works.ts";
import { StoreError } from "../../store/StoreError.ts";
import { drawChart } from "../pdf/drawChart.ts";
import { drawFacts, type Fact } from "../pdf/drawFacts.ts";
import { drawTable } from "../pdf/drawTable.ts";
import { PdfSheet } from "../pdf/PdfSheet.ts";
import { type About, sheetOptions } from "./About.ts";
import { changeWords } from "./changeWords.ts";
import { checkReportTexts } from "./checkReportTexts.ts";
import { initials } from "./correctionsOf.ts";
import { drawProof } from "./drawProof.ts";
import { forecastWords } from "./forecastWords.ts";
import { limitLevels, limitWords } from "./limitWords.ts";
import { spindleReportTexts } from "./spindleReportTexts.ts";
import { unitOf, type Writing } from "./Writing.ts";

/** The newest so many checks are listed; the chart and the trend hold all of them. */
const LISTED = 500;
const DAY_MS = 86_400_000;

/**
 * One spindle's history: course and forecast, services, every check with its state.
 * @throws StoreError  `notFound`
 */
export async function spindleReport(about: About, spindleId: string): Promise<Buffer> {
  const { db, write } = about;
  const standing = readSpindle(db, spindleId);
  if (standing === undefined) throw new StoreError("notFound", "There is no such spindle in this data file.");
  const words = spindleReportTexts[write.language];
  const { spindle } = standing;
  const unit = unitOf(spindle.unitShown, readWorks(db)?.unitShown);
  const { trend } = trendInFile(db, standing);
  const sheet = new PdfSheet(sheetOptions(about, words.title(spindle.name), words.subject));
  sheet.title(words.title(spindle.name), [spindle.machine, spindle.area].filter((part) => part !== "").join(", "));
  const works = readWorks(db);
  const due = works && dueNow(db, works, standing, forecastInFile(db, standing), about.nowMs);
  drawStanding(sheet, standing, due?.dueOn, unit, write);
  drawCourse(sheet, standing, trend, unit, write);
  drawServices(sheet, about, spindleId);
  drawChecks(sheet, about, spindleId, unit);
  drawProof(sheet, about, `spindle ${spindleId}`);
  return sheet.finish();
}

function drawStanding(
  sheet: PdfSheet,
  { spindle, last, baseline, stop, checkCount, dropFromBaseline }: SpindleStanding,
  dueOn: string | undefined,
  unit: ForceUnit,
  write: Writing,
): void {
  const words = spindleReportTexts[write.language];
  const verdict = stop !== undefined ? "stop" : last?.verdict;
  const value = last?.valueN === undefined ? "" : `: ${write.force(last.valueN, unit)}`;
  sheet.text("H2", verdict === undefined ? words.never : `${write.verdict(verdict)}${value}`, {
    size: 16,
    weight: "bold",
  });
  if (stop !== undefined) sheet.paragraph(words.stopStands(write.day(stop.sinceMs)), { bold: true });
  if (verdict === "stop" || verdict === "cannotTell")
    sheet.paragraph(settlingTexts[write.language][verdict], { bold: true });
  const facts: (readonly [string, string | undefined])[] = [
    [words.last, last && write.wallTime(last.measuredAtMs, last.offsetMinutes)],
    [words.count, String(checkCount)],
    [words.baseline, baseline && words.ofDay(write.force(baseline.valueN, unit), write.day(baseline.measuredAtMs))],
    [words.sinceBaseline, changeWords(dropFromBaseline, write)],
    [words.limits, limitWords(spindle.limits, unit, write)],
    [words.limitsFrom, spindle.limitsFrom],
    [words.taper, spindle.taper],
    [words.unitSerial, spindle.unitSerial],
    [words.due, dueOn && write.plainDay(dueOn)],
    [words.note, spindle.note],
  ];
  drawFacts(
    sheet,
    facts.flatMap(([label, text]): Fact[] => (text === undefined || text === "" ? [] : [[label, text]])),
  );
}

function drawCourse(
  sheet: PdfSheet,
  { spindle }: SpindleStanding,
  trend: Trend,
  unit: ForceUnit,
  write: Writing,
): void {
  const words = spindleReportTexts[write.language];
  sheet.heading(words.course, 215);
  if (trend.points.length > 0 && trend.axis.kind === "date") {
    const { originMs } = trend.axis;
    const shown = (forceN: number) => fromNewtons(forceN, unit);
    const lastX = trend.points.at(-1)!.x;
    const { speech } = write;
    drawChart(sheet, {
      lines: [
        ...trend.segments.flatMap(({ band }) => {
          const x = band.map((point) => point.x);
          const sides = (["low", "high"] as const).flatMap((side) => {
            const known = band.filter((point) => point[side] !== undefined);
            return known.length < 2
              ? []
              : [{ x: known.map((p) => p.x), y: known.map((p) => shown(p[side]!)), look: "thin" as const }];
          });
          return [{ x, y: band.map((point) => shown(point.mid)) }, ...sides];
        }),
        { x: trend.points.map((p) => p.x), y: trend.points.map((p) => shown(p.valueN)), look: "dots" },
      ],
      levels: limitLevels(spindle.limits, shown, write),
      marks: trend.services.map((service) => ({
        x: (service.atMs - originMs) / DAY_MS,
        name: serviceTexts[write.language][service.kind],
      })),
      xWords: (x) => (lastX < 300 ? speech.date : speech.month)(originMs + x * DAY_MS),
      xTitle: lastX < 300 ? words.day : words.month,
      yTitle: words.force(unit),
      alt: words.courseAlt(trend.points.length, Math.round(lastX)),
    });
  }
  for (const forecast of trend.forecasts)
    sheet.paragraph(`${words[`limit.${forecast.which}`]}: ${forecastWords(forecast, write, forecast.confidence)}.`);
  for (const note of trend.notes) sheet.paragraph(noteWords(note, write.speech), { quiet: true });
  drawHints(sheet, trend, write);
}

function drawHints(sheet: PdfSheet, { hints }: Trend, write: Writing): void {
  const words = spindleReportTexts[write.language];
  const named = hintTexts[write.language];
  for (const hint of hints) {
    const { pro, con } = hintEvidence(hint, write.speech);
    const against = con === undefined ? "" : words.hintAgainst(con);
    sheet.paragraph(`${words.hint(named[hint.pattern], named[hint.strength], pro)}${against}`);
  }
  if (hints.length > 0) sheet.paragraph(named.caution, { bold: true });
}

function drawServices(sheet: PdfSheet, { db, write }: About, spindleId: string): void {
  const words = spindleReportTexts[write.language];
  const events = serviceEvents(db, spindleId);
  sheet.heading(words.services);
  if (events.length === 0) {
    sheet.paragraph(words.none, { quiet: true });
    return;
  }
  drawTable(
    sheet,
    [
      { title: words.date, share: 1.2 },
      { title: words.what, share: 1.7 },
      { title: words.parts, share: 3.8 },
      { title: words.newSerial, share: 1.4 },
      { title: words.by, share: 1 },
    ],
    events.map((event) => [
      write.plainDay(event.at),
      serviceTexts[write.language][event.kind],
      [event.parts, event.note].filter((part) => part !== undefined && part !== "").join("; "),
      event.newUnitSerial ?? "",
      initials(db, event.operatorId, write) ?? "",
    ]),
  );
}

function drawChecks(sheet: PdfSheet, { db, write }: About, spindleId: string, unit: ForceUnit): void {
  const words = spindleReportTexts[write.language];
  const page = checkPage(db, spindleId, LISTED + 1);
  sheet.heading(words.checks);
  if (page.length > LISTED) sheet.paragraph(words.newest(LISTED), { quiet: true });
  const right = { align: "right" } as const;
  drawTable(
    sheet,
    [
      { title: words.measured, share: 3.7 },
      { title: unit, share: 0.9, ...right },
      { title: `± ${unit}`, share: 0.9, ...right },
      { title: words.verdict, share: 1.55 },
      { title: words.fromBaseline, share: 1.35, ...right },
      { title: words.by, share: 0.7 },
      { title: words.remarks, share: 2.4 },
    ],
    page
      .slice(0, LISTED)
      .map((check) => [
        write.wallTime(check.measuredAtMs, check.offsetMinutes),
        write.figure(check.valueN, unit),
        write.figure(check.expandedN, unit),
        check.voided === undefined
          ? write.verdict(check.verdict)
          : check.voided.how === "void"
            ? words.VOID
            : words.REPLACED,
        write.percent(check.dropFromBaseline === undefined ? undefined : -check.dropFromBaseline),
        initials(db, check.operatorId, write) ?? "",
        remarksOn(check, write),
      ]),
  );
}

function remarksOn({ voided, isBaseline, remeasure, reason, source }: CheckSummary, write: Writing): string {
  const words = spindleReportTexts[write.language];
  const state = voided && (voided.how === "void" ? words.madeVoid(voided.reason) : words.replaced(voided.reason));
  return [
    state,
    isBaseline ? words.baseline : undefined,
    remeasure ? words.remeasure : undefined,
    reason === "routine" || reason === "baseline" ? undefined : checkReasonTexts[write.language][reason],
    source === "measured" ? undefined : checkReportTexts[write.language][`source.${source}`],
  ]
    .filter((part) => part !== undefined)
    .join("; ");
}
