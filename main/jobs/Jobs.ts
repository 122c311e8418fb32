import { join } from "node:path";
import type { z } from "zod";
import type { JobView } from "../../app/contract/programViews.ts";
import { JobError } from "./JobError.ts";
import type { JobName, registry } from "./registry.ts";
import { startWorker } from "./startWorker.ts";

type Loaded<N extends JobName> = Awaited<ReturnType<(typeof registry)[N]>>["job"];
export type JobArgs<N extends JobName> =
  Loaded<N> extends { readonly args: infer A extends z.ZodType } ? z.input<A> : never;
export type JobResult<N extends JobName> = Awaited<ReturnType<Loaded<N>["run"]>>;

export type JobsOptions = {
  /** The data file the jobs read. */
  readonly path: string;
  readonly demo: boolean;
  readonly newId: () => string;
  /** The worker's file; a bundled program hands in where its own lies. */
  readonly workerFile?: URL | string;
  /** A job has got further, or ended (`state` other than `running`). */
  readonly onChange: (job: JobView) => void;
  /** Where causes go. */
  readonly onFault?: (message: string, cause: unknown) => void;
};

/** How many ended jobs are remembered for pages that come later. */
const REMEMBERED = 20;

/** Runs long work in threads with read-only connections of their own, so that the core goes on listening. */
export class Jobs {
  readonly #options: JobsOptions;
  readonly #views = new Map<string, JobView>();
  readonly #quiet = new Map<string, Promise<unknown>>();
  readonly #running = new Map<string, { stop: Int32Array; ended: Promise<unknown> }>();

  constructor(options: JobsOptions) {
    this.#options = options;
  }

  /** Starts a job and answers its id at once; what becomes of it comes by `onChange`. */
  start<N extends JobName>(name: N, args: JobArgs<N>): string {
    return this.#begin(name, args).jobId;
  }

  /** The same for a caller who goes on with the result. */
  begin<N extends JobName>(
    name: N,
    args: JobArgs<N>,
  ): { readonly jobId: string; readonly ended: Promise<JobResult<N>> } {
    const { jobId, ended } = this.#begin(name, args);
    return { jobId, ended: ended as Promise<JobResult<N>> }; // the registry pairs name and result
  }

  /**
   * Starts a job and waits for its result: for the command line, and for work that follows other work.
   * @throws JobError  what it ended with
   */
  async run<N extends JobName>(name: N, args: JobArgs<N>, signal?: AbortSignal): Promise<JobResult<N>> {
    const { jobId, ended } = this.#begin(name, args);
    const stop = () => this.stop(jobId);
    if (signal?.aborted) stop();
    signal?.addEventListener("abort", stop, { once: true });
    try {
      return (await ended) as JobResult<N>; // the registry pairs name and result
    } finally {
      signal?.removeEventListener("abort", stop);
    }
  }

  /** Begins work whose result is for its caller alone: pages hear how far it is, and that it has ended, not what came of it. */
  beginOwn<N extends JobName>(
    name: N,
    args: JobArgs<N>,
  ): { readonly jobId: string; readonly ended: Promise<JobResult<N>> } {
    const { jobId, ended } = this.#begin(name, args, "own");
    return { jobId, ended: ended as Promise<JobResult<N>> }; // the registry pairs name and result
  }

  /**
   * Housekeeping in a thread, which no page hears of; one at a time of each name. A failure goes to the log: whatever
   * it was for will be asked for again.
   */
  quietly(name: "checkpoint"): void {
    if (this.#quiet.has(name)) return;
    const { path, demo, onFault } = this.#options;
    const stop = new SharedArrayBuffer(4);
    const ended = startWorker(this.#workerFile, { name, args: {}, path, demo, stop }, () => {})
      .catch((cause) => onFault?.(`job ${name} failed`, cause))
      .finally(() => this.#quiet.delete(name));
    this.#quiet.set(name, ended);
  }

  /** Asks a job to end; it does so at its next step. Answers whether there was one to ask. */
  stop(jobId: string): boolean {
    const job = this.#running.get(jobId);
    if (job !== undefined) Atomics.store(job.stop, 0, 1);
    return job !== undefined;
  }

  /** Running jobs and the last ended ones, oldest first. */
  list(): JobView[] {
    return [...this.#views.values()];
  }

  /** Stops all jobs and waits until they have ended. */
  async close(): Promise<void> {
    for (const jobId of this.#running.keys()) this.stop(jobId);
    await Promise.allSettled([...this.#quiet.values(), ...[...this.#running.values()].map((job) => job.ended)]);
  }

  get #workerFile(): URL | string {
    return this.#options.workerFile ?? join(import.meta.dirname, "worker.ts");
  }

  #begin(name: JobName, args: unknown, whose: "all" | "own" = "all"): { jobId: string; ended: Promise<unknown> } {
    const { path, demo, newId } = this.#options;
    const jobId = newId();
    const stop = new SharedArrayBuffer(4);
    this.#change({
      jobId,
      what: name,
      done: 0,
      total: undefined,
      state: "running",
      message: undefined,
      result: undefined,
    });
    const ended = startWorker(this.#workerFile, { name, args, path, demo, stop }, (done, total) =>
      this.#change({ ...this.#views.get(jobId)!, done, total }),
    );
    this.#running.set(jobId, { stop: new Int32Array(stop), ended });
    void this.#follow(jobId, ended, whose);
    return { jobId, ended };
  }

  async #follow(jobId: string, ended: Promise<unknown>, whose: "all" | "own"): Promise<void> {
    try {
      const result = await ended;
      this.#end(jobId, { state: "finished", result: whose === "all" ? result : undefined });
    } catch (cause) {
      const fault = cause instanceof JobError ? cause : new JobError("internal", "It failed; see the log.", cause);
      if (fault.code === "internal") this.#options.onFault?.(`job ${this.#views.get(jobId)?.what} failed`, fault);
      this.#end(jobId, { state: fault.code === "stopped" ? "stopped" : "failed", message: fault.message });
    }
  }

  #end(jobId: string, how: Partial<JobView>): void {
    this.#running.delete(jobId);
    this.#change({ ...this.#views.get(jobId)!, ...how });
    const over = [...this.#views.values()].filter((view) => view.state !== "running");
    for (const view of over.slice(0, -REMEMBERED)) this.#views.delete(view.jobId);
  }

  #change(view: JobView): void {
    this.#views.set(view.jobId, view);
    this.#options.onChange(view);
  }
}
