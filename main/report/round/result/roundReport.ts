import { reasonsText } from "../../../../app/words/reasonSentence.ts";
import { adapterList } from "../../../store/records/adapters.ts";
import { readGauge } from "../../../store/records/gauges.ts";
import { readWorks } from "../../../store/records/works.ts";
import { StoreError } from "../../../store/StoreError.ts";
import { drawFacts, type Fact } from "../../pdf/drawFacts.ts";
import { drawTable } from "../../pdf/drawTable.ts";
import { PdfSheet } from "../../pdf/PdfSheet.ts";
import { type About, sheetOptions } from "../../records/About.ts";
import { initials } from "../../records/correctionsOf.ts";
import { drawProof } from "../../records/drawProof.ts";
import { reportTexts } from "../../records/reportTexts.ts";
import { unitOf } from "../../records/Writing.ts";
import { sheetTexts } from "../sheetTexts.ts";
import { drawLeftOut } from "./drawLeftOut.ts";
import { roundReportTexts } from "./roundReportTexts.ts";
import { type RoundResult, roundResult, type StopResult } from "./roundResult.ts";
import { roundTodo } from "./roundTodo.ts";

/**
 * What came of a round: planned, measured, judged, left out, by whom, and what needs doing now.
 * @throws StoreError  `notFound`
 */
export async function roundReport(about: About, roundId: string): Promise<Buffer> {
  const { db, write, nowMs } = about;
  const result = roundResult(db, roundId, nowMs);
  if (result === undefined) throw new StoreError("notFound", "There is no such round in this data file.");
  const words = roundReportTexts[write.language];
  const { round, entry, stops } = result;
  const title = words.title(round.name);
  const sheet = new PdfSheet(sheetOptions(about, `${title}, ${write.plainDay(round.on)}`, words.subject));
  const measured = stops.filter(({ filed }) => filed !== undefined).length;
  sheet.title(title, write.plainDay(round.on));
  sheet.text("H2", words.progress(measured, stops.length), { size: 16, weight: "bold" });
  drawFacts(sheet, factsOf(about, result));
  sheet.heading(words.todo);
  for (const { text, grave } of roundTodo(stops, write)) sheet.paragraph(text, { bold: grave });
  drawStops(sheet, about, stops);
  drawReasons(sheet, about, stops);
  drawLeftOut(sheet, result, write);
  sheet.heading(words.before);
  for (const line of sheetTexts[write.language].care) sheet.paragraph(line, { size: 9 });
  drawProof(sheet, about, `round ${roundId} entry ${entry.origin}/${entry.seq} ${entry.hash}`, [
    [words.itsEntry, reportTexts[write.language].entryOf(entry.seq, entry.origin)],
    [words.itsHash, entry.hash],
  ]);
  return sheet.finish();
}

function factsOf({ db, write }: About, { round, stops }: RoundResult): Fact[] {
  const words = roundReportTexts[write.language];
  const filed = stops.flatMap((stop) => stop.filed ?? []);
  const times = filed.map(({ summary }) => summary).sort((a, b) => a.measuredAtMs - b.measuredAtMs);
  const at = ({ measuredAtMs, offsetMinutes }: (typeof times)[number]) => write.wallTime(measuredAtMs, offsetMinutes);
  const people = [...new Set(filed.map(({ check }) => initials(db, check.operatorId, write)))];
  const gauges = new Set(filed.flatMap(({ check }) => check.gaugeId ?? []));
  const gaugeIds = gauges.size === 0 && round.gaugeId !== undefined ? [round.gaugeId] : [...gauges];
  const gaugeNames = gaugeIds.map((id) => {
    const gauge = readGauge(db, id);
    return gauge?.serial === undefined ? (gauge?.name ?? id) : `${gauge.name} (${gauge.serial})`;
  });
  return [
    [words.works, readWorks(db)?.name ?? ""],
    [words.state, words[`state.${round.state}`]],
    [words.day, write.plainDay(round.on)],
    [words.plannedBy, initials(db, round.operatorId, write) ?? words.notNamed],
    [words.measuredBy, people.map((who) => who ?? words.notNamed).join(", ")],
    [words.from, times.length === 0 ? "" : words.between(at(times[0]!), at(times.at(-1)!))],
    [words.gauge, gaugeNames.join(", ")],
    [words.changes, String(round.adapterChanges)],
    [words.note, round.note],
  ].filter((fact): fact is [string, string] => fact[1] !== "");
}

function drawStops(sheet: PdfSheet, { db, write }: About, stops: readonly StopResult[]): void {
  const words = roundReportTexts[write.language];
  const unit = unitOf(readWorks(db)?.unitShown, "kN");
  const adapters = new Map(adapterList(db).map((a) => [a.adapterId, a.name]));
  const right = { align: "right" } as const;
  sheet.heading(words.results);
  sheet.paragraph(words.limitsNote, { quiet: true, size: 9 });
  drawTable(
    sheet,
    [
      { title: words.no, share: 0.6 },
      { title: words.spindle, share: 1.7 },
      { title: words.adapter, share: 1.6 },
      { title: words.expected(unit), share: 1.3, ...right },
      { title: words.force(unit), share: 1.8, ...right },
      { title: words.verdict, share: 1.75 },
      { title: words.fromBaseline, share: 1.2, ...right },
      { title: words.when, share: 1.8 },
    ],
    stops.map(({ stop, filed, onRound }) => {
      const adapterId = filed === undefined ? stop.adapterId : (filed.check.adapterId ?? undefined);
      const adapter = adapterId === undefined ? "" : (adapters.get(adapterId) ?? "");
      const remark = stop.retired ? words.retired : filed !== undefined && !onRound ? words.otherwise : "";
      return [
        stop.location ?? "",
        [stop.name, remark].filter((part) => part !== "").join("\n"),
        [stop.taper, adapter].filter((part) => part !== "").join("\n"),
        write.figure(stop.expectedN, unit),
        ...(filed === undefined
          ? [words.notMeasured, "", "", ""]
          : [
              filed.check.valueN === null
                ? "–"
                : write.speech
                    .forceWithin(filed.check.valueN, filed.check.budget?.expandedN, unit)
                    .replace(new RegExp(`\\s${unit}$`), ""),
              write.verdict(filed.check.verdict),
              write.percent(filed.check.dropFromBaseline === null ? null : -filed.check.dropFromBaseline),
              [
                write.wallTime(filed.summary.measuredAtMs, filed.summary.offsetMinutes).replace(/ \(UTC.*$/, ""),
                initials(db, filed.check.operatorId, write) ?? "",
              ]
                .filter((part) => part !== "")
                .join("; "),
            ]),
      ];
    }),
  );
}

/** Why each value that is not good was judged so. */
function drawReasons(sheet: PdfSheet, { db, write }: About, stops: readonly StopResult[]): void {
  const unit = unitOf(readWorks(db)?.unitShown, "kN");
  const told = stops.flatMap(({ stop, filed }) =>
    filed === undefined || filed.check.verdict === "good" ? [] : [{ stop, check: filed.check }],
  );
  if (told.length === 0) return;
  sheet.heading(roundReportTexts[write.language].reasons);
  for (const { stop, check } of told)
    sheet.paragraph(`${stop.name}: ${reasonsText(check.reasons, write.speech, unit)}`, { size: 9.5 });
}
