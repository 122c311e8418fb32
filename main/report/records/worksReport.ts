import type { FleetPlace } from "../../../app/trend/rankFleet.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";
import { fleetOf } from "../../fleet/fleetOf.ts";
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
import { day, forecastWords } from "./forecastWords.ts";
import { sinceThen } from "./sinceThen.ts";
import { force, percent, spaced, unitOf, verdictWords } from "./words.ts";

/** The works on a few pages: what to do first, what is due, what has changed since a day. @param sinceMs  the summary before, say */
export async function worksReport(about: About, sinceMs: number): Promise<Buffer> {
  const { db, nowMs, goOn } = about;
  const works = readWorks(db);
  const name = works?.name ?? "the works";
  const standings = spindleList(db).filter((s) => s.spindle.state === "inUse");
  const { rows, commonMode } = fleetOf(db, goOn);
  const sheet = new PdfSheet(
    sheetOptions(about, `Summary of ${name}, ${day(nowMs)}`, "Clamping forces of all spindles"),
  );
  sheet.title(`Summary of ${name}`, day(nowMs));
  drawCounts(sheet, standings);
  for (const move of commonMode) sheet.paragraph(moveSentence(about, move), { bold: true });
  drawRanking(sheet, about, standings, rows);
  drawChanges(sheet, about, standings, sinceMs);
  drawProof(sheet, about, `summary ${day(nowMs)}`);
  return sheet.finish();
}

const verdictOf = (s: SpindleStanding): Verdict | undefined => (s.stop === undefined ? s.last?.verdict : "stop");

function drawCounts(sheet: PdfSheet, standings: readonly SpindleStanding[]): void {
  const count = (verdict: Verdict | undefined) => String(standings.filter((s) => verdictOf(s) === verdict).length);
  drawFacts(sheet, [
    ["spindles in use", String(standings.length)],
    ["STOP", count("stop")],
    ["ACT", count("act")],
    ["WATCH", count("watch")],
    ["GOOD", count("good")],
    ["CANNOT TELL", count("cannotTell")],
    ["never measured", count(undefined)],
  ]);
}

function moveSentence({ db }: About, move: ReturnType<typeof fleetOf>["commonMode"][number]): string {
  const names = new Map([
    ...gaugeList(db).map((g) => [g.gaugeId, g.name] as const),
    ...adapterList(db).map((a) => [a.adapterId, a.name] as const),
  ]);
  const which = `${move.by} ${names.get(move.id) ?? move.id}`;
  const other =
    move.or.length === 0 ? "" : `, or ${move.or.map((o) => `${o.by} ${names.get(o.id) ?? o.id}`).join(" or ")},`;
  return `The ${which}${other} may be off: ${move.spindleIds.length} of ${move.spindles} spindles measured with it moved together by about ${percent(move.shift)} since ${day(move.sinceMs)}. Prove it before the spindles are blamed.`;
}

function drawRanking(
  sheet: PdfSheet,
  about: About,
  standings: readonly SpindleStanding[],
  rows: readonly FleetPlace[],
): void {
  const known = new Map(standings.map((s) => [s.spindle.spindleId, s]));
  const shown = readWorks(about.db)?.unitShown;
  sheet.heading("What to look after first");
  drawTable(
    sheet,
    [
      { title: "", share: 0.5, align: "right" },
      { title: "spindle", share: 1.8 },
      { title: "verdict", share: 1.2 },
      { title: "last force", share: 1.2, align: "right" },
      { title: "from baseline", share: 1, align: "right" },
      { title: "why it stands here", share: 1.6 },
      { title: "limit reached", share: 2.8 },
      { title: "due", share: 1.45 },
    ],
    rows.map((row) => {
      const standing = known.get(row.spindleId);
      const verdict = standing && verdictOf(standing);
      const { forecast } = row;
      return [
        String(row.rank),
        standing?.spindle.name ?? row.spindleId,
        verdict === undefined ? "never measured" : verdictWords[verdict],
        force(standing?.last?.valueN, unitOf(standing?.spindle.unitShown, shown)),
        percent(standing?.dropFromBaseline === undefined ? undefined : -standing.dropFromBaseline),
        whyWords[row.why.code] ?? spaced(row.why.code),
        `${forecast.limit}: ${forecastWords(forecast)}`,
        dueWords(standing?.dueOn, about.nowMs),
      ];
    }),
  );
}

const whyWords: Readonly<Record<string, string>> = {
  stopped: "a stop stands",
  belowMinimum: "below the builder's minimum",
  verdictAct: "last verdict: act",
  riskAtRound: "may be below minimum at the next check",
  belowWarning: "below the warning",
  reachesMinimum: "on the way to the minimum",
  reachesWarning: "on the way to the warning",
  verdictWatch: "last verdict: watch",
};

const dueWords = (dueOn: string | undefined, nowMs: number) =>
  dueOn === undefined ? "–" : dueOn < day(nowMs) ? `${dueOn}, past` : dueOn;

function drawChanges(sheet: PdfSheet, { db }: About, standings: readonly SpindleStanding[], sinceMs: number): void {
  const since = day(sinceMs);
  const moved = sinceThen(db, sinceMs);
  const total = [...moved.values()].reduce((sum, one) => sum + one.checks, 0);
  const ended = [...entriesOfKind(db, "void"), ...entriesOfKind(db, "replacement")].filter(
    (e) => Date.parse(e.at) >= sinceMs,
  );
  const events = allServiceEvents(db).filter((event) => event.at >= since);
  const names = new Map(standings.map((s) => [s.spindle.spindleId, s.spindle.name]));
  sheet.heading(`What changed since ${since}`);
  sheet.paragraph(
    `${total} checks measured, ${ended.length} made void or replaced, ${events.length} services and events.`,
  );
  const changes = [...moved].filter(([id, one]) => names.has(id) && one.before !== one.now);
  const word = (verdict: Verdict | undefined) => (verdict === undefined ? "never measured" : verdictWords[verdict]);
  if (changes.length > 0) {
    drawTable(
      sheet,
      [
        { title: "spindle", share: 2 },
        { title: "verdict before", share: 1.5 },
        { title: "verdict now", share: 1.5 },
        { title: "checks since", share: 1, align: "right" },
      ],
      changes.map(([id, one]) => [names.get(id)!, word(one.before), word(one.now), String(one.checks)]),
    );
  } else sheet.paragraph("No spindle has another verdict than then.", { quiet: true });
  if (events.length === 0) return;
  drawTable(
    sheet,
    [
      { title: "date", share: 1 },
      { title: "spindle", share: 2 },
      { title: "what", share: 1.5 },
      { title: "parts and note", share: 4 },
    ],
    events.map((e) => [
      e.at,
      names.get(e.spindleId) ?? e.spindleId,
      spaced(e.kind),
      [e.parts, e.note].filter((t) => t !== undefined).join("; "),
    ]),
  );
}
