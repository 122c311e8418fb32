import type { Check } from "../../../app/ledger/check.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { cautionSentence } from "../../../app/verdict/cautionSentence.ts";
import type { Reason } from "../../../app/verdict/Judgement.ts";
import { reasonSentence } from "../../../app/verdict/reasonSentence.ts";
import { waveformView } from "../../handlers/waveformView.ts";
import { adapterList } from "../../store/records/adapters.ts";
import { type FiledCheck, readCheck } from "../../store/records/checks.ts";
import { gaugeList } from "../../store/records/gauges.ts";
import { readSpindle } from "../../store/records/spindles.ts";
import { readWaveform } from "../../store/records/waveforms.ts";
import { readWorks } from "../../store/records/works.ts";
import { StoreError } from "../../store/StoreError.ts";
import { decodeWaveform } from "../../store/waveform.ts";
import { drawChart } from "../pdf/drawChart.ts";
import { drawFacts, type Fact } from "../pdf/drawFacts.ts";
import { drawTable } from "../pdf/drawTable.ts";
import { PdfSheet } from "../pdf/PdfSheet.ts";
import { type About, sheetOptions } from "./About.ts";
import { correctionsOf, initials } from "./correctionsOf.ts";
import { drawProof } from "./drawProof.ts";
import { limitLevels, limitWords } from "./limitWords.ts";
import { figure, force, percent, spaced, unitOf, verdictWords, wallTime } from "./words.ts";

/**
 * One check with everything that led to its verdict.
 * @throws StoreError  `notFound`
 */
export async function checkReport(about: About, checkId: string): Promise<Buffer> {
  const { db } = about;
  const filed = readCheck(db, checkId);
  if (filed === undefined) throw new StoreError("notFound", "There is no such check in this data file.");
  const { check, summary } = filed;
  const spindle = readSpindle(db, check.spindleId)?.spindle;
  const unit = unitOf(spindle?.unitShown, readWorks(db)?.unitShown, check.unit);
  const name = spindle?.name ?? "a spindle not in the register";
  const when = wallTime(summary.measuredAtMs, summary.offsetMinutes);
  const sheet = new PdfSheet(
    sheetOptions(about, `Check of ${name}, ${when}`, "Clamping force of a spindle, one check"),
  );
  sheet.title(`Check of ${name}`, [spindle?.machine, spindle?.area, when].filter(Boolean).join(", "));
  for (const sentence of correctionsOf(db, checkId)) sheet.paragraph(sentence, { bold: true });
  drawVerdict(sheet, check, unit);
  drawFacts(sheet, factsOf(about, filed, unit));
  drawReadings(sheet, about, filed, unit);
  drawCycles(sheet, check, unit);
  drawBudget(sheet, check, unit);
  sheet.heading("Before the next check");
  sheet.paragraph(
    "Lock out the machine as its manual says, keep clear of the clamping mechanism, never turn the spindle with the gauge " +
      "in it, never load the gauge beyond its capacity. The builder's manual and local rules come first.",
  );
  drawProof(sheet, about, `check ${checkId} entry ${filed.origin}/${filed.seq} ${filed.hash}`, [
    ["this check", checkId],
    ["its entry", `${filed.seq} of chain ${filed.origin}`],
    ["its hash", filed.hash],
  ]);
  return sheet.finish();
}

function drawVerdict(sheet: PdfSheet, check: Check, unit: ForceUnit): void {
  // Two digits of the uncertainty, and the value to the same place (GUM 7.2.6).
  const stepN = (check.budget?.expandedN ?? 100) < 100 ? 1 : 10;
  const value = check.valueN === null ? "no valid force" : force(check.valueN, unit, stepN);
  const u = check.budget === null ? "" : ` ± ${force(check.budget.expandedN, unit, stepN)}`;
  sheet.text("H2", `${verdictWords[check.verdict]}: ${value}${u}`, { size: 16, weight: "bold" });
  if (check.budget !== null) {
    const { coverageFactor, coverage } = check.budget;
    sheet.paragraph(
      `Expanded uncertainty, k = ${coverageFactor.toFixed(2)}, for about ${percent(coverage, 0)} coverage.`,
      { quiet: true, size: 9 },
    );
  }
  for (const reason of check.reasons)
    sheet.paragraph(reasonSentence(reason as Reason, (forceN) => force(forceN, unit))); // a code a newer program wrote is said as it is
  const caution = cautionSentence(check.verdict);
  if (caution !== undefined) sheet.paragraph(caution, { bold: true });
  for (const remark of [...check.weakenedBy, ...check.warnings]) {
    const about = remark.about === undefined ? "" : ` (${remark.about})`;
    const anyway = remark.overriddenWith === undefined ? "" : `; measured all the same: ${remark.overriddenWith}`;
    sheet.paragraph(`To be kept in mind: ${spaced(remark.code)}${about}${anyway}.`);
  }
  if (check.clockDoubtful) sheet.paragraph("The clock stood before that of the last entry when this was filed.");
  sheet.space(4);
}

function factsOf({ db }: About, { check, summary, filedAt }: FiledCheck, unit: ForceUnit): Fact[] {
  const spindle = readSpindle(db, check.spindleId)?.spindle;
  const gauge = gaugeList(db).find((g) => g.gaugeId === check.gaugeId);
  const adapter = adapterList(db).find((a) => a.adapterId === check.adapterId);
  const { corrections, series } = check;
  const curve =
    corrections.curve === null
      ? "none"
      : `no. ${corrections.curve.version}: ${corrections.curve.coefficients.map((c) => Number(c.toPrecision(8))).join(", ")} (constant term first, newtons)`;
  const pairs: (readonly [string, string | undefined])[] = [
    ["taper", spindle?.taper],
    ["unit's serial no.", spindle?.unitSerial],
    ["gauge", named(gauge)],
    ["adapter", named(adapter)],
    ["gauge curve", curve],
    [
      "adapter scale",
      `${corrections.adapterScale}${corrections.adapterVersion === null ? "" : ` (no. ${corrections.adapterVersion})`}`,
    ],
    [
      "series",
      `n = ${series.n}, mean ${force(series.meanN, unit)}, s ${force(series.sN, unit, 1)}, range ${force(series.rangeN, unit, 1)}; ${basisWords[series.basis]}`,
    ],
    ["outliers", series.outliers.length === 0 ? "none" : `cycle ${series.outliers.join(", ")}`],
    ["limits", limitWords(check.limits, unit)],
    ["decision rule", ruleWords(check)],
    ["since the baseline", change(check.dropFromBaseline)],
    ["since the check before", change(check.dropFromPrevious)],
    ["reason", spaced(check.reason)],
    ["how it came", check.source],
    ["spindle was", check.spindleWarm === null ? undefined : check.spindleWarm ? "warm" : "cold"],
    ["temperature", check.temperatureC === null ? undefined : `${check.temperatureC} °C`],
    ["tool changes", check.counter === null ? undefined : String(check.counter)],
    ["work order", check.workOrder ?? undefined],
    ["measured by", initials(db, check.operatorId)],
    ["filed", filedAt],
    ["baseline", summary.isBaseline ? "this check is the spindle's baseline" : undefined],
    ["as it was sent", check.rawLine ?? undefined],
    ["program", `Holdfast ${check.programVersion}`],
    ["note", check.note ?? undefined],
  ];
  return pairs.flatMap(([label, value]) => (value === undefined || value === "" ? [] : [[label, value] as const]));
}

const named = (tool: { name: string; serial?: string | undefined } | undefined) =>
  tool && (tool.serial === undefined ? tool.name : `${tool.name}, no. ${tool.serial}`);
const change = (drop: number | null) =>
  drop === null ? undefined : drop >= 0 ? `fallen by ${percent(drop)}` : `risen by ${percent(-drop)}`;
const basisWords = { settled: "settled forces", peak: "held peaks", typed: "typed in" } as const;

function ruleWords({ rule, conformity, zone, probabilityConforming }: Check): string {
  const more = [
    rule.coverageFactor === undefined ? "" : `k = ${rule.coverageFactor}`,
    rule.guardFactor === undefined ? "" : `guard factor ${rule.guardFactor}`,
    rule.threshold === undefined ? "" : `threshold ${percent(rule.threshold)}`,
    zone === null ? "" : spaced(zone),
    probabilityConforming === null ? "" : `probability of conforming ${percent(probabilityConforming)}`,
  ].filter((part) => part !== "");
  return `${rule.rule}: ${spaced(conformity)}${more.length === 0 ? "" : ` (${more.join(", ")})`}`;
}

function drawReadings(sheet: PdfSheet, { db }: About, { check, summary }: FiledCheck, unit: ForceUnit): void {
  const views = check.cycles.flatMap((cycle) => {
    const row = readWaveform(db, summary.place, cycle.cycleId);
    return row === undefined || row.hash !== cycle.waveformHash
      ? []
      : [waveformView(cycle.cycleId, decodeWaveform(row.bytes), cycle.zeroN)];
  });
  if (views.length === 0) {
    sheet.paragraph("No readings were kept of this check; its figures are all there is.", { quiet: true });
    return;
  }
  const shown = (forceN: number) => Number(figure(forceN, unit, 0.1));
  const timed = views.every((view) => view.timed);
  sheet.heading("Readings", 210);
  drawChart(sheet, {
    lines: views.map((view) => ({ x: view.t, y: view.forceN.map(shown) })),
    levels: limitLevels(check.limits, shown),
    xTitle: timed ? "seconds from each cycle's first reading" : "reading",
    yTitle: `net indication, ${unit}`,
    fromZero: true,
    alt: `Force over time of ${views.length} cycles laid over one another; their figures stand in the table below.`,
  });
}

function drawCycles(sheet: PdfSheet, check: Check, unit: ForceUnit): void {
  if (check.cycles.length === 0) return;
  sheet.heading("Cycles");
  const right = { align: "right" } as const;
  drawTable(
    sheet,
    [
      { title: "no.", share: 0.6, ...right },
      { title: `settled, ${unit}`, share: 1.3, ...right },
      { title: `peak, ${unit}`, share: 1.2, ...right },
      { title: "overshoot", share: 1.2, ...right },
      { title: "rise, ms", share: 1, ...right },
      { title: "noise, N", share: 1, ...right },
      { title: "creep", share: 1, ...right },
      { title: "zero, N", share: 1, ...right },
      { title: "remarks", share: 2.4 },
    ],
    check.cycles.map((cycle, i) => [
      String(i + 1),
      figure(cycle.settledN, unit),
      figure(cycle.peakN, unit),
      percent(cycle.overshoot),
      cycle.riseTimeS === null ? "–" : (1000 * cycle.riseTimeS).toFixed(0),
      figure(cycle.noiseN, "N", 0.1),
      percent(cycle.creep, 2),
      figure(cycle.zeroN, "N", 0.1),
      [...cycle.flags.map(spaced), cycle.dropped === null ? "" : `left out: ${cycle.dropped.reason}`]
        .filter(Boolean)
        .join("; "),
    ]),
  );
}

function drawBudget(sheet: PdfSheet, { budget }: Check, unit: ForceUnit): void {
  if (budget === null) return;
  sheet.heading("Where the uncertainty comes from");
  const right = { align: "right" } as const;
  drawTable(
    sheet,
    [
      { title: "source", share: 2.4 },
      { title: "type", share: 0.7 },
      { title: "distribution", share: 1.5 },
      { title: "u, N", share: 1, ...right },
      { title: "degrees of freedom", share: 1.6, ...right },
      { title: "share of u²", share: 1.1, ...right },
      { title: "", share: 1 },
    ],
    budget.contributions.map((c) => [
      spaced(c.source),
      c.type,
      c.distribution,
      figure(c.standardN, "N", 0.1),
      c.degreesOfFreedom === null ? "very many" : c.degreesOfFreedom.toFixed(1),
      percent(budget.standardN > 0 ? (c.standardN / budget.standardN) ** 2 : 0, 0),
      c.assumed ? "assumed" : "",
    ]),
  );
  const freedom = budget.degreesOfFreedom === null ? "very many" : budget.degreesOfFreedom.toFixed(1);
  sheet.paragraph(
    `Standard uncertainty ${force(budget.standardN, unit, 1)}, effective degrees of freedom ${freedom}; times k = ${budget.coverageFactor.toFixed(2)}: ${force(budget.expandedN, unit, 1)}.`,
  );
}
