import type { ListFile } from "../../../app/contract/importViews.ts";
import type { Handlers } from "../../../app/contract/methods.ts";
import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import { AppError } from "../../../app/contract/result.ts";
import { spindle as spindleSchema } from "../../../app/ledger/register.ts";
import { readChecks } from "../../../main/import/checks/readChecks.ts";
import { openTable } from "../../../main/import/openTable.ts";
import { readList } from "../../../main/import/readList.ts";
import { plainLabel } from "../../../main/import/Twins.ts";
import type { FakeState } from "../fakeCore.ts";
import { fakeDue } from "./fakeDue.ts";
import { fakeRow } from "./fakeHistory.ts";
import { idsFrom } from "./fakeId.ts";
import { fakeCheckPage, fakeDetail, fakeFleet, fakeTrend, fakeWaveform } from "./fakePages.ts";
import { recordsForImport } from "./recordsForImport.ts";

const newId = idsFrom(90_000);
type Kind = "works" | "register" | "spindles" | "adapters" | "gauges" | "checks" | "baseline" | "stop" | "services";
type Names = Exclude<Extract<keyof Handlers, `${Kind}.${string}`>, "adapters.factor">; // that one belongs to the proofs

export function recordHandlers(state: FakeState): Pick<Handlers, Names> {
  const rowOf = (spindleId: string): SpindleRow => {
    const row = state.spindles.find((one) => one.spindle.spindleId === spindleId);
    if (row === undefined) throw new AppError("notFound", "There is no such spindle.");
    return row;
  };
  const voidCheck = (checkId: string, reason: string) => {
    const at = state.checks.findIndex((check) => check.checkId === checkId);
    const check = state.checks[at];
    if (check === undefined) throw new AppError("notFound", "There is no such check.");
    state.checks[at] = { ...check, voided: { reason } };
    return state.refile(check.spindleId);
  };
  const listOf = async (file: ListFile) => {
    const table = await openTable(file);
    if (file.what === "checks") {
      const read = readChecks(file, table, recordsForImport(state));
      return { preview: read.preview, bodies: [], imported: read.rows.length };
    }
    const names = new Set(file.what === "spindles" ? state.spindles.map((s) => plainLabel(s.spindle.name)) : []);
    const { preview, bodies } = readList({ ...file, what: file.what }, table, { names, serials: new Set() }, newId);
    return { preview, bodies, imported: bodies.length };
  };
  /** Work that is done before anybody asks. */
  const finished = (what: string, result: unknown) => {
    const jobId = newId();
    state.say("job.finished", { jobId, what, done: 1, total: 1, state: "finished", message: undefined, result });
    return { jobId };
  };
  return {
    "works.save": (works) => {
      state.works = works as typeof state.works; // the fake keeps what it is given
      state.say("register.changed", { what: "works" });
      return works;
    },
    "spindles.list": () => state.spindles,
    "spindles.fleet": () => fakeFleet(state.spindles, state.checks),
    "spindles.page": ({ spindleId, xAxis }) => {
      const row = rowOf(spindleId);
      const checks = state.checks.filter((check) => check.spindleId === spindleId);
      return {
        row,
        checks: checks.toReversed(),
        moreChecks: false,
        events: state.events.filter((event) => event.spindleId === spindleId),
        trend: fakeTrend(
          row,
          checks,
          state.events.filter((event) => event.spindleId === spindleId),
          xAxis,
        ),
        details: checks.filter((check) => check.voided === undefined).map(fakeDetail),
        due: fakeDue(row, new Date(state.nowMs()).toISOString().slice(0, 10)),
        stop: row.stopped ? { checkId: row.last!.checkId, sinceMs: row.last!.measuredAtMs } : undefined,
      };
    },
    "spindles.save": (spindle) => {
      const saved = { ...spindle, spindleId: spindle.spindleId ?? newId() };
      const row = fakeRow(
        saved,
        state.checks.filter((check) => check.spindleId === saved.spindleId),
      );
      const at = state.spindles.findIndex((one) => one.spindle.spindleId === saved.spindleId);
      if (at === -1) state.spindles.push(row);
      else state.spindles[at] = row;
      state.program = { ...state.program, empty: false };
      state.say("spindle.changed", row);
      return row;
    },
    "adapters.list": () => state.adapters,
    "adapters.save": (adapter) => {
      const row = {
        adapter: { ...adapter, adapterId: adapter.adapterId ?? newId() },
        proofState: "none",
        checkCount: 0,
      } as const;
      state.adapters = [...state.adapters.filter((one) => one.adapter.adapterId !== row.adapter.adapterId), row];
      state.say("register.changed", { what: "adapters" });
      return row;
    },
    "gauges.list": () => state.gauges,
    "gauges.save": (gauge) => {
      const row = {
        gauge: { ...gauge, gaugeId: gauge.gaugeId ?? newId() },
        proofState: "none",
        checkCount: 0,
      } as const;
      state.gauges = [...state.gauges.filter((one) => one.gauge.gaugeId !== row.gauge.gaugeId), row];
      state.say("register.changed", { what: "gauges" });
      return row;
    },
    "checks.list": ({ spindleId }) => ({
      rows: state.checks.filter((check) => check.spindleId === spindleId),
      more: false,
    }),
    "checks.get": ({ checkId }) => {
      const row = state.checks.find((check) => check.checkId === checkId);
      if (row === undefined) throw new AppError("notFound", "There is no such check.");
      return fakeCheckPage(row, rowOf(row.spindleId).spindle);
    },
    "checks.waveform": ({ checkId, cycleId }) => {
      const row = state.checks.find((check) => check.checkId === checkId);
      return fakeWaveform(cycleId, row?.valueN ?? 0);
    },
    "register.preview": async (file) => (await listOf(file)).preview,
    "register.import": async (file) => {
      const { bodies, preview, imported } = await listOf(file);
      if (file.what === "spindles")
        for (const body of bodies) state.spindles.push(fakeRow(spindleSchema.parse(body), []));
      state.say("register.changed", { what: file.what === "checks" ? "spindles" : file.what });
      return finished("listImport", { imported, passedOver: preview.passedOver });
    },
    "checks.rejudge": () => {
      const [check] = state.checks;
      const changed = check === undefined ? [] : [{ ...check, filed: check.verdict, today: "stop", reason: undefined }];
      const counts = changed.map(({ filed, today }) => ({ filed, today, count: 1 }));
      return finished("rejudge", { counts, changed, changedCount: changed.length, notJudged: 0 });
    },
    "checks.void": ({ checkId, reason }) => voidCheck(checkId, reason),
    "checks.undo": ({ checkId }) => {
      state.undo = undefined;
      return voidCheck(checkId, "taken back");
    },
    "baseline.choose": ({ spindleId, checkId }) => {
      state.checks = state.checks.map((check) =>
        check.spindleId === spindleId ? { ...check, isBaseline: check.checkId === checkId } : check,
      );
      return state.refile(spindleId);
    },
    "stop.release": ({ spindleId }) => {
      const row = { ...rowOf(spindleId), stopped: false };
      state.spindles = state.spindles.map((one) => (one.spindle.spindleId === spindleId ? row : one));
      state.say("spindle.changed", row);
      return row;
    },
    "services.save": (event) => {
      const saved = { ...event, eventId: event.eventId ?? newId() };
      state.events.push(saved);
      return saved;
    },
  };
}
