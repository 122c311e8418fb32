import type { Handlers } from "../../app/contract/methods.ts";
import type { PcSettings, ProgramView, Snapshot } from "../../app/contract/programViews.ts";
import { pcSettings } from "../../app/contract/programViews.ts";
import { AppError } from "../../app/contract/result.ts";
import { damageFound } from "../jobs/IdleVerify.ts";
import { hasRegistered } from "../store/records/register.ts";
import type { Context } from "./Context.ts";

type Part = Pick<
  Handlers,
  | "state.snapshot"
  | "settings.save"
  | "program.openDemo"
  | "program.leaveDemo"
  | "records.verify"
  | "records.backup"
  | "job.stop"
>;

const plain: PcSettings = { theme: "system", language: "system", sound: true, initials: false };

/** The settings of this PC; what cannot be read there is as it is out of the box. */
export function readSettings(context: Pick<Context, "settings">): PcSettings {
  const read = pcSettings.partial().safeParse(pick(context.settings.read()));
  return { ...plain, ...(read.success ? read.data : {}) };
}

const pick = (all: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.keys(pcSettings.shape).flatMap((key) => (key in all ? [[key, all[key]]] : [])));

export function programView({ store, version, host, keptFile }: Context): ProgramView {
  return {
    version,
    demo: store.demo,
    dataFile: store.path,
    origin: store.origin,
    keptFile,
    readOnly: store.refusal?.message,
    damaged: store.refusal?.code === "damaged",
    empty: !hasRegistered(store.db, "spindle"),
    host,
  };
}

/** The program itself: one look at everything, settings of this PC, long work. */
export function programHandlers(context: Context): Part {
  const { hub, jobs, bench, series, search } = context;
  return {
    "state.snapshot": (): Snapshot => ({
      seq: hub.seq,
      program: programView(context),
      works: context.works(),
      settings: readSettings(context),
      link: bench.linkView(),
      live: bench.liveView(),
      draft: series.view,
      undo: context.undo.current,
      backup: context.backup.view,
      jobs: [...jobs.list(), ...(search.view === undefined ? [] : [search.view])],
    }),
    "settings.save": (part) => {
      context.settings.change(part);
      const settings = readSettings(context);
      hub.say("settings.changed", settings);
      if (part.initials !== undefined) hub.say("register.changed", { what: "operators" });
      return settings;
    },
    "program.openDemo": () => context.openOther(true),
    "program.leaveDemo": () => context.openOther(false),
    "records.verify": () => {
      const { jobId, ended } = jobs.begin("verify", {});
      ended.then(
        (report) => {
          if (report.damagedCount === 0 || context.store.refusal !== undefined) return;
          context.store.refuse("damaged", damageFound(report));
          hub.say("program.changed", programView(context));
        },
        () => {}, // `job.finished` tells why
      );
      return { jobId };
    },
    "records.backup": ({ folder }) => ({ jobId: jobs.start("backup", { folder }) }),
    "job.stop": ({ jobId }) => {
      if (!search.stop(jobId)) jobs.stop(jobId);
      const view = [...jobs.list(), search.view].find((job) => job?.jobId === jobId);
      if (view === undefined) throw new AppError("notFound", "This work has ended already.", { key: "noJob" });
      return view;
    },
  };
}
