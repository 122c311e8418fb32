import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { EventName, Push } from "../../app/contract/events.ts";
import type { Input, MethodName, Output } from "../../app/contract/methods.ts";
import type { Result } from "../../app/contract/result.ts";
import { PageFeed } from "../../main/host/PageFeed.ts";
import type { Clock } from "../../main/link/Clock.ts";
import { openProgram, type Program } from "../../main/program.ts";

/** The whole core without a host, on a data file in a folder of its own; every push is noted. */
export type CoreInTemp = {
  readonly folder: string;
  readonly dataFile: string;
  readonly program: Program;
  readonly pushes: readonly Push[];
  /** The value; a failure is thrown as an `Error` whose `failure` it is. */
  readonly call: <M extends MethodName>(name: M, input?: Input<M>) => Promise<Output<M>>;
  readonly heard: (event: EventName) => number;
  readonly close: () => Promise<void>;
};

export async function coreInTemp(
  options: { folder?: string; now?: () => number; demo?: boolean; clock?: Clock } = {},
): Promise<CoreInTemp> {
  const folder = options.folder ?? mkdtempSync(join(tmpdir(), "holdfast-core-"));
  const dataFile = join(folder, options.demo === true ? "demo.sqlite" : "holdfast.sqlite");
  const program = await openProgram({
    demo: options.demo === true,
    host: "loopback",
    dataFile,
    now: options.now,
    clock: options.clock,
  });
  const pushes: Push[] = [];
  const feed = new PageFeed((push) => pushes.push(push), {
    now: () => performance.now(),
    later: () => () => undefined,
  });
  program.core.hub.join(feed);
  return {
    folder,
    dataFile,
    program,
    pushes,
    heard: (event) => pushes.filter((push) => push.event === event).length,
    call: async <M extends MethodName>(name: M, input?: Input<M>) => {
      const result = (await program.core.call(name, input ?? {})) as Result<Output<M>>; // what its handler answers
      if (!result.ok)
        throw Object.assign(new Error(`${name}: ${result.error.code}: ${result.error.message}`), {
          failure: result.error,
        });
      return result.value;
    },
    close: async () => {
      await program.close();
      if (options.folder === undefined) rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** A works with one spindle, one adapter that fits it and one gauge. */
export async function smallWorks(core: Pick<CoreInTemp, "call">) {
  const limits = { minimumN: 14_400, warningN: 15_300, nominalN: 18_000, maximumN: 20_000 };
  const spindle = await core.call("spindles.save", {
    name: "Mill 3",
    machine: "Mill 3",
    area: "hall B",
    taper: "HSK-A63",
    limits,
    state: "inUse",
  });
  const adapter = await core.call("adapters.save", {
    name: "A63-2",
    taper: "HSK-A 63",
    scale: 1,
    scaleUncertainty: 0.001,
    assumed: false,
    version: 1,
    state: "inUse",
  });
  const gauge = await core.call("gauges.save", { name: "Gauge 1", capacityN: 30_000, state: "inUse" });
  return { spindleId: spindle.spindle.spindleId, adapterId: adapter.adapter.adapterId, gaugeId: gauge.gauge.gaugeId };
}

/** Types a value in and files it: the shortest way to a check. */
export async function fileTyped(
  core: Pick<CoreInTemp, "call">,
  spindleId: string,
  text: string,
  reason: "routine" | "afterService" = "routine",
) {
  const { seriesId } = (await core.call("state.snapshot")).draft;
  await core.call("series.tag", { seriesId, spindleId });
  await core.call("series.describe", { seriesId, reason });
  await core.call("series.type", { seriesId, text });
  return core.call("series.accept", { seriesId, spindleId });
}
