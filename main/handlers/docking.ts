import type { Handlers, Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { DockingView } from "../../app/contract/roundViews.ts";
import { type StoredDumpFormat, storedDumpFormat } from "../../app/ledger/round.ts";
import type { DumpHints } from "../../app/round/dump/LearnedDump.ts";
import { systemClock } from "../link/Clock.ts";
import type { DemoRound } from "../rounds/DemoRound.ts";
import { DockingDesk } from "../rounds/DockingDesk.ts";
import type { DockingRequest } from "../rounds/DockingWork.ts";
import type { FetchDeps } from "../rounds/fetchMemory.ts";
import { fetchMemory } from "../rounds/fetchMemory.ts";
import { dumpFormatList, readDumpFormat, readRound } from "../rounds/roundRecords.ts";
import { toRoundView } from "../rounds/toRoundView.ts";
import { typedRecords } from "../rounds/typedRecords.ts";
import { checkSummary } from "../store/records/checks.ts";
import { readSpindle } from "../store/records/spindles.ts";
import type { Context } from "./Context.ts";
import { toCheckRow, toSpindleRow } from "./rows.ts";

type Part = Pick<
  Handlers,
  | "formats.list"
  | "formats.keep"
  | "formats.save"
  | "docking.read"
  | "docking.fetch"
  | "docking.demo"
  | "docking.type"
  | "docking.accept"
>;

/** What comes back from a round: read, matched, looked at, filed. */
export function dockingHandlers(context: Context, makeSource: FetchDeps["makeSource"], demo: DemoRound): Part {
  const { store, hub, works, now } = context;
  const desk = new DockingDesk(context);
  const take = (request: DockingRequest): Promise<DockingView> => {
    if (request.roundId !== undefined && readRound(store.db, request.roundId) === undefined)
      throw new AppError("notFound", "There is no such round in this data file.", { key: "noRound" });
    if (request.formatId !== undefined && readDumpFormat(store.db, request.formatId) === undefined) noDumpFormat();
    return desk.read(request);
  };
  const fetch = async ({ source, request, hints, gaugeNow, ...about }: Parsed<"docking.fetch">) => {
    await context.bench.freeFor(source);
    const stored = about.formatId === undefined ? undefined : readDumpFormat(store.db, about.formatId);
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
      allNew: false,
      gaugeNowMs: gaugeNow === undefined ? undefined : localMs(gaugeNow),
      pcMs: now(),
      typed: undefined,
    });
  };
  const keep = (body: StoredDumpFormat): StoredDumpFormat => {
    refuseNameTwice(dumpFormatList(store.db), body);
    store.append([{ kind: "dumpFormat", body }]);
    return body;
  };

  return {
    "formats.list": () => dumpFormatList(store.db),
    "formats.keep": ({ dockingId, name }) => {
      const { format } = desk.work(dockingId).packed;
      if (format === undefined)
        throw new AppError("invalid", "There is no way of reading to keep yet: answer what is asked first.", {
          key: "noFormat",
        });
      return keep(storedDumpFormat.parse({ formatId: store.newId(), name, format: { ...format, name } }));
    },
    "formats.save": ({ formatId, name, state }) => {
      const { format } = readDumpFormat(store.db, formatId) ?? noDumpFormat();
      return keep({ formatId, name, format: { ...format, name }, state });
    },
    "docking.read": ({ dockingId, text, fileName, hints, allNew, gaugeNow, ...about }) => {
      const before = dockingId === undefined ? undefined : desk.asked(dockingId);
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
        allNew: allNew ?? before?.allNew ?? false,
        gaugeNowMs: gaugeNow === undefined ? before?.gaugeNowMs : localMs(gaugeNow),
        pcMs: before?.pcMs ?? now(),
        typed: before?.typed,
      });
    },
    "docking.demo": async ({ anew }) => {
      const { round, request } = await demo.comeBack(anew === true);
      return fetch({
        source: { kind: "simulated" },
        request,
        roundId: round.roundId,
        gaugeId: round.gaugeId ?? undefined,
      });
    },
    "docking.fetch": (input) => fetch(input),
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
        allNew: false,
        gaugeNowMs: undefined,
        pcMs: now(),
        typed: typedRecords(values, works().unitShown),
      }),
    "docking.accept": async (input) => {
      const { checks, again, roundId } = await desk.file(input);
      const rows = checks.flatMap(({ checkId }) => {
        const summary = checkSummary(store.db, checkId);
        return summary === undefined ? [] : [toCheckRow(summary)];
      });
      if (again) return { rows, again };
      for (const { spindleId } of checks) hub.say("spindle.changed", toSpindleRow(readSpindle(store.db, spindleId)!)); // just filed
      const round = roundId === undefined ? undefined : readRound(store.db, roundId);
      if (round !== undefined) hub.say("round.changed", toRoundView(store.db, round, works()));
      hub.say("docking.filed", { dockingId: input.dockingId, checks: checks.length });
      context.series.refresh();
      return { rows, again };
    },
  };
}

function noDumpFormat(): never {
  throw new AppError("notFound", "There is no such way of reading a memory any more.", { key: "noDumpFormat" });
}

/** Two of one name in use could not be told apart in the list they are chosen from. */
function refuseNameTwice(all: readonly StoredDumpFormat[], { formatId, name, state }: StoredDumpFormat): void {
  const same = (other: string) => other.trim().toLocaleLowerCase() === name.trim().toLocaleLowerCase();
  if (state === "retired") return;
  if (all.some((f) => f.formatId !== formatId && f.state !== "retired" && same(f.name)))
    throw new AppError("invalid", `A way of reading named ${name} is in use already. Choose another name.`, {
      key: "twin.name",
      field: "name",
    });
}

function merged(before: DumpHints | undefined, said: DumpHints | undefined): DumpHints {
  const given = Object.fromEntries(Object.entries(said ?? {}).filter(([, value]) => value !== undefined));
  const columns = { ...before?.columns, ...said?.columns };
  return { ...before, ...given, ...(Object.keys(columns).length === 0 ? {} : { columns }) };
}

/** What a display shows, as the dump's own stamps are counted: as if in UTC. */
const localMs = (text: string) => Date.parse(`${text}Z`);
