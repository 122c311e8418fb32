import { beforeAll, describe, expect, it, onTestFinished } from "vitest";
import type { DockingView, RoundView } from "../../../../app/contract/roundViews.ts";
import type { About } from "../../../../main/report/records/About.ts";
import { writingOf } from "../../../../main/report/records/Writing.ts";
import { roundReport } from "../../../../main/report/round/result/roundReport.ts";
import { roundResult } from "../../../../main/report/round/result/roundResult.ts";
import { chainReports } from "../../../../main/store/ledger/LedgerReport.ts";
import { openReader } from "../../../../main/store/open.ts";
import { type CoreInTemp, coreInTemp, fileTyped } from "../../../support/coreInTemp.ts";
import { acceptedAsShown } from "../../../support/fullMemory.ts";
import { pdfText } from "../../../support/pdfText.ts";
import { roundWorks } from "../../../support/roundWorks.ts";

const clock = { ms: Date.parse("2026-03-01T15:00:00Z") };
let core: CoreInTemp;
let works: Awaited<ReturnType<typeof roundWorks>>;
let round: RoundView;
const flat = (text: string) => text.replace(/\s+/g, " ");

function about(over: Partial<About> = {}): About {
  const db = openReader(core.dataFile);
  onTestFinished(() => {
    db.close();
  });
  const hash = "ab".repeat(32);
  return {
    db,
    nowMs: clock.ms,
    paper: "A4",
    write: writingOf("en"),
    version: "0.1.0",
    programHash: hash,
    demo: false,
    goOn: () => {},
    ...over,
  };
}

const values = ["10.02 kN", "13.9 kN", "15.3 kN", "18.1 kN"];

beforeAll(async () => {
  core = await coreInTemp({ now: () => clock.ms });
  works = await roundWorks(core, [10, 14, 19, 25, 33]);
  clock.ms = Date.parse("2026-03-02T15:00:00Z");
  round = await core.call("rounds.save", {
    name: "Hall A, spring",
    on: "2026-03-02",
    gaugeId: works.gaugeId,
    made: "byHand",
    note: "Key at the gate",
    stops: works.spindleIds.map((spindleId) => ({ spindleId })),
    asSet: true,
  });
  const view: DockingView = await core.call("docking.type", {
    roundId: round.roundId,
    gaugeId: works.gaugeId,
    values: values.map((text, i) => ({ spindleId: works.spindleIds[i]!, texts: i === 1 ? [text, "0.02 kN"] : [text] })),
  });
  const stray = view.takes.findIndex((take) => take.figure.startsWith("0.02"));
  await core.call("docking.accept", {
    dockingId: view.dockingId,
    filings: view.visits.flatMap(({ takes, stop }) => {
      const kept = takes.filter((take) => take !== stray);
      return stop === undefined || kept.length === 0
        ? []
        : [
            {
              spindleId: view.stops[stop]!.spindleId,
              adapterId: view.stops[stop]!.adapterId ?? null,
              takes: kept,
              factor: 1,
            },
          ];
    }),
    leftOut: [{ take: stray, why: "noClamping" }],
    answers: view.questions.map(({ code, proposal }) => ({ code, answer: proposal })),
    reasons: Object.fromEntries(view.warnings.map(({ code }) => [code, "as agreed"])),
  });
  return () => core.close();
});

describe("the report of a round's result", () => {
  it("says what was planned, what was measured with its verdict, and what needs doing, the gravest first", async (context) => {
    const text = flat(pdfText(context, await roundReport(about(), round.roundId)));
    expect(text).toContain("Result of the round: Hall A, spring");
    expect(text).toContain("4 of 5 spindles measured");
    expect(text).toContain("planned for 2 Mar 2026");
    expect(text).toContain("Key at the gate");
    for (const i of [1, 2, 3, 4, 5]) expect(text).toContain(`Mill ${i}`);
    expect(text).toMatch(/Mill 1 .*10\.0\d* ± 0\.\d+ GOOD/);
    const order = ["STOP: Mill 4. Do not use", "it cannot be told: Mill 3", "Not measured yet: Mill 5"].map((words) =>
      text.indexOf(words),
    );
    expect(order.every((at) => at > 0)).toBe(true);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(text).toContain("not measured");
  });

  it("names each reading left out with its reason, and what proves it all", async (context) => {
    const text = pdfText(context, await roundReport(about({ paper: "Letter" }), round.roundId));
    expect(flat(text)).toMatch(/0\.02.* nothing seemed clamped/);
    for (const { head } of chainReports(about().db, []).filter(({ entries }) => entries > 0))
      expect(text.replace(/\s+/g, "")).toContain(head);
    expect(flat(text)).toMatch(/this round's entry entry \d+ of chain/);
    expect(flat(text)).toContain("Lock the machine out");
    expect(flat(text)).toContain("not an accredited certificate");
  });

  it("is written in German", async (context) => {
    const text = flat(pdfText(context, await roundReport(about({ write: writingOf("de") }), round.roundId), "de"));
    expect(text).toContain("4 von 5 Spindeln gemessen");
    expect(text).toContain("STOPP: Mill 4. Nicht benutzen");
    expect(text).toContain("wohl nichts gespannt");
    expect(text).toMatch(/10,0\d* ± 0,\d+/);
  });

  it("is of a round that is there", async () => {
    await expect(roundReport(about(), works.gaugeId)).rejects.toMatchObject({ code: "notFound" });
  });

  it("gives each spindle the next due date of the due list, a stopped one at once", async () => {
    const { rows } = await core.call("rounds.due");
    const listed = new Map(rows.map(({ spindleId, dueOn }) => [spindleId, dueOn]));
    const stops = roundResult(about().db, round.roundId, clock.ms)!.stops;
    expect(stops.map(({ dueOn }) => dueOn)).toEqual(works.spindleIds.map((spindleId) => listed.get(spindleId)));
    const [good, , , stopped] = stops;
    expect(stopped!.dueOn! < good!.dueOn!).toBe(true);
  });

  it("takes for a spindle its own check, then one of no round, and one of another round last", async () => {
    const last = works.spindleIds[4]!;
    const of = () => roundResult(about().db, round.roundId, clock.ms)!.stops.at(-1)!;
    expect(of().filed).toBeUndefined();
    const other = await core.call("rounds.save", {
      name: "Another",
      on: "2026-03-02",
      gaugeId: works.gaugeId,
      made: "byHand",
      note: "",
      stops: [{ spindleId: last }],
      asSet: true,
    });
    const view = await core.call("docking.type", {
      roundId: other.roundId,
      gaugeId: works.gaugeId,
      values: [{ spindleId: last, texts: ["33.3 kN"] }],
    });
    const reasons = Object.fromEntries(view.warnings.map(({ code }) => [code, "as agreed"]));
    await core.call("docking.accept", { ...acceptedAsShown(view), answers: [], reasons });
    expect(of()).toMatchObject({ onRound: false, filed: { check: { roundId: other.roundId } } });
    await fileTyped(core, last, "33.1 kN");
    expect(of().filed!.check).toMatchObject({ valueN: 33_100 });
    expect(of().filed!.check.roundId).toBeNull();
  });
});
