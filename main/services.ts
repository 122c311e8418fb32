import { dirname, join } from "node:path";
import type { Handlers } from "../app/contract/methods.ts";
import type { JobView, ProgramView } from "../app/contract/programViews.ts";
import type { Works } from "../app/ledger/register.ts";
import { acceptor } from "./bench/accept.ts";
import { Bench } from "./bench/Bench.ts";
import { type DraftState, freshDraft } from "./bench/DraftState.ts";
import { factsOf } from "./bench/factsOf.ts";
import { fillIfEmpty } from "./bench/fillDemo.ts";
import { form } from "./bench/form.ts";
import { loadState, recoverInto } from "./bench/recoverDraft.ts";
import { Series } from "./bench/Series.ts";
import { SettingSearch } from "./bench/SettingSearch.ts";
import { SimulatedGauge } from "./bench/SimulatedGauge.ts";
import { Undo } from "./bench/Undo.ts";
import type { Context } from "./handlers/Context.ts";
import { checkHandlers } from "./handlers/checks.ts";
import { dockingHandlers } from "./handlers/docking.ts";
import { linkHandlers } from "./handlers/link.ts";
import { programHandlers, programView } from "./handlers/program.ts";
import { registerHandlers } from "./handlers/register.ts";
import { reportHandlers } from "./handlers/reports.ts";
import { roundHandlers } from "./handlers/rounds.ts";
import { seriesHandlers } from "./handlers/series.ts";
import { today } from "./handlers/today.ts";
import { trendHandlers } from "./handlers/trend.ts";
import type { PushHub } from "./host/PushHub.ts";
import { Jobs } from "./jobs/Jobs.ts";
import { systemClock } from "./link/Clock.ts";
import { sourceMaker } from "./link/makeSource.ts";
import { withNamedPorts } from "./link/namedPorts.ts";
import { listPorts } from "./link/ports.ts";
import type { Log } from "./log.ts";
import { isBundled, programRoot } from "./programRoot.ts";
import { saveDraft } from "./store/draft.ts";
import { openStore } from "./store/open.ts";
import { PcSettingsFile } from "./store/pcSettings.ts";
import { adapterList } from "./store/records/adapters.ts";
import { readSpindle } from "./store/records/spindles.ts";
import { readWorks } from "./store/records/works.ts";

export type ServicesOptions = {
  readonly dataFile: string;
  readonly demo: boolean;
  readonly host: "electron" | "loopback";
  readonly hub: PushHub;
  readonly log: Log;
  readonly now: () => number;
  readonly version: string;
  readonly openOther: (demo: boolean) => Promise<ProgramView>;
};

export type Services = {
  readonly handlers: Handlers;
  readonly view: () => ProgramView;
  readonly close: () => Promise<void>;
};

/** Builds everything that works on one data file: store, jobs, bench, series, and the handlers over them. */
export async function buildServices(options: ServicesOptions): Promise<Services> {
  const { hub, log, now, demo } = options;
  const store = openStore({ path: options.dataFile, demo, now });
  const spoolFolder = join(dirname(options.dataFile), demo ? "spool-demo" : "spool");
  const plainWorks = worksOutOfTheBox(store.newId());
  const works = () => readWorks(store.db) ?? plainWorks;
  if (demo) await fillIfEmpty(store, now, options.version);

  const clock = systemClock;
  const ports = async () => withNamedPorts(await listPorts(), process.env.HOLDFAST_PORTS);
  const makeSource = sourceMaker(() => simulated.running);
  const newId = () => store.newId();
  const sayJob = (job: JobView) => hub.say(job.state === "running" ? "job.progressed" : "job.finished", job);
  const jobs = new Jobs({
    path: store.path,
    demo,
    newId: () => store.newId(),
    onChange: sayJob,
    onFault: (message, cause) => log.error(message, cause),
    workerFile: isBundled ? join(programRoot, "out", "main", "worker.js") : undefined,
  });
  store.whenLogGrows(() => jobs.quietly("checkpoint"));
  const search = new SettingSearch({ clock, makeSource, newId, onChange: sayJob });
  const simulated = new SimulatedGauge([]);
  let bench: Bench | undefined;
  const facts = (state: DraftState) =>
    factsOf(store.db, state, {
      works: works(),
      resolutionN: bench?.session?.status().resolutionN,
      today: today({ now }),
    });
  const series = new Series(
    {
      newId,
      form: (state) => form(state, facts(state)),
      save: (state) => {
        if (store.refusal === undefined)
          store.write((db) => saveDraft(db, { body: state, spoolPosition: 0, savedAtMs: now() }));
      },
      changed: (view) => hub.say("draft.changed", view),
      onlyAdapterFor: (spindleId) => onlyAdapterFor(store, spindleId),
      readOnly: () => store.refusal !== undefined,
    },
    loadState(store.db) ?? freshDraft(store.newId(), { gaugeId: undefined, operatorId: undefined }),
  );
  const undo = new Undo(now);
  bench = new Bench(
    {
      store,
      hub,
      log,
      simulated,
      search,
      session: { clock, makeSource, listPorts: ports, spoolFolder },
    },
    series,
  );
  await recoverInto(series, spoolFolder, log);

  const context: Context = {
    store,
    hub,
    bench,
    series,
    undo,
    accept: acceptor({
      store,
      series,
      bench,
      undo,
      hub,
      works,
      now,
      version: options.version,
      facts: () => facts(series.state),
    }),
    jobs,
    search,
    settings: PcSettingsFile.beside(options.dataFile),
    log,
    now,
    version: options.version,
    host: options.host,
    works,
    ports,
    openOther: options.openOther,
  };
  const opened = bench;
  return {
    handlers: {
      ...programHandlers(context),
      ...linkHandlers(context),
      ...seriesHandlers(context),
      ...registerHandlers(context),
      ...checkHandlers(context),
      ...trendHandlers(context),
      ...reportHandlers(context),
      ...roundHandlers(context),
      ...dockingHandlers(context, makeSource),
    },
    view: () => programView(context),
    close: async () => {
      await opened.close();
      search.close();
      await simulated.close();
      await jobs.close();
      store.close();
    },
  };
}

/** What stands before anybody has described the works: the rule that leaves undecided what is undecided. */
function worksOutOfTheBox(worksId: string): Works {
  return {
    worksId,
    name: "My works",
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    rule: { rule: "iso14253" },
    cautionDrop: 0.1,
    actDrop: 0.2,
    unitShown: "kN",
    intervalDays: 90,
  };
}

function onlyAdapterFor(store: ReturnType<typeof openStore>, spindleId: string): string | undefined {
  const taper = readSpindle(store.db, spindleId)?.spindle.taper;
  const fitting = adapterList(store.db).filter(
    (a) => a.state === "inUse" && taper !== undefined && sameTaper(a.taper, taper),
  );
  return fitting.length === 1 ? fitting[0]!.adapterId : undefined;
}

const sameTaper = (a: string, b: string) =>
  a.replace(/[\s-]/g, "").toUpperCase() === b.replace(/[\s-]/g, "").toUpperCase();
