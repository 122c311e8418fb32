import type { Handlers } from "../../../app/contract/methods.ts";
import { AppError } from "../../../app/contract/result.ts";
import type { DockingView, MadeFile, RoundView, StopView } from "../../../app/contract/roundViews.ts";
import type { StoredDumpFormat } from "../../../app/ledger/round.ts";
import { plainCalendar, type WorksCalendar } from "../../../app/round/due/WorksCalendar.ts";
import { matchRound } from "../../../app/round/match/matchRound.ts";
import type { Take } from "../../../app/round/take/Take.ts";
import type { FakeState } from "../fakeCore.ts";
import { fakeDue } from "./fakeDue.ts";
import { idsFrom } from "./fakeId.ts";

type Part = Pick<
  Handlers,
  Extract<keyof Handlers, `rounds.${string}` | `docking.${string}` | `formats.${string}` | `labels.${string}`>
>;

/** Rounds and docking of the fake core: real matching, nothing kept. */
export function roundHandlers(state: FakeState): Part {
  const nextId = idsFrom(8_000);
  let calendar: WorksCalendar = plainCalendar;
  const rounds: RoundView[] = [];
  const formats: StoredDumpFormat[] = [];
  const today = new Date(state.nowMs()).toISOString().slice(0, 10);
  const file: MadeFile = { fileName: "round.pdf", mime: "application/pdf", base64: "" };
  let work: DockingView | undefined;

  const stopOf = (spindleId: string, i: number): StopView => {
    const row = state.spindles.find((r) => r.spindle.spindleId === spindleId);
    if (row === undefined) throw new AppError("notFound", "There is no such spindle.");
    const { name, machine, area, taper, limits } = row.spindle;
    const expectedN = row.last?.valueN ?? limits.nominalN;
    return {
      spindleId,
      name,
      machine,
      area,
      taper,
      limits,
      expectedN,
      adapterId: undefined,
      location: String(i + 1),
      retired: false,
      passed: undefined,
      done: undefined,
    };
  };
  const found = (roundId: string) => {
    const round = rounds.find((r) => r.roundId === roundId);
    if (round === undefined) throw new AppError("notFound", "There is no such round.");
    return round;
  };
  const refuseChanged = (round: RoundView, seen: string | undefined) => {
    if (seen !== undefined && seen !== round.version)
      throw new AppError("conflict", "This round was changed meanwhile.", { key: "roundChanged" });
  };
  const dock = (stops: readonly StopView[], roundId: string | undefined, takes: readonly Take[]): DockingView => {
    const match = matchRound(
      takes,
      stops.map((s) => ({
        spindleId: s.spindleId,
        location: s.location,
        expected: s.expectedN === undefined ? undefined : { forceN: s.expectedN, scatter: 0.01, spread: 0.012 },
      })),
      { order: [...takes.keys()], ordered: true },
    );
    work = {
      dockingId: nextId(),
      roundId,
      gaugeId: undefined,
      source: "file",
      fileName: "memory.txt",
      formatName: "learned",
      columns: [{ head: undefined, sample: "17.92", field: "force" }],
      undecided: [],
      clock: { offsetMs: -3_720_000, driftPpm: 12, setSince: false, assumed: false },
      lines: { rejected: [], passedOver: 2, announced: takes.length, incomplete: false, tooMany: false },
      known: 0,
      doubtful: false,
      takes: takes.map((t, i) => ({
        number: String(i + 1),
        raw: `${i + 1};${t.valueN}`,
        figure: `${((t.valueN ?? 0) / 1000).toFixed(2)} kN`,
        valueN: t.valueN,
        refused: t.refused,
        stamp: undefined,
        badDate: false,
        atMs: t.atMs,
        location: t.location,
        kind: t.kind,
      })),
      stops,
      ...match,
      warnings: [],
    };
    return work;
  };

  const leadTo = (roundId: string | undefined, at: number) => {
    const { series } = state;
    const stop = roundId === undefined ? undefined : found(roundId).stops[at];
    const tag = { ...series.draft.tag, spindleId: stop?.spindleId, adapterId: stop?.adapterId };
    const draft = series.change({ roundId, tag });
    state.say("draft.changed", draft);
    return draft;
  };

  return {
    "rounds.due": () => ({
      today,
      rows: state.spindles.map((row) => fakeDue(row, today)),
      calendar,
    }),
    "rounds.getCalendar": () => calendar,
    "rounds.saveCalendar": (next) => {
      calendar = next;
      return next;
    },
    "rounds.list": () => rounds,
    "rounds.get": ({ roundId }) => found(roundId),
    "rounds.save": (input) => {
      const round: RoundView = {
        roundId: input.roundId ?? nextId(),
        version: nextId(),
        name: input.name,
        on: input.on,
        state: "open",
        gaugeId: input.gaugeId,
        operatorId: input.operatorId,
        stops: input.stops.map(({ spindleId }, i) => stopOf(spindleId, i)),
        found: "exact",
        adapterChanges: 2,
        walk: 12,
        note: input.note ?? "",
      };
      if (input.roundId !== undefined) {
        refuseChanged(found(input.roundId), input.version);
        rounds.splice(rounds.indexOf(found(input.roundId)), 1);
      }
      rounds.unshift(round);
      state.say("round.changed", round);
      return round;
    },
    "rounds.end": ({ roundId, version, state: ended }) => {
      refuseChanged(found(roundId), version);
      const round = { ...found(roundId), state: ended };
      rounds.splice(rounds.indexOf(found(roundId)), 1, round);
      return round;
    },
    "rounds.lead": ({ roundId }) => leadTo(roundId ?? undefined, 0),
    "rounds.pass": ({ roundId, spindleId, as, why }) => {
      const round = found(roundId);
      const at = round.stops.findIndex((s) => s.spindleId === spindleId);
      const stops = round.stops.map((s, i) => (i === at ? { ...s, passed: { as, why } } : s));
      rounds.splice(rounds.indexOf(round), 1, { ...round, stops });
      state.say("round.changed", { ...round, stops });
      return leadTo(roundId, at + 1);
    },
    "rounds.sheet": () => file,
    "rounds.calendar": () => file,
    "labels.print": () => file,
    "formats.list": () => formats,
    "formats.keep": ({ name }) => {
      const format: StoredDumpFormat = {
        formatId: nextId(),
        name,
        format: { version: 1, name, separator: ";", fields: [{ field: "force" }] },
      };
      formats.push(format);
      return format;
    },
    "formats.save": ({ formatId, name, state }) => {
      const at = formats.findIndex((format) => format.formatId === formatId);
      formats[at] = { ...formats[at]!, name, state };
      return formats[at];
    },
    "docking.read": ({ dockingId, roundId, text }) => {
      if (dockingId !== undefined && work !== undefined) return work;
      const stops =
        roundId === undefined ? state.spindles.map((r, i) => stopOf(r.spindle.spindleId, i)) : found(roundId).stops;
      const values = (text ?? "").split(/\s+/).flatMap((word) => (Number(word) > 0 ? [Number(word) * 1000] : []));
      const takes = values.map(
        (valueN, i): Take => ({
          valueN,
          atMs: state.nowMs() - (values.length - i) * 300_000,
          location: undefined,
          kind: "held",
          refused: undefined,
        }),
      );
      return dock(stops, roundId, takes);
    },
    "docking.fetch": () => {
      throw new AppError("link", "The gauge has sent nothing.", { key: "memorySilent" });
    },
    "docking.demo": () => {
      const stops = state.spindles.slice(0, 4).map((r, i) => stopOf(r.spindle.spindleId, i));
      const takes = stops.map(
        (s, i): Take => ({
          valueN: s.expectedN,
          atMs: state.nowMs() - (4 - i) * 300_000,
          location: s.location,
          kind: "held",
          refused: undefined,
        }),
      );
      return dock(stops, undefined, takes);
    },
    "docking.type": ({ roundId, values }) =>
      dock(
        found(roundId).stops,
        roundId,
        values.flatMap(({ spindleId, texts }) =>
          texts.map(
            (text): Take => ({
              valueN: Number.parseFloat(text) * 1000,
              atMs: undefined,
              location: found(roundId).stops.find((s) => s.spindleId === spindleId)?.location,
              kind: undefined,
              refused: undefined,
            }),
          ),
        ),
      ),
    "docking.accept": () => ({ rows: state.checks.slice(0, work?.visits.length ?? 0), again: false }),
  };
}
