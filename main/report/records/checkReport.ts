import type { Check } from "../../../app/ledger/check.ts";
import { type ForceUnit, fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { reasonsText } from "../../../app/words/reasonSentence.ts";
import { flagTexts, sourceTexts } from "../../../app/words/recordTexts.ts";
import { remarkWords } from "../../../app/words/remarkWords.ts";
import { settlingTexts } from "../../../app/words/settlingWords.ts";
import { waveformView } from "../../handlers/waveformView.ts";
import { type FiledCheck, readCheck } from "../../store/records/checks.ts";
import { readSpindle } from "../../store/records/spindles.ts";
import { readWaveform } from "../../store/records/waveforms.ts";
import { readWorks } from "../../store/records/works.ts";
import { StoreError } from "../../store/StoreError.ts";
import { decodeWaveform } from "../../store/waveform.ts";
import { drawChart } from "../pdf/drawChart.ts";
import { drawFacts } from "../pdf/drawFacts.ts";
import { drawTable } from "../pdf/drawTable.ts";
import { PdfSheet } from "../pdf/PdfSheet.ts";
import { type About, sheetOptions } from "./About.ts";
import { checkFacts } from "./checkFacts.ts";
import { checkReportTexts } from "./checkReportTexts.ts";
import { correctionsOf } from "./correctionsOf.ts";
import { drawProof } from "./drawProof.ts";
import { limitLevels } from "./limitWords.ts";
import { reportTexts } from "./reportTexts.ts";
import { unitOf, type Writing } from "./Writing.ts";

/**
 * One check with everything that led to its verdict.
 * @throws StoreError  `notFound`
 */
export async function checkReport(about: About, checkId: string): Promise<Buffer> {
  const { db, write } = about;
  const filed = readCheck(db, checkId);
  if (filed === undefined) throw new StoreError("notFound", "There is no such check in this data file.");
  const { check, summary } = filed;
  const words = checkReportTexts[write.language];
  const spindle = readSpindle(db, check.spindleId)?.spindle;
  const unit = unitOf(spindle?.unitShown, readWorks(db)?.unitShown, check.unit);
  const title = words.title(spindle?.name ?? words.noSpindle);
  const when = write.wallTime(summary.measuredAtMs, summary.offsetMinutes);
  const sheet = new PdfSheet(sheetOptions(about, `${title}, ${when}`, words.subject));
  sheet.title(title, [spindle?.machine, spindle?.area, when].filter(Boolean).join(", "));
  for (const sentence of correctionsOf(about, checkId)) sheet.paragraph(sentence, { bold: true });
  drawVerdict(sheet, check, unit, write);
  drawFacts(sheet, checkFacts(about, filed, unit));
  drawReadings(sheet, about, filed, unit);
  drawCycles(sheet, check, unit, write);
  drawBudget(sheet, check, unit, write);
  sheet.heading(words.before);
  sheet.paragraph(words.care);
  drawProof(sheet, about, `check ${checkId} entry ${filed.origin}/${filed.seq} ${filed.hash}`, [
    [words.thisCheck, checkId],
    [reportTexts[write.language].its, reportTexts[write.language].entryOf(filed.seq, filed.origin)],
    [reportTexts[write.language].itsHash, filed.hash],
  ]);
  return sheet.finish();
}

function drawVerdict(sheet: PdfSheet, check: Check, unit: ForceUnit, write: Writing): void {
  const words = checkReportTexts[write.language];
  const { budget, valueN, verdict } = check;
  const value = valueN === null ? words.noForce : write.speech.forceWithin(valueN, budget?.expandedN, unit);
  sheet.text("H2", `${write.verdict(verdict)}: ${value}`, { size: 16, weight: "bold" });
  if (budget !== null) {
    const coverage = write.percent(budget.coverage, 0);
    sheet.paragraph(words.expanded(write.number(budget.coverageFactor, 2), coverage), { quiet: true, size: 9 });
  }
  sheet.paragraph(reasonsText(check.reasons, write.speech, unit));
  if (verdict === "stop" || verdict === "cannotTell")
    sheet.paragraph(settlingTexts[write.language][verdict], { bold: true });
  const known = new Set(check.weakenedBy.map(({ code }) => code));
  const warned = check.warnings.filter(({ code, overriddenWith }) => overriddenWith !== undefined || !known.has(code));
  for (const remark of [...check.weakenedBy, ...warned]) {
    const anyway = remark.overriddenWith === undefined ? "" : words.anyway(remark.overriddenWith);
    sheet.paragraph(words.inMind(`${remarkWords(remark, write.speech, unit)}${anyway}`));
  }
  if (check.clockDoubtful) sheet.paragraph(words.clock);
  sheet.space(4);
}

function drawReadings(sheet: PdfSheet, { db, write }: About, { check, summary }: FiledCheck, unit: ForceUnit): void {
  const words = checkReportTexts[write.language];
  const views = check.cycles.flatMap((cycle) => {
    const row = readWaveform(db, summary.place, cycle.cycleId);
    return row === undefined || row.hash !== cycle.waveformHash
      ? []
      : [waveformView(cycle.cycleId, decodeWaveform(row.bytes), cycle.zeroN)];
  });
  if (views.length === 0) {
    sheet.paragraph(words.noReadings, { quiet: true });
    return;
  }
  const shown = (forceN: number) => fromNewtons(forceN, unit);
  const timed = views.every((view) => view.timed);
  sheet.heading(words.readings, 210);
  drawChart(sheet, {
    lines: views.map((view) => ({ x: view.t, y: view.forceN.map(shown) })),
    levels: limitLevels(check.limits, shown, write),
    xTitle: timed ? words.seconds : words.readingNo,
    yTitle: words.netForce(unit),
    fromZero: true,
    alt: words.readingsAlt(views.length),
  });
}

function drawCycles(sheet: PdfSheet, check: Check, unit: ForceUnit, write: Writing): void {
  if (check.cycles.length === 0) return;
  const words = checkReportTexts[write.language];
  sheet.heading(words.cycles);
  const right = { align: "right" } as const;
  drawTable(
    sheet,
    [
      { title: words.no, share: 0.6, ...right },
      { title: words.settled(unit), share: 1.4, ...right },
      { title: words.peak(unit), share: 1.1, ...right },
      { title: words.overshoot, share: 1.2, ...right },
      { title: words.rise, share: 1, ...right },
      { title: words.noise, share: 1, ...right },
      { title: words.creep, share: 1.05, ...right },
      { title: words.zero, share: 1, ...right },
      { title: words.remarks, share: 2.3 },
    ],
    check.cycles.map((cycle, i) => [
      String(i + 1),
      write.figure(cycle.settledN, unit),
      write.figure(cycle.peakN, unit),
      write.percent(cycle.overshoot),
      write.number(cycle.riseTimeS === null ? null : 1000 * cycle.riseTimeS),
      write.figure(cycle.noiseN, "N", 0.1),
      write.percent(cycle.creep, 2),
      write.figure(cycle.zeroN, "N", 0.1),
      [
        ...cycle.flags.map((flag) => flagTexts[write.language][flag]),
        cycle.dropped === null ? "" : words.leftOut(cycle.dropped.reason),
      ]
        .filter(Boolean)
        .join("; "),
    ]),
  );
}

function drawBudget(sheet: PdfSheet, { budget }: Check, unit: ForceUnit, write: Writing): void {
  if (budget === null) return;
  const words = checkReportTexts[write.language];
  const freedom = (value: number | null) => (value === null || value > 1000 ? words.veryMany : write.number(value, 1));
  sheet.heading(words.budget);
  const right = { align: "right" } as const;
  drawTable(
    sheet,
    [
      { title: words.budgetSource, share: 2.4 },
      { title: words.type, share: 0.7 },
      { title: words.distribution, share: 1.5 },
      { title: words.standard, share: 1, ...right },
      { title: words.freedom, share: 1.7, ...right },
      { title: words.share, share: 1.2, ...right },
      { title: "", share: 1.3 },
    ],
    budget.contributions.map((c) => [
      sourceTexts[write.language][c.source],
      c.type,
      words[`shape.${c.distribution}`],
      write.figure(c.standardN, "N", 0.1),
      freedom(c.degreesOfFreedom),
      write.percent(budget.standardN > 0 ? (c.standardN / budget.standardN) ** 2 : 0, 0),
      c.assumed ? words.assumed : "",
    ]),
  );
  sheet.paragraph(
    words.budgetEnd(
      write.force(budget.standardN, unit, 1),
      freedom(budget.degreesOfFreedom),
      write.number(budget.coverageFactor, 2),
      write.force(budget.expandedN, unit, 1),
    ),
  );
}
