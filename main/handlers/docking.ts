import type { Handlers } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { DockingView } from "../../app/contract/roundViews.ts";
import { storedDumpFormat } from "../../app/ledger/round.ts";
import type { DumpHints } from "../../app/round/dump/LearnedDump.ts";
import { systemClock } from "../link/Clock.ts";
import { acceptDocking } from "../rounds/acceptDocking.ts";
import { type DockingRequest, type DockingWork, toDockingView } from "../rounds/DockingWork.ts";
import type { FetchDeps } from "../rounds/fetchMemory.ts";
import { fetchMemory } from "../rounds/fetchMemory.ts";
import { readDocking } from "../rounds/readDocking.ts";
import { dumpFormatList, readDocking as filedDocking, readRound } from "../rounds/roundRecords.ts";
import { toRoundView } from "../rounds/toRoundView.ts";
import { typedRecords } from "../rounds/typedRecords.ts";
import { checkSummary } from "../store/records/checks.ts";
import { readSpindle } from "../store/records/spindles.ts";
import type { Context } from "./Context.ts";
import { toCheckRow, toSpindleRow } from "./rows.ts";

type Part = Pick<
  Handlers,
  "formats.list" | "formats.keep" | "docking.read" | "docking.fetch" | "docking.type" | "docking.accept"
>;

/** Dockings in work that are kept; an older one is read again from its file. */
const KEPT = 8;

/** What comes back from a round: read, matched, looked at, filed. */
export function dockingHandlers(context: Context, makeSource: FetchDeps["makeSource"]): Part {
  const { store, hub, works, now } = context;
  const inWork = new Map<string, DockingWork>();

  const take = (request: DockingRequest): DockingView => {
    const work = readDocking(request, { db: store.db, works: works(), nowMs: now() });
    inWork.delete(request.dockingId);
    inWork.set(request.dockingId, work);
    for (const old of [...inWork.keys()].slice(0, -KEPT)) inWork.delete(old);
    return toDockingView(work);
  };
  const found = (dockingId: string): DockingWork => {
    const work = inWork.get(dockingId);
    if (work === undefined)
      throw new AppError(
        "notFound",
        "This docking is not open any more. Read the memory or the file again; nothing is lost.",
        {
          key: "noDocking",
        },
      );
    return work;
  };
  const rowsOf = (checkIds: readonly string[]) =>
    checkIds.flatMap((checkId) => {
      const summary = checkSummary(store.db, checkId);
      return summary === undefined ? [] : [toCheckRow(summary)];
    });

  return {
    "formats.list": () => dumpFormatList(store.db),
    "formats.keep": ({ dockingId, name }) => {
      const { format } = found(dockingId);
      if (format === undefined)
        throw new AppError("invalid", "There is no way of reading to keep yet: answer what is asked first.", {
          key: "noFormat",
        });
      const body = storedDumpFormat.parse({ formatId: store.newId(), name, format: { ...format, name } });
      store.append([{ kind: "dumpFormat", body }]);
      return body;
    },
    "docking.read": ({ dockingId, text, fileName, hints, gaugeNow, ...about }) => {
      const before = dockingId === undefined ? undefined : found(dockingId).request;
      if (text === undefined && before === undefined)
        throw new AppError("invalid", "There is nothing to read: choose a file or fetch the memory.", {
          field: "text",
        });
      return take({
        dockingId: dockingId ?? store.newId(),
        roundId: about.roundId ?? before?.roundId,
        gaugeId: about.gaugeId ?? before?.gaugeId,
        formatId: about.formatId ?? before?.formatId,
        source: before?.source ?? "file",
        fileName: fileName ?? before?.fileName,
        text: text ?? before?.text ?? "",
        hints: merged(before?.hints, hints),
        gaugeNowMs: gaugeNow === undefined ? before?.gaugeNowMs : localMs(gaugeNow),
        pcMs: before?.pcMs ?? now(),
        typed: before?.typed,
      });
    },
    "docking.fetch": async ({ source, request, hints, gaugeNow, ...about }) => {
      const stored = dumpFormatList(store.db).find((f) => f.formatId === about.formatId);
      const text = await fetchMemory(source, request ?? stored?.format.request, { clock: systemClock, makeSource });
      return take({
        dockingId: store.newId(),
        roundId: about.roundId,
        gaugeId: about.gaugeId,
        formatId: about.formatId,
        source: "port",
        fileName: undefined,
        text,
        hints: merged(undefined, hints),
        gaugeNowMs: gaugeNow === undefined ? undefined : localMs(gaugeNow),
        pcMs: now(),
        typed: undefined,
      });
    },
    "docking.type": ({ roundId, gaugeId, values }) =>
      take({
        dockingId: store.newId(),
        roundId,
        gaugeId: gaugeId ?? readRound(store.db, roundId)?.gaugeId ?? undefined,
        formatId: undefined,
        source: "sheet",
        fileName: undefined,
        text: "",
        hints: {},
        gaugeNowMs: undefined,
        pcMs: now(),
        typed: typedRecords(values, works().unitShown),
      }),
    "docking.accept": (input) => {
      const already = filedDocking(store.db, input.dockingId);
      if (already !== undefined) {
        const ids = new Set(already.records.flatMap((r) => r.checkId ?? []));
        return { rows: rowsOf([...ids]), again: true };
      }
      const work = found(input.dockingId);
      const deps = { store, works: works(), nowMs: now(), version: context.version };
      const checks = acceptDocking(input, work, deps);
      inWork.delete(input.dockingId);
      for (const { spindleId } of checks) hub.say("spindle.changed", toSpindleRow(readSpindle(store.db, spindleId)!)); // just filed
      const round = work.request.roundId === undefined ? undefined : readRound(store.db, work.request.roundId);
      if (round !== undefined) hub.say("round.changed", toRoundView(store.db, round, works()));
      hub.say("docking.filed", { dockingId: input.dockingId, checks: checks.length });
      context.series.refresh();
      return { rows: rowsOf(checks.map((c) => c.checkId)), again: false };
    },
  };
}

function merged(before: DumpHints | undefined, said: DumpHints | undefined): DumpHints {
  const given = Object.fromEntries(Object.entries(said ?? {}).filter(([, value]) => value !== undefined));
  const columns = { ...before?.columns, ...said?.columns };
  return { ...before, ...given, ...(Object.keys(columns).length === 0 ? {} : { columns }) };
}

/** What a display shows, as the dump's own stamps are counted: as if in UTC. */
const localMs = (text: string) => Date.parse(`${text}Z`);
