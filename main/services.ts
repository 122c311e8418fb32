import { dirname, join } from "node:path";
import type { Swapped } from "../app/contract/backupViews.ts";
import type { Handlers } from "../app/contract/methods.ts";
import type { JobView, ProgramView } from "../app/contract/programViews.ts";
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
import { FleetInFile } from "./fleet/FleetInFile.ts";
import { allHandlers } from "./handlers/allHandlers.ts";
import type { Context } from "./handlers/Context.ts";
import { programView } from "./handlers/program.ts";
import { today } from "./handlers/today.ts";
import type { PushHub } from "./host/PushHub.ts";
import { BackupChoiceFile } from "./jobs/BackupChoiceFile.ts";
import { Jobs } from "./jobs/Jobs.ts";
import { startUpkeep } from "./jobs/upkeep.ts";
import { type Clock, systemClock } from "./link/Clock.ts";
import { sourceMaker } from "./link/makeSource.ts";
import { withNamedPorts } from "./link/namedPorts.ts";
import { listPorts } from "./link/ports.ts";
import type { Log } from "./log.ts";
import { guarded } from "./people/guarded.ts";
import { People } from "./people/People.ts";
import { restoredAct } from "./people/restoredAct.ts";
import { isBundled, programRoot } from "./programRoot.ts";
import { ProofDesk } from "./proofs/ProofDesk.ts";
import { DemoRound } from "./rounds/DemoRound.ts";
import { RoundLead } from "./rounds/RoundLead.ts";
import { adapterOfStop } from "./rounds/roundRecords.ts";
import { worksDay } from "./rounds/worksDay.ts";
import { saveDraft } from "./store/draft.ts";
import { openStore } from "./store/open.ts";
import { PcSettingsFile } from "./store/pcSettings.ts";
import { adapterList } from "./store/records/adapters.ts";
import { readSpindle } from "./store/records/spindles.ts";
import { readWorks } from "./store/records/works.ts";
import { namesIn } from "./support/supportFiles.ts";
import { worksOutOfTheBox } from "./worksOutOfTheBox.ts";

export type ServicesOptions = {
  readonly dataFile: string;
  readonly demo: boolean;
  readonly host: "electron" | "loopback";
  readonly hub: PushHub;
  readonly log: Log;
  readonly now: () => number;
  readonly version: string;
  readonly openOther: (demo: boolean) => Promise<ProgramView>;
  readonly swap: (restored: string, operatorId: string | undefined) => Promise<Swapped>;
  /** This file has just been restored: where the one before it lies. */
  readonly kept?: { readonly file: string; readonly operatorId: string | undefined } | undefined;
  /** What timers run by; the machine's own unless a test turns the hands. */
  readonly clock?: Clock | undefined;
};

export type Services = {
  readonly handlers: Handlers;
  readonly view: () => ProgramView;
  /** Names of people in this file, which no log may hold. */
  readonly names: () => readonly string[];
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

  const clock = options.clock ?? systemClock;
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
  const simulated = new SimulatedGauge([...simulatedMemory, "--reference", "0"]);
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
      adapterFor: (spindleId) =>
        adapterOfStop(store.db, series.state.roundId, spindleId) ?? onlyAdapterFor(store, spindleId),
      readOnly: () => store.refusal !== undefined,
    },
    loadState(store.db) ?? freshDraft(store.newId(), { gaugeId: undefined, operatorId: undefined }),
  );
  const tagged = () => series.state.tag.operatorId;
  const people = new People({ db: store.db, tagged, monotonicMs: () => clock.monotonicMs() });
  const undo = new Undo(now);
  const demoRound = new DemoRound({ store, simulated, works, now, hub });
  const lead = new RoundLead({ store, series, hub, works, now });
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
  const desk = new ProofDesk({
    store,
    hub,
    now,
    today: () => worksDay(now(), works().timeZone),
    session: {
      clock,
      makeSource: sourceMaker(() => simulated.running, "reference"),
      listPorts: ports,
      spoolFolder: `${spoolFolder}-reference`,
      onFault: (cause) => log.error("the reference's link", cause),
    },
    startSimulator: () => simulated.start(),
    gauge: () => {
      const status = bench?.session?.status();
      const gaugeId = bench?.session?.settings.gaugeId;
      return { state: status?.state ?? "closed", resolutionN: status?.resolutionN, unit: status?.unit, gaugeId };
    },
    seriesHasCycles: () => series.state.cycles.length > 0,
    seriesGoesOn: () => {
      series.begin(series.state.tag);
      bench?.followInto(series);
    },
  });
  bench.listen(desk);
  // What the spool holds since then are loads of the proof in work.
  if (!desk.isLive) await recoverInto(series, spoolFolder, log);

  const settings = PcSettingsFile.beside(options.dataFile);
  const backupChoice = new BackupChoiceFile(settings);
  const upkeep = startUpkeep({
    store,
    jobs,
    clock,
    now,
    log,
    choice: () => backupChoice.current,
    onBackup: (view) => hub.say("backup.changed", view),
    onDamage: () => hub.say("program.changed", programView(context)),
  });
  const context: Context = {
    store,
    hub,
    bench,
    series,
    undo,
    lead,
    accept: acceptor({
      store,
      series,
      bench,
      undo,
      lead,
      hub,
      works,
      now,
      version: options.version,
      facts: () => facts(series.state),
    }),
    people,
    jobs,
    fleet: new FleetInFile({ store, jobs, now, today: () => worksDay(now(), works().timeZone) }),
    search,
    backup: upkeep.backup,
    backupChoice,
    settings,
    log,
    now,
    version: options.version,
    host: options.host,
    works,
    ports,
    openOther: options.openOther,
    swap: options.swap,
    keptFile: options.kept?.file,
  };
  const opened = bench;
  if (options.kept !== undefined && store.refusal === undefined) store.append([restoredAct(options.kept)]);
  return {
    handlers: guarded(allHandlers(context, { desk, makeSource, demoRound }), people, { db: store.db, works, tagged }),
    view: () => programView(context),
    names: () => namesIn(store.db),
    close: async () => {
      upkeep.stop();
      await desk.close();
      await opened.close();
      search.close();
      await simulated.close();
      await jobs.close();
      store.close();
    },
  };
}

/** The simulated gauge keeps readings, and its clock is wrong as clocks of gauges are. */
const simulatedMemory = ["--memory", "200", "--dump-format", "list", "--clock-offset", "4380", "--clock-drift", "3"];

function onlyAdapterFor(store: ReturnType<typeof openStore>, spindleId: string): string | undefined {
  const taper = readSpindle(store.db, spindleId)?.spindle.taper;
  const fitting = adapterList(store.db).filter(
    (a) => a.state === "inUse" && taper !== undefined && sameTaper(a.taper, taper),
  );
  return fitting.length === 1 ? fitting[0]!.adapterId : undefined;
}

const sameTaper = (a: string, b: string) =>
  a.replace(/[\s-]/g, "").toUpperCase() === b.replace(/[\s-]/g, "").toUpperCase();
