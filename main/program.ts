import { dirname, join } from "node:path";
import type { Swapped } from "../app/contract/backupViews.ts";
import type { ProgramView } from "../app/contract/programViews.ts";
import { AppError } from "../app/contract/result.ts";
import { type Core, coreOf } from "./host/Core.ts";
import { PushHub } from "./host/PushHub.ts";
import type { Clock } from "./link/Clock.ts";
import { fileLog, type Log } from "./log.ts";
import { programVersion } from "./programVersion.ts";
import { putInPlace } from "./putInPlace.ts";
import { buildServices, type Services, type ServicesOptions } from "./services.ts";
import { forgetRestored } from "./store/copies/restoredFiles.ts";
import { dataFile } from "./store/dataFile.ts";

export type ProgramOptions = {
  readonly demo: boolean;
  readonly host: "electron" | "loopback";
  /** Another data file than this user's own. */
  readonly dataFile?: string | undefined;
  readonly now?: (() => number) | undefined;
  /** What timers run by. */
  readonly clock?: Clock | undefined;
};

export type Program = {
  readonly core: Core;
  readonly log: Log;
  /** The folder of data file, spool, log and settings. */
  readonly folder: string;
  readonly close: () => Promise<void>;
};

/** The whole program behind one door: a data file with its services, and the way to the demo's file and back. */
export async function openProgram(options: ProgramOptions): Promise<Program> {
  const now = options.now ?? Date.now;
  const first = options.dataFile ?? dataFile(options.demo);
  const folder = dirname(first);
  let names: Services["names"] = () => [];
  const log = fileLog(folder, now, () => names());
  forgetRestored(folder); // nobody decides on it any more
  const hub = new PushHub();
  const pathFor = (demo: boolean) =>
    demo === options.demo ? first : demo ? join(folder, "demo.sqlite") : dataFile(false);
  const open = (demo: boolean, kept?: ServicesOptions["kept"]): Promise<Services> =>
    buildServices({
      dataFile: pathFor(demo),
      demo,
      host: options.host,
      hub,
      log,
      now,
      version: programVersion,
      openOther: (other) => openOther(other),
      swap: (restored, operatorId) => swap(restored, operatorId),
      clock: options.clock,
      kept,
    });

  let services = await open(options.demo);
  names = () => services.names();
  let changing = false;
  /** While one file makes way for another, calls wait. */
  let between: Promise<void> = Promise.resolve();

  /** One change of the data file at a time. */
  async function change<T>(work: () => Promise<T>): Promise<T> {
    if (changing) throw new AppError("conflict", "Another data file is being opened just now. Try again.");
    changing = true;
    try {
      return await work();
    } finally {
      changing = false;
    }
  }

  const openOther = async (demo: boolean): Promise<ProgramView> => {
    if (changing || services.view().demo === demo) return services.view();
    return change(async () => {
      // The new file first: when it cannot be opened, the one in work stays.
      const opened = await open(demo);
      const before = services;
      services = opened;
      await before.close();
      hub.say("program.changed", services.view());
      return services.view();
    });
  };

  const swap = (restored: string, operatorId: string | undefined): Promise<Swapped> =>
    change(async () => {
      const { demo, readOnly, dataFile: path } = services.view();
      const placed = putInPlace({
        restored,
        dataFile: path,
        nowMs: now(),
        damaged: readOnly !== undefined,
        close: services.close,
        open: (kept) => open(demo, kept === undefined ? undefined : { file: kept, operatorId }),
      }).then((done) => {
        services = done.opened;
        return done;
      });
      between = placed.then(
        () => undefined,
        () => undefined,
      );
      const done = await placed;
      hub.say("program.changed", services.view());
      if (!("kept" in done)) throw done.cause;
      return { kept: done.kept };
    });

  return {
    core: coreOf(
      async () => {
        await between;
        return services.handlers;
      },
      hub,
      log,
    ),
    log,
    folder,
    close: () => services.close(),
  };
}
