import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { hintCaution, hintSentence } from "../../../app/trend/hintSentence.ts";
import { noteSentence } from "../../../app/trend/noteSentence.ts";
import type { Trend } from "../../../app/trend/trendOf.ts";
import { cautionSentence } from "../../../app/verdict/cautionSentence.ts";
import { trendInFile } from "../../fleet/trendInFile.ts";
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
import { initials } from "./correctionsOf.ts";
import { drawProof } from "./drawProof.ts";
import { day, forecastWords } from "./forecastWords.ts";
import { limitLevels, limitWords } from "./limitWords.ts";
import { figure, force, percent, spaced, unitOf, verdictWords, wallTime } from "./words.ts";

/** The newest so many checks are listed; the chart and the trend hold all of them. */
const LISTED = 500;
const DAY_MS = 86_400_000;

/**
 * One spindle's history: course and forecast, services, every check with its state.
 * @throws StoreError  `notFound`
 */
export async function spindleReport(about: About, spindleId: string): Promise<Buffer> {
  const { db } = about;
  const standing = readSpindle(db, spindleId);
  if (standing === undefined) throw new StoreError("notFound", "There is no such spindle in this data file.");
  const { spindle } = standing;
  const unit = unitOf(spindle.unitShown, readWorks(db)?.unitShown);
  const trend = trendInFile(db, standing);
  const sheet = new PdfSheet(
    sheetOptions(about, `History of ${spindle.name}`, "Clamping force of a spindle, its history"),
  );
  sheet.title(`History of ${spindle.name}`, [spindle.machine, spindle.area].filter((part) => part !== "").join(", "));
  drawStanding(sheet, standing, unit);
  drawCourse(sheet, standing, trend, unit);
  drawServices(sheet, about, spindleId);
  drawChecks(sheet, about, spindleId, unit);
  drawProof(sheet, about, `spindle ${spindleId}`);
  return sheet.finish();
}

function drawStanding(
  sheet: PdfSheet,
  { spindle, last, baseline, stop, checkCount, dropFromBaseline, dueOn }: SpindleStanding,
  unit: ForceUnit,
): void {
  const verdict = stop !== undefined ? "stop" : last?.verdict;
  const value = last?.valueN === undefined ? "" : `: ${force(last.valueN, unit)}`;
  sheet.text("H2", verdict === undefined ? "Never measured" : `${verdictWords[verdict]}${value}`, {
    size: 16,
    weight: "bold",
  });
  if (stop !== undefined)
    sheet.paragraph(`A stop stands since ${day(stop.sinceMs)}; nobody has released it.`, { bold: true });
  const caution = verdict === undefined ? undefined : cautionSentence(verdict);
  if (caution !== undefined) sheet.paragraph(caution, { bold: true });
  const facts: (readonly [string, string | undefined])[] = [
    ["last check", last && wallTime(last.measuredAtMs, last.offsetMinutes)],
    ["checks that count", String(checkCount)],
    ["baseline", baseline && `${force(baseline.valueN, unit)} of ${day(baseline.measuredAtMs)}`],
    [
      "since the baseline",
      dropFromBaseline === undefined
        ? undefined
        : dropFromBaseline >= 0
          ? `fallen by ${percent(dropFromBaseline)}`
          : `risen by ${percent(-dropFromBaseline)}`,
    ],
    ["limits", limitWords(spindle.limits, unit)],
    ["taken from", spindle.limitsFrom],
    ["taper", spindle.taper],
    ["unit's serial no.", spindle.unitSerial],
    ["next check due", dueOn],
    ["note", spindle.note],
  ];
  drawFacts(
    sheet,
    facts.flatMap(([label, text]): Fact[] => (text === undefined || text === "" ? [] : [[label, text]])),
  );
}

function drawCourse(sheet: PdfSheet, { spindle }: SpindleStanding, trend: Trend, unit: ForceUnit): void {
  sheet.heading("Course", 215);
  if (trend.points.length > 0 && trend.axis.kind === "date") {
    const { originMs } = trend.axis;
    const shown = (forceN: number) => Number(figure(forceN, unit, 0.1));
    const lastX = trend.points.at(-1)!.x;
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
      levels: limitLevels(spindle.limits, shown),
      marks: trend.services.map((service) => ({ x: (service.atMs - originMs) / DAY_MS, name: spaced(service.kind) })),
      xWords: (x) => day(originMs + x * DAY_MS).slice(0, lastX < 300 ? 10 : 7),
      xTitle: lastX < 300 ? "day" : "month",
      yTitle: `force at the taper, ${unit}`,
      alt: `Force of ${trend.points.length} checks over ${Math.round(lastX)} days; the figures stand in the table of checks.`,
    });
  }
  for (const forecast of trend.forecasts)
    sheet.paragraph(
      `${forecast.which === "minimum" ? "Builder's minimum" : "Warning"}: ${forecastWords(forecast, forecast.confidence)}.`,
    );
  for (const note of trend.notes) sheet.paragraph(noteSentence(note), { quiet: true });
  if (trend.hints.length > 0) {
    for (const hint of trend.hints) sheet.paragraph(hintSentence(hint));
    sheet.paragraph(hintCaution, { bold: true });
  }
}

function drawServices(sheet: PdfSheet, { db }: About, spindleId: string): void {
  const events = serviceEvents(db, spindleId);
  sheet.heading("Services and events");
  if (events.length === 0) {
    sheet.paragraph("None on record.", { quiet: true });
    return;
  }
  drawTable(
    sheet,
    [
      { title: "date", share: 1.2 },
      { title: "what", share: 1.5 },
      { title: "parts and note", share: 4 },
      { title: "new serial no.", share: 1.4 },
      { title: "by", share: 1 },
    ],
    events.map((event) => [
      event.at,
      spaced(event.kind),
      [event.parts, event.note].filter((part) => part !== undefined && part !== "").join("; "),
      event.newUnitSerial ?? "",
      initials(db, event.operatorId) ?? "",
    ]),
  );
}

function drawChecks(sheet: PdfSheet, { db }: About, spindleId: string, unit: ForceUnit): void {
  const page = checkPage(db, spindleId, LISTED + 1);
  sheet.heading("Checks, newest first");
  if (page.length > LISTED) sheet.paragraph(`The newest ${LISTED}; older ones are in the records.`, { quiet: true });
  const right = { align: "right" } as const;
  drawTable(
    sheet,
    [
      { title: "measured", share: 3.1 },
      { title: unit, share: 0.9, ...right },
      { title: `± ${unit}`, share: 0.9, ...right },
      { title: "verdict", share: 1.3 },
      { title: "from baseline", share: 1, ...right },
      { title: "by", share: 1 },
      { title: "remarks", share: 3 },
    ],
    page
      .slice(0, LISTED)
      .map((check) => [
        wallTime(check.measuredAtMs, check.offsetMinutes),
        figure(check.valueN, unit),
        figure(check.expandedN, unit),
        check.voided === undefined ? verdictWords[check.verdict] : check.voided.how === "void" ? "VOID" : "REPLACED",
        percent(check.dropFromBaseline === undefined ? undefined : -check.dropFromBaseline),
        initials(db, check.operatorId) ?? "",
        remarksOn(check),
      ]),
  );
}

function remarksOn(check: CheckSummary): string {
  const state =
    check.voided &&
    (check.voided.how === "void" ? `made void: ${check.voided.reason}` : `replaced: ${check.voided.reason}`);
  return [
    state,
    check.isBaseline ? "baseline" : undefined,
    check.remeasure ? "to be measured again" : undefined,
    check.reason === "routine" ? undefined : spaced(check.reason),
    check.source === "measured" ? undefined : check.source,
  ]
    .filter((part) => part !== undefined)
    .join("; ");
}
