import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Parsed } from "../../../app/contract/methods.ts";
import type { DockingView, RoundView } from "../../../app/contract/roundViews.ts";
import type { StoredReading } from "../../../simulator/memory/GaugeMemory.ts";
import { type CoreInTemp, coreInTemp } from "../../support/coreInTemp.ts";
import { memoryDumps } from "../../support/memoryDumps.ts";
import { roundWorks } from "../../support/roundWorks.ts";

const DAY = 86_400_000;
const clock = { ms: 0 };
let core: CoreInTemp;
let works: Awaited<ReturnType<typeof roundWorks>>;
let round: RoundView;

beforeEach(async () => {
  clock.ms = Date.parse("2026-03-02T15:00:00Z");
  core = await coreInTemp({ now: () => clock.ms });
  works = await roundWorks(core);
  clock.ms += 100 * DAY; // every spindle is due
  const due = await core.call("rounds.due");
  round = await core.call("rounds.save", {
    name: "Hall A and B",
    on: due.today,
    gaugeId: works.gaugeId,
    made: "dueList",
    stops: due.rows.map(({ spindleId }) => ({ spindleId })),
  });
});
afterEach(() => core.close());

/** Three takes of each stop in walking order, the gauge's clock an hour fast. */
const memoryOf = (stops: RoundView["stops"], share: (i: number) => number = () => 1): StoredReading[] =>
  stops.flatMap((stop, i) =>
    [0, 1, 2].map((k) => ({
      number: 3 * i + k + 1,
      forceN: Math.round((stop.expectedN! * share(i) * (1 + 0.002 * (k - 1))) / 10) * 10,
      unit: "kN" as const,
      clockMs: clock.ms + 3_600_000 - 2 * 3_600_000 + i * 300_000 + k * 25_000,
      location: Number(stop.location),
      held: true,
    })),
  );
const dump = (readings: readonly StoredReading[]) => memoryDumps.list(readings, clock.ms + 3_600_000).join("");
const read = (text: string, over: Partial<Parsed<"docking.read">> = {}) =>
  core.call("docking.read", { roundId: round.roundId, gaugeId: works.gaugeId, text, ...over });
const asShown = (view: DockingView): Parsed<"docking.accept"> => ({
  dockingId: view.dockingId,
  filings: view.visits
    .filter((v) => v.stop !== undefined && !v.leftOut)
    .map((v) => ({
      spindleId: view.stops[v.stop!]!.spindleId,
      adapterId: view.stops[v.stop!]!.adapterId ?? null,
      takes: [...v.takes],
      factor: v.factor,
    })),
  leftOut: view.visits
    .filter((v) => v.stop === undefined || v.leftOut)
    .flatMap((v) => v.takes.map((take) => ({ take, why: "asked" }))),
  answers: view.questions.map((q) => ({ code: q.code, answer: q.proposal })),
});
const checksOf = async (i: number) =>
  (await core.call("checks.list", { spindleId: works.spindleIds[i]!, limit: 50 })).rows;
const refusal = (promise: Promise<unknown>) =>
  promise.then(
    () => undefined,
    (cause: { failure?: unknown }) => cause.failure,
  );

describe("a round", () => {
  it("is ordered by adapters and way, each stop with what is expected, and one change for two adapters", () => {
    expect(round).toMatchObject({ found: "exact", adapterChanges: 1, state: "open" });
    expect(round.stops.map((s) => s.location)).toEqual(["1", "2", "3", "4", "5", "6"]);
    expect(new Set(round.stops.slice(0, 3).map((s) => s.taper)).size).toBe(1);
    expect(round.stops.every((s) => s.adapterId !== undefined && s.done === undefined)).toBe(true);
  });

  it("refuses a spindle twice, and one that is retired", async () => {
    const stop = { spindleId: works.spindleIds[0]! };
    const save = (stops: { spindleId: string }[]) =>
      core.call("rounds.save", { name: "x", on: round.on, made: "byHand", stops });
    expect(await refusal(save([stop, stop]))).toMatchObject({ code: "invalid", key: "stopTwice" });
    const { spindle } = (await core.call("spindles.list")).find((r) => r.spindle.spindleId === stop.spindleId)!;
    await core.call("spindles.save", { ...spindle, state: "retired" });
    expect(await refusal(save([stop]))).toMatchObject({ code: "invalid", key: "stopRetired" });
  });

  it("keeps the works' calendar and moves due dates by it", async () => {
    await core.call("rounds.saveCalendar", {
      weekdays: [1, 2, 3, 4, 5, 6, 7],
      closed: [{ from: "2026-07-01", to: "2026-07-10" }],
    });
    expect((await core.call("rounds.due")).calendar.closed).toHaveLength(1);
    const wrong = core.call("rounds.saveCalendar", {
      weekdays: [1],
      closed: [{ from: "2026-07-10", to: "2026-07-01" }],
    });
    expect(await refusal(wrong)).toMatchObject({ code: "invalid", field: "closed" });
  });
});

describe("two people with one round", () => {
  const changed = { code: "conflict", key: "roundChanged" };
  const saved = (over: Partial<Parsed<"rounds.save">> = {}) => {
    const { roundId, version, name, on } = round;
    const stops = round.stops.map(({ spindleId }) => ({ spindleId }));
    return core.call("rounds.save", { roundId, version, name, on, made: "byHand", stops, ...over });
  };

  it("the second who changes it is told, and what the first did stands", async () => {
    const first = await saved({ name: "Hall A" });
    expect(first.version).not.toBe(round.version);
    expect(await refusal(saved({ name: "Hall B" }))).toMatchObject(changed);
    const ended = { roundId: round.roundId, version: round.version, state: "cancelled" as const };
    expect(await refusal(core.call("rounds.end", ended))).toMatchObject(changed);
    expect(await core.call("rounds.get", { roundId: round.roundId })).toEqual(first);
    expect((await saved({ name: "Hall B", version: first.version })).name).toBe("Hall B");
  });

  it("both who cancel it have it cancelled, and a change that changes nothing is in nobody's way", async () => {
    const { roundId, version } = round;
    await core.call("rounds.end", { roundId, version, state: "cancelled" });
    expect(await core.call("rounds.end", { roundId, version, state: "cancelled" })).toMatchObject({
      state: "cancelled",
    });
  });

  it("a docking matched with the round as it was is looked at again before anything is filed", async () => {
    const text = dump(memoryOf(round.stops));
    const view = await read(text);
    await saved({ stops: round.stops.slice(1).map(({ spindleId }) => ({ spindleId })) });
    expect(await refusal(core.call("docking.accept", asShown(view)))).toMatchObject(changed);
    expect(await checksOf(0)).toHaveLength(3);
    const again = await core.call("docking.read", { dockingId: view.dockingId });
    expect(again.stops).toHaveLength(round.stops.length - 1);
    expect((await core.call("docking.accept", asShown(again))).again).toBe(false);
  });
});

describe("docking a memory", () => {
  it("proposes every reading for its spindle, with the clock's offset, without a question", async () => {
    const view = await read(dump(memoryOf(round.stops)));
    expect(view).toMatchObject({
      undecided: [],
      questions: [],
      missing: [],
      known: 0,
      clock: { offsetMs: 3_600_000, assumed: false },
    });
    expect(view.visits.map((v) => v.stop)).toEqual([0, 1, 2, 3, 4, 5]);
    expect(view.takes[0]!.atMs).toBe(clock.ms - 2 * 3_600_000);
  });

  it("files checks, docking and the round's end at once, judged as measured ones are", async () => {
    const view = await read(dump(memoryOf(round.stops, (i) => (i === 2 ? 0.7 : 1))));
    const { rows, again } = await core.call("docking.accept", asShown(view));
    expect(again).toBe(false);
    expect(rows).toHaveLength(6);
    const fallen = rows.find((row) => row.spindleId === round.stops[2]!.spindleId)!;
    expect(fallen.verdict).toBe("stop");
    expect(fallen.n).toBe(3);
    const { check } = await core.call("checks.get", { checkId: fallen.checkId });
    expect(check).toMatchObject({ source: "docked", roundId: round.roundId, gaugeId: works.gaugeId, cycles: [] });
    expect(check.rawLine).toContain(";kN;");
    expect(check.budget!.contributions.find((c) => c.source === "repeatability")!.degreesOfFreedom).toBe(2);
    expect(check.measuredAt).toBe(new Date(clock.ms - 2 * 3_600_000 + 2 * 300_000).toISOString());
    expect(await core.call("rounds.get", { roundId: round.roundId })).toMatchObject({ state: "done" });
  });

  it("says of a docked check that it came out of a memory and was not typed, and of one from the sheet that it was", async () => {
    const view = await read(dump(memoryOf(round.stops)));
    const { rows } = await core.call("docking.accept", asShown(view));
    const { check } = await core.call("checks.get", { checkId: rows[0]!.checkId });
    expect(rows[0]!.source).toBe("docked");
    expect(check.source).toBe("docked");
    const codes = check.weakenedBy.map((remark) => remark.code);
    expect(codes).toContain("dockedValue");
    expect(codes).toContain("peakOnly"); // each reading is a held maximum
    expect(codes).not.toContain("typedValue");
    const other = await core.call("rounds.save", {
      name: "By hand",
      on: round.on,
      gaugeId: works.gaugeId,
      made: "byHand",
      stops: [{ spindleId: works.spindleIds[1]! }],
    });
    const values = [{ spindleId: works.spindleIds[1]!, texts: ["14.02", "14.05"] }];
    clock.ms += 60_000;
    const sheet = await core.call("docking.type", { roundId: other.roundId, values });
    const typed = await core.call("docking.accept", asShown(sheet));
    const page = await core.call("checks.get", { checkId: typed.rows[0]!.checkId });
    expect(page.check.source).toBe("typed");
    expect(page.check.weakenedBy.map((remark) => remark.code)).toContain("typedValue");
  });

  it("accepted twice answers what was filed and adds nothing", async () => {
    const body = asShown(await read(dump(memoryOf(round.stops))));
    const first = await core.call("docking.accept", body);
    const second = await core.call("docking.accept", body);
    expect(second.again).toBe(true);
    expect(second.rows.map((r) => r.checkId).sort()).toEqual(first.rows.map((r) => r.checkId).sort());
    expect(await checksOf(0)).toHaveLength(4);
  });

  it("docked again adds nothing; grown and renumbered it adds what is new", async () => {
    const memory = memoryOf(round.stops);
    await core.call("docking.accept", asShown(await read(dump(memory))));
    expect(await read(dump(memory))).toMatchObject({ known: 18, takes: [], visits: [] });
    const later = memoryOf(round.stops.slice(0, 1)).map((r) => ({ ...r, clockMs: r.clockMs + 3_600_000 }));
    const grown = [...memory.slice(3), ...later].map((r, i) => ({ ...r, number: i + 1 }));
    const view = await read(dump(grown));
    expect(view.known).toBe(15);
    expect(view.takes).toHaveLength(3);
  });

  it("without dates, one reading that equals the last one docked is in doubt, and is filed when somebody says that it is new", async () => {
    const [first] = round.stops;
    const text = `loc;force;unit\n${first!.location};${(first!.expectedN! / 1000).toFixed(2)};kN\n`;
    const view = await read(text, { hints: { columns: { 0: "location" } } });
    await core.call("docking.accept", asShown(view));
    clock.ms += DAY;
    const again = await read(text, { hints: { columns: { 0: "location" } } });
    expect(again).toMatchObject({ takes: [], known: 1, doubtful: true });
    const { dockingId } = again;
    const asNew = await core.call("docking.read", { dockingId, allNew: true });
    expect(asNew).toMatchObject({ known: 0, doubtful: false, takes: [{ figure: view.takes[0]!.figure }] });
    const { rows } = await core.call("docking.accept", asShown(asNew));
    expect(rows).toHaveLength(1);
    expect((await checksOf(works.spindleIds.indexOf(first!.spindleId))).length).toBe(5);
  });

  it("refuses the second of two people who accept the same memory, and files nothing twice", async () => {
    const text = dump(memoryOf(round.stops));
    const [one, two] = [await read(text), await read(text)];
    await core.call("docking.accept", asShown(one));
    expect(await refusal(core.call("docking.accept", asShown(two)))).toMatchObject({
      code: "conflict",
      key: "dockedMeanwhile",
    });
    expect(await checksOf(0)).toHaveLength(4);
  });

  it("refuses the second of two people who type and accept the same sheet", async () => {
    const values = round.stops.map(({ spindleId, expectedN }) => ({
      spindleId,
      texts: [(expectedN! / 1000).toFixed(2)],
    }));
    const first = await core.call("docking.type", { roundId: round.roundId, values });
    const second = await core.call("docking.type", { roundId: round.roundId, values });
    await core.call("docking.accept", asShown(first));
    clock.ms += 60_000;
    expect(await refusal(core.call("docking.accept", asShown(second)))).toMatchObject({
      code: "conflict",
      key: "dockedMeanwhile",
    });
    expect(await checksOf(0)).toHaveLength(4);
  });

  it("takes a memory of ten thousand readings: the newest are matched, the older ones asked about at once", async () => {
    const day = memoryOf(round.stops);
    const old = Array.from({ length: 10_000 - day.length }, (_, i) => ({
      ...day[i % day.length]!,
      number: i + 1,
      clockMs: clock.ms - 30 * DAY + i * 200_000,
    }));
    const all = [...old, ...day.map((reading, i) => ({ ...reading, number: old.length + i + 1 }))];
    const startMs = performance.now();
    const view = await read(dump(all));
    expect(performance.now() - startMs).toBeLessThan(15_000);
    expect(view.takes).toHaveLength(10_000);
    expect(view.lines.tooMany).toBe(false);
    // Each reading stands in one visit at most, or is screened out with a question.
    const visited = view.visits.flatMap((v) => v.takes);
    expect(new Set(visited).size).toBe(visited.length);
    const asked = new Set(view.questions.flatMap((q) => q.takes));
    const silent = [...view.takes.keys()].filter((t) => !asked.has(t) && t < old.length);
    expect(silent.filter((t) => view.visits.some((v) => v.takes.includes(t) && v.stop !== undefined))).toEqual([]);
    expect(
      view.stops.every((_, s) => view.visits.some((v) => v.stop === s && v.takes.some((t) => t >= old.length))),
    ).toBe(true);
  }, 60_000);

  it("names a spindle that was retired meanwhile, and files nothing", async () => {
    const view = await read(dump(memoryOf(round.stops)));
    const gone = round.stops[3]!.spindleId;
    const { spindle } = (await core.call("spindles.list")).find((r) => r.spindle.spindleId === gone)!;
    await core.call("spindles.save", { ...spindle, state: "retired" });
    expect(await refusal(core.call("docking.accept", asShown(view)))).toMatchObject({
      code: "conflict",
      key: "stopRetired",
    });
    expect(await checksOf(0)).toHaveLength(3);
    const again = await read(dump(memoryOf(round.stops)));
    expect(again.stops).toHaveLength(5);
  });

  it("wants each reading filed once or left out", async () => {
    const body = asShown(await read(dump(memoryOf(round.stops))));
    const forgotten = { ...body, filings: body.filings.slice(1) };
    expect(await refusal(core.call("docking.accept", forgotten))).toMatchObject({
      code: "invalid",
      key: "takesNotWhole",
    });
    const twice = { ...body, leftOut: [{ take: 0, why: "doubt" }] };
    expect(await refusal(core.call("docking.accept", twice))).toMatchObject({ code: "invalid", key: "takesNotWhole" });
  });

  it("wants the reason a warning asks for, and a forgotten docking is said", async () => {
    const gauge = (await core.call("gauges.list"))[0]!.gauge;
    await core.call("gauges.save", { ...gauge, dueOn: "2020-01-01", provedOn: "2019-01-01" });
    const view = await read(dump(memoryOf(round.stops)));
    expect(view.warnings).toEqual([expect.objectContaining({ code: "proofPastDue", weight: "ask" })]);
    expect(await refusal(core.call("docking.accept", asShown(view)))).toMatchObject({ key: "reasonWanted" });
    const { rows } = await core.call("docking.accept", {
      ...asShown(view),
      reasons: { proofPastDue: "proof is booked" },
    });
    expect(rows).toHaveLength(6);
    const unknown = { ...asShown(view), dockingId: round.roundId };
    expect(await refusal(core.call("docking.accept", unknown))).toMatchObject({ code: "notFound", key: "noDocking" });
  });

  it("asks about the order of the date first, reads anew with the answer, and keeps how it was read under a name that can change", async () => {
    const file = "1;03/04/2026;08:05;17.92;kN\n2;03/05/2026;08:10;18.02;kN\n";
    const asked = await read(file, { fileName: "day.txt" });
    expect(asked).toMatchObject({ undecided: [{ field: "dateOrder" }], takes: [] });
    const answered = await core.call("docking.read", { dockingId: asked.dockingId, hints: { dateOrder: "mdy" } });
    expect(answered.takes.map((t) => t.stamp)).toEqual(["03/04/2026 08:05", "03/05/2026 08:10"]);
    const kept = await core.call("formats.keep", { dockingId: asked.dockingId, name: "Day file" });
    expect(await core.call("formats.list")).toEqual([kept]);
    expect(await read(file, { formatId: kept.formatId })).toMatchObject({ formatName: "Day file", undecided: [] });

    const { formatId } = kept;
    const renamed = await core.call("formats.save", { formatId, name: "Day file of gauge 1", state: "inUse" });
    expect(renamed).toEqual({
      ...kept,
      name: renamed.name,
      format: { ...kept.format, name: renamed.name },
      state: "inUse",
    });
    expect(await core.call("formats.list")).toEqual([renamed]);
    const keepAs = (name: string) => core.call("formats.keep", { dockingId: asked.dockingId, name });
    expect(await refusal(keepAs(" day FILE of gauge 1"))).toMatchObject({ code: "invalid", key: "twin.name" });
    await core.call("formats.save", { formatId, name: renamed.name, state: "retired" });
    const second = await keepAs(renamed.name); // the name is free again
    expect((await core.call("formats.list")).map((f) => f.state)).toEqual(["retired", undefined]);
    const backInUse = core.call("formats.save", { formatId, name: renamed.name, state: "inUse" });
    expect(await refusal(backInUse)).toMatchObject({ key: "twin.name" });
    expect(
      await refusal(core.call("formats.save", { formatId: round.roundId, name: "x", state: "inUse" })),
    ).toMatchObject({
      code: "notFound",
      key: "noDumpFormat",
    });
    // What was docked with it before reads on, retired or not.
    expect(await read(file, { formatId })).toMatchObject({ formatName: renamed.name });
    expect(second.formatId).not.toBe(formatId);
  });

  it("takes values from the sheet by spindle, bare numbers in the unit printed on it", async () => {
    const values = round.stops
      .slice(0, 2)
      .map((s) => ({ spindleId: s.spindleId, texts: [`${s.expectedN! / 1000}`, "", `${s.expectedN} N`] }));
    const view = await core.call("docking.type", { roundId: round.roundId, values });
    expect(view.visits.map((v) => [v.stop, v.takes.length])).toEqual([
      [0, 2],
      [1, 2],
    ]);
    expect((await core.call("docking.accept", asShown(view))).rows).toHaveLength(2);
    const torque = core.call("docking.type", {
      roundId: round.roundId,
      values: [{ spindleId: round.stops[0]!.spindleId, texts: ["18 Nm"] }],
    });
    expect(await refusal(torque)).toMatchObject({ code: "invalid", key: "force.torque", field: "values.0.texts.0" });
  });

  it("says of an empty memory that there is nothing, and of no format what it saw", async () => {
    expect(await read(dump([]))).toMatchObject({ takes: [], visits: [] });
    expect(await read("nothing to see here\n")).toMatchObject({ formatName: undefined, takes: [] });
  });

  it("is ready with 500 readings in under two seconds", async () => {
    const memory = Array.from({ length: 500 }, (_, i) => {
      const stop = round.stops[Math.floor(i / 84)]!;
      return {
        number: i + 1,
        forceN: stop.expectedN! + 10 * (i % 7),
        unit: "kN" as const,
        clockMs: clock.ms - 3 * 3_600_000 + i * 20_000,
        location: Number(stop.location),
        held: true,
      };
    });
    const from = performance.now();
    const view = await read(dump(memory));
    expect(view.takes).toHaveLength(500);
    expect(performance.now() - from).toBeLessThan(2_000);
  });
});

describe("what is printed", () => {
  it("comes as files with a name and a kind", async () => {
    const pdf = await core.call("rounds.sheet", { roundId: round.roundId, as: "pdf", language: "en" });
    expect(Buffer.from(pdf.base64, "base64").subarray(0, 5).toString()).toBe("%PDF-");
    const csv = await core.call("rounds.sheet", { roundId: round.roundId, as: "csv", language: "de" });
    expect(csv).toMatchObject({ mime: "text/csv;charset=utf-8", fileName: `round-${round.on}.csv` });
    expect((await core.call("rounds.calendar", { language: "en" })).fileName).toBe("holdfast-due.ics");
    expect((await core.call("labels.print", { what: "adapters", size: "small" })).mime).toBe("application/pdf");
  });
});
