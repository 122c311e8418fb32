import type { BackupView } from "../../app/contract/backupViews.ts";
import type { EventName, Events, Push } from "../../app/contract/events.ts";
import type { LinkView } from "../../app/contract/linkViews.ts";
import type { Handlers, Input, MethodName, Output } from "../../app/contract/methods.ts";
import type { JobView, PcSettings, ProgramView } from "../../app/contract/programViews.ts";
import type { CheckRow, SpindleRow } from "../../app/contract/recordViews.ts";
import { AppError, type Result } from "../../app/contract/result.ts";
import type { ServiceEvent } from "../../app/ledger/register.ts";
import type { Client, Connection } from "../../renderer/client/Client.ts";
import { backupHandlers } from "./fake/backupHandlers.ts";
import { FakeGauge } from "./fake/FakeGauge.ts";
import { FakeProofs } from "./fake/FakeProofs.ts";
import { FakeSeries } from "./fake/FakeSeries.ts";
import { FAKE_TODAY_MS, fakeChecks, fakeRow } from "./fake/fakeHistory.ts";
import {
  fakeAdapters,
  fakeEvents,
  fakeGauges,
  fakeOperators,
  fakePlan,
  fakeSpindles,
  fakeWorks,
} from "./fake/fakeRegister.ts";
import { linkHandlers } from "./fake/linkHandlers.ts";
import { peopleHandlers } from "./fake/peopleHandlers.ts";
import { programHandlers } from "./fake/programHandlers.ts";
import { proofHandlers } from "./fake/proofHandlers.ts";
import { recordHandlers } from "./fake/recordHandlers.ts";
import { roundHandlers } from "./fake/roundHandlers.ts";
import { seriesHandlers } from "./fake/seriesHandlers.ts";
import { supportHandlers } from "./fake/supportHandlers.ts";

/** Everything the fake core holds; its handlers share it. */
export type FakeState = {
  program: ProgramView;
  works: typeof fakeWorks;
  settings: PcSettings;
  link: LinkView;
  spindles: SpindleRow[];
  checks: CheckRow[];
  adapters: typeof fakeAdapters;
  gauges: typeof fakeGauges;
  operators: typeof fakeOperators;
  jobs: JobView[];
  backup: BackupView;
  events: ServiceEvent[];
  undo: { checkId: string; untilMs: number } | undefined;
  readonly proofs: FakeProofs;
  readonly gauge: FakeGauge;
  readonly series: FakeSeries;
  readonly nowMs: () => number;
  readonly say: <E extends EventName>(event: E, data: Events[E]) => void;
  readonly seq: () => number;
  readonly refile: (spindleId: string) => SpindleRow;
};

export type FakeCore = {
  readonly state: FakeState;
  readonly handlers: Handlers;
  readonly hear: (listener: (push: Push) => void) => () => void;
  readonly say: FakeState["say"];
  /** Lets time pass for the gauge: its readings go out as one batch. */
  readonly run: (seconds: number) => void;
  readonly client: () => Client & { readonly setConnection: (connection: Connection) => void };
};

/** A core without a disk, a port or a clock, that answers every call of the contract. For looking at screens and testing them. */
export function createFakeCore(options: { readonly empty?: boolean; readonly demo?: boolean } = {}): FakeCore {
  const listeners = new Set<(push: Push) => void>();
  let seq = 0;
  const say = <E extends EventName>(event: E, data: Events[E]) => {
    if (event !== "readings.arrived") seq += 1;
    const push = JSON.parse(JSON.stringify({ seq, event, data })) as Push; // what a wire leaves of it
    for (const listener of listeners) listener(push);
  };
  const checks = options.empty === true ? [] : fakeSpindles.flatMap((s, i) => fakeChecks(s, fakePlan[i]![5], i + 1));
  const checksOf = (spindleId: string) => state.checks.filter((check) => check.spindleId === spindleId);

  const state: FakeState = {
    program: {
      version: "0.1.0",
      demo: options.demo ?? options.empty !== true,
      dataFile: "/home/you/Holdfast/holdfast.sqlite",
      origin: "3b1f0c52-8d3e-4f0a-9a37-1c2d3e4f5a6b",
      keptFile: undefined,
      readOnly: undefined,
      damaged: false,
      empty: options.empty ?? false,
      host: "loopback",
    },
    works: fakeWorks,
    settings: { theme: "light", language: "en", sound: false, initials: false },
    link: closedLink,
    spindles:
      options.empty === true
        ? []
        : fakeSpindles.map((s) =>
            fakeRow(
              s,
              checks.filter((c) => c.spindleId === s.spindleId),
            ),
          ),
    checks,
    adapters: options.empty === true ? [] : [...fakeAdapters],
    gauges: options.empty === true ? [] : [...fakeGauges],
    operators: options.empty === true ? [] : [...fakeOperators],
    jobs: [],
    backup: noBackup,
    events: options.empty === true ? [] : [...fakeEvents],
    undo: undefined,
    proofs: new FakeProofs(),
    gauge: new FakeGauge((cycle) => {
      const closed = state.series.add(cycle);
      say("cycle.closed", { seriesId: state.series.draft.seriesId, cycle: closed });
      say("draft.changed", state.series.draft);
    }),
    series: new FakeSeries(
      (id) => state.spindles.find((row) => row.spindle.spindleId === id)?.spindle,
      (id) => state.spindles.find((row) => row.spindle.spindleId === id)?.baselineN,
    ),
    nowMs: () => FAKE_TODAY_MS,
    say,
    seq: () => seq,
    refile: (spindleId) => {
      const at = state.spindles.findIndex((row) => row.spindle.spindleId === spindleId);
      const found = state.spindles[at];
      if (found === undefined) throw new AppError("notFound", "There is no such spindle.");
      const row = fakeRow(found.spindle, checksOf(spindleId));
      state.spindles[at] = row;
      say("spindle.changed", row);
      return row;
    },
  };

  const handlers: Handlers = {
    ...programHandlers(state),
    ...backupHandlers(state),
    ...peopleHandlers(state),
    ...supportHandlers(state),
    ...linkHandlers(state),
    ...seriesHandlers(state),
    ...recordHandlers(state),
    ...roundHandlers(state),
    ...proofHandlers(state),
  };
  const hear = (listener: (push: Push) => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  };
  return {
    state,
    handlers,
    hear,
    say,
    run: (seconds) => {
      if (state.link.state === "open") say("readings.arrived", state.gauge.run(seconds));
    },
    client: () => fakeClient(handlers, hear),
  };
}

const noBackup: BackupView = {
  folder: undefined,
  keep: { days: 14, weeks: 8, months: 24 },
  lastAtMs: undefined,
  verifiedEntries: undefined,
  problem: undefined,
  late: undefined,
};

export const closedLink: LinkView = {
  state: "closed",
  source: undefined,
  label: "",
  gaugeId: undefined,
  patternName: undefined,
  unit: undefined,
  rateHz: undefined,
  resolutionN: undefined,
  counters: { bytes: 0, lines: 0, readings: 0, rejected: 0, byReason: {} },
  problem: undefined,
  spoolTrimmed: false,
};

/** A client straight to the handlers; what crosses is cut down to what JSON carries, as on the wire. */
function fakeClient(handlers: Handlers, hear: FakeCore["hear"]): ReturnType<FakeCore["client"]> {
  const connections = new Set<(connection: Connection) => void>();
  const gaps = new Set<() => void>();
  let connection: Connection = "open";
  queueMicrotask(() => {
    for (const listener of gaps) listener();
  });
  return {
    call: async <M extends MethodName>(name: M, input: Input<M>): Promise<Result<Output<M>>> => {
      try {
        const handle = handlers[name] as (input: unknown) => unknown; // paired by the caller's types
        const value = await handle(JSON.parse(JSON.stringify(input)));
        return { ok: true, value: JSON.parse(JSON.stringify(value)) as Output<M> };
      } catch (cause) {
        if (!(cause instanceof AppError)) throw cause;
        return { ok: false, error: { code: cause.code, message: cause.message, key: cause.key, asks: cause.asks } };
      }
    },
    on: (event, listener) => hear((push) => push.event === event && listener(push.data as never)),
    onConnection: (listener) => {
      connections.add(listener);
      listener(connection);
      return () => connections.delete(listener);
    },
    onGap: (listener) => {
      gaps.add(listener);
      return () => gaps.delete(listener);
    },
    caughtUp: () => {},
    close: () => {},
    setConnection: (now) => {
      connection = now;
      for (const listener of connections) listener(now);
    },
  };
}
