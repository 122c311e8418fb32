import type { Handlers } from "../../../app/contract/methods.ts";
import { AppError } from "../../../app/contract/result.ts";
import type { DockingView, MadeFile, RoundView, StopView } from "../../../app/contract/roundViews.ts";
import { plainCalendar, type WorksCalendar } from "../../../app/round/due/WorksCalendar.ts";
import { matchRound } from "../../../app/round/match/matchRound.ts";
import type { Take } from "../../../app/round/take/Take.ts";
import type { FakeState } from "../fakeCore.ts";
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
      done: undefined,
    };
  };
  const found = (roundId: string) => {
    const round = rounds.find((r) => r.roundId === roundId);
    if (round === undefined) throw new AppError("notFound", "There is no such round.");
    return round;
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
      columns: [],
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

  return {
    "rounds.due": () => ({
      today,
      rows: state.spindles.map((row) => ({
        spindleId: row.spindle.spindleId,
        dueOn: row.dueOn ?? today,
        why: row.last === undefined ? ("neverMeasured" as const) : ("interval" as const),
        also: [],
        overdueDays: Math.round((Date.parse(today) - Date.parse(row.dueOn ?? today)) / 86_400_000),
      })),
      calendar,
    }),
    "rounds.saveCalendar": (next) => {
      calendar = next;
      return next;
    },
    "rounds.list": () => rounds,
    "rounds.get": ({ roundId }) => found(roundId),
    "rounds.save": (input) => {
      const round: RoundView = {
        roundId: input.roundId ?? nextId(),
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
      rounds.unshift(round);
      state.say("round.changed", round);
      return round;
    },
    "rounds.end": ({ roundId, state: ended }) => {
      const round = { ...found(roundId), state: ended };
      rounds.splice(rounds.indexOf(found(roundId)), 1, round);
      return round;
    },
    "rounds.sheet": () => file,
    "rounds.calendar": () => file,
    "labels.print": () => file,
    "formats.list": () => [],
    "formats.keep": ({ name }) => ({
      formatId: nextId(),
      name,
      format: { version: 1, name, separator: ";", fields: [{ field: "force" }] },
    }),
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
