import { parentPort, workerData } from "node:worker_threads";
import { faultOf } from "../store/faults.ts";
import { openReader } from "../store/openReader.ts";
import type { Store } from "../store/Store.ts";
import type { AnyJob, JobContext, JobLoaders } from "./Job.ts";
import { JobError } from "./JobError.ts";
import type { JobMessage, JobOrder } from "./messages.ts";
import { startWorker } from "./startWorker.ts";
import { stepBack } from "./stepBack.ts";

/** At most so often is progress sent on. */
const PROGRESS_MS = 100;

/**
 * The whole of a worker's life: opens its own read-only connection, runs the job ordered, says how it ended.
 * @param self  the worker's file, for parts in further threads
 */
export async function runOrder(loaders: JobLoaders, self: string): Promise<void> {
  const order = workerData as JobOrder; // `startWorker` made it
  stepBack();
  const say = (message: JobMessage) => parentPort?.postMessage(message);
  try {
    say({ say: "done", result: await run(loaders, order, self, say) });
  } catch (cause) {
    say(failureOf(order.name, cause));
  }
}

async function run(loaders: JobLoaders, order: JobOrder, self: string, say: (m: JobMessage) => void): Promise<unknown> {
  const load = Object.hasOwn(loaders, order.name) ? loaders[order.name] : undefined;
  if (load === undefined) throw new JobError("badRequest", `there is no job ${order.name}`);
  const { job } = await load();
  const args = await checkedArgs(job, order.args);
  // Loaded only where it is wanted: a part should be at work soon.
  const writing = job.files === true ? await import("../store/open.ts") : undefined;
  const db = openReader(order.path);
  const opened: Store[] = [];
  const openStore = () => {
    if (writing === undefined) throw new TypeError(`job ${order.name} does not say that it files`);
    opened.push(writing.openStoreBeside({ path: order.path, demo: order.demo, now: Date.now }));
    return opened.at(-1)!;
  };
  try {
    return await job.run(args as never, { ...contextOf(order, self, say), db, openStore });
  } finally {
    for (const store of opened) store.close();
    db.close();
  }
}

async function checkedArgs(job: AnyJob, given: unknown): Promise<unknown> {
  const args = job.args?.safeParse(given);
  if (args === undefined) return given;
  if (args.success) return args.data;
  const { prettifyError } = await import("zod");
  throw new JobError("badRequest", prettifyError(args.error));
}

function contextOf(order: JobOrder, self: string, say: (m: JobMessage) => void): Omit<JobContext, "db" | "openStore"> {
  const stop = new Int32Array(order.stop);
  let saidAtMs = Number.NEGATIVE_INFINITY;
  return {
    path: order.path,
    demo: order.demo,
    progress: (done, total) => {
      const nowMs = performance.now();
      if (nowMs - saidAtMs < PROGRESS_MS) return;
      saidAtMs = nowMs;
      say({ say: "progress", done, total });
    },
    goOn: () => {
      if (Atomics.load(stop, 0) !== 0) throw new JobError("stopped", "Stopped.");
    },
    fork: (name, args) => startWorker(self, { ...order, name, args }, () => {}),
  };
}

function failureOf(name: string, cause: unknown): JobMessage {
  const trace = cause instanceof Error ? (cause.stack ?? cause.message) : String(cause);
  if (cause instanceof JobError) return { say: "failed", code: cause.code, message: cause.message, trace };
  const fault = faultOf(cause);
  const message = fault === undefined ? `${name} failed; see the log` : (cause as Error).message;
  return { say: "failed", code: fault ?? "internal", message, trace };
}
