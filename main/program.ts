import { dirname, join } from "node:path";
import type { ProgramView } from "../app/contract/programViews.ts";
import { type Core, coreOf } from "./host/Core.ts";
import { PushHub } from "./host/PushHub.ts";
import { fileLog, type Log } from "./log.ts";
import { programVersion } from "./programVersion.ts";
import { buildServices, type Services } from "./services.ts";
import { dataFile } from "./store/dataFile.ts";

export type ProgramOptions = {
  readonly demo: boolean;
  readonly host: "electron" | "loopback";
  /** Another data file than this user's own. */
  readonly dataFile?: string | undefined;
  readonly now?: () => number;
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
  const log = fileLog(folder, now);
  const hub = new PushHub();
  const pathFor = (demo: boolean) =>
    demo === options.demo ? first : demo ? join(folder, "demo.sqlite") : dataFile(false);
  const open = (demo: boolean): Promise<Services> =>
    buildServices({
      dataFile: pathFor(demo),
      demo,
      host: options.host,
      hub,
      log,
      now,
      version: programVersion,
      openOther,
    });

  let services = await open(options.demo);
  let changing = false;

  async function openOther(demo: boolean): Promise<ProgramView> {
    if (changing || services.view().demo === demo) return services.view();
    changing = true;
    try {
      // The new file first: when it cannot be opened, the one in work stays.
      const next = await open(demo);
      const before = services;
      services = next;
      await before.close();
      hub.say("program.changed", services.view());
      return services.view();
    } finally {
      changing = false;
    }
  }

  return {
    core: coreOf(() => services.handlers, hub, log),
    log,
    folder,
    close: () => services.close(),
  };
}
