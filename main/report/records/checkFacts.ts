import type { Check } from "../../../app/ledger/check.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { checkReasonTexts, ruleTexts } from "../../../app/words/recordTexts.ts";
import { adapterList } from "../../store/records/adapters.ts";
import type { FiledCheck } from "../../store/records/checks.ts";
import { gaugeList } from "../../store/records/gauges.ts";
import { readSpindle } from "../../store/records/spindles.ts";
import type { Fact } from "../pdf/drawFacts.ts";
import type { About } from "./About.ts";
import { changeWords } from "./changeWords.ts";
import { checkReportTexts } from "./checkReportTexts.ts";
import { initials } from "./correctionsOf.ts";
import { limitWords } from "./limitWords.ts";
import type { Writing } from "./Writing.ts";

/** What a check's report says in names and values: with what, by which rule, how it was. */
export function checkFacts(about: About, { check, summary, filedAt }: FiledCheck, unit: ForceUnit): Fact[] {
  const { db, write } = about;
  const words = checkReportTexts[write.language];
  const spindle = readSpindle(db, check.spindleId)?.spindle;
  const gauge = gaugeList(db).find((g) => g.gaugeId === check.gaugeId);
  const adapter = adapterList(db).find((a) => a.adapterId === check.adapterId);
  const { corrections, series } = check;
  const named = (tool: { name: string; serial?: string | undefined } | undefined) =>
    tool && (tool.serial === undefined ? tool.name : words.numbered(tool.name, tool.serial));
  const curve =
    corrections.curve === null
      ? words.noCurve
      : words.curveIs(
          corrections.curve.version,
          corrections.curve.coefficients.map((c) => write.digits(c, 8)).join("; "),
        );
  const version = corrections.adapterVersion === null ? "" : words.version(corrections.adapterVersion);
  const scatter = [series.sN, series.rangeN].map((valueN) => write.force(valueN, unit, 1));
  const pairs: (readonly [string, string | undefined])[] = [
    [words.taper, spindle?.taper],
    [words.unitSerial, spindle?.unitSerial],
    [words.gauge, named(gauge)],
    [words.adapter, named(adapter)],
    [words.curve, curve],
    [words.scale, `${write.digits(corrections.adapterScale, 8)}${version}`],
    [
      words.series,
      words.seriesIs(
        series.n,
        write.force(series.meanN, unit),
        scatter[0]!,
        scatter[1]!,
        words[`basis.${check.source === "docked" ? "docked" : series.basis}`],
      ),
    ],
    [words.outliers, series.outliers.length === 0 ? words.noOutliers : words.cycleNo(series.outliers.join(", "))],
    [words.limits, limitWords(check.limits, unit, write)],
    [words.rule, ruleWords(check, write)],
    [words.sinceBaseline, changeWords(check.dropFromBaseline, write)],
    [words.sincePrevious, changeWords(check.dropFromPrevious, write)],
    [words.reason, checkReasonTexts[write.language][check.reason]],
    [words.source, words[`source.${check.source}`]],
    [words.importedFrom, check.imported && words.importedRow(check.imported.row, check.imported.fileHash.slice(0, 16))],
    [words.spindleWas, check.spindleWarm === null ? undefined : check.spindleWarm ? words.warm : words.cold],
    [words.temperature, check.temperatureC === null ? undefined : `${write.digits(check.temperatureC, 4)} °C`],
    [words.counter, check.counter === null ? undefined : String(check.counter)],
    [words.workOrder, check.workOrder ?? undefined],
    [words.by, initials(db, check.operatorId, write)],
    [words.filed, `${write.speech.dateTime(Date.parse(filedAt))} UTC`],
    [words.baseline, summary.isBaseline ? words.isBaseline : undefined],
    [words.raw, check.rawLine ?? undefined],
    [words.program, `Holdfast ${check.programVersion}`],
    [words.note, check.note ?? undefined],
  ];
  return pairs.flatMap(([label, value]) => (value === undefined || value === "" ? [] : [[label, value] as const]));
}

function ruleWords({ rule, conformity, zone, probabilityConforming }: Check, write: Writing): string {
  const words = checkReportTexts[write.language];
  const more = [
    rule.coverageFactor === undefined ? "" : `k = ${write.digits(rule.coverageFactor)}`,
    rule.guardFactor === undefined ? "" : words.guardFactor(write.digits(rule.guardFactor)),
    rule.threshold === undefined ? "" : words.threshold(write.percent(rule.threshold)),
    zone === null ? "" : words[`zone.${zone}`],
    probabilityConforming === null ? "" : words.probability(write.odds(probabilityConforming)),
  ].filter((part) => part !== "");
  const how = more.length === 0 ? "" : ` (${more.join(", ")})`;
  return `${ruleTexts[write.language][rule.rule]}; ${words[`conformity.${conformity}`]}${how}`;
}
