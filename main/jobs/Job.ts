import type { z } from "zod";
import type { Db } from "../store/db.ts";
import type { Store } from "../store/Store.ts";

/** What a job may touch. It runs in a thread of its own. */
export type JobContext = {
  /** The data file. */
  readonly path: string;
  readonly demo: boolean;
  /** A read-only connection of its own. */
  readonly db: Db;
  /** Opens the data file for writing, for a job that says it `files`; closed with the job. The core answers `busy` while it writes. */
  readonly openStore: () => Store;
  /** Says how far it is; cheap, most calls are swallowed. */
  readonly progress: (done: number, total?: number) => void;
  /** To be called often: throws when the job is to end. */
  readonly goOn: () => void;
  /** Runs a part in a further thread and answers its result; it ends when this job does. */
  readonly fork: (name: string, args: unknown) => Promise<unknown>;
};

/** A kind of long work: one file in this folder that exports it as `job`, and a line in `registry.ts`. */
export type Job<A extends z.ZodType, R> = {
  readonly args: A;
  /** Whether it will want `openStore`. */
  readonly files?: true;
  /** The result must be plain data: it crosses to the core. */
  readonly run: (args: z.output<A>, context: JobContext) => R | Promise<R>;
};

/** A job as the registry holds it, whatever its arguments. */
export type AnyJob = {
  /** Absent in a part, whose arguments come from a job of ours. */
  readonly args?: z.ZodType;
  readonly files?: true;
  /** Its own schema has checked the arguments before they get here. */
  readonly run: (args: never, context: JobContext) => unknown;
};

export type JobLoaders = Readonly<Record<string, () => Promise<{ readonly job: AnyJob }>>>;

/** A part of a job, for `fork`: it starts with less to load, since its arguments need no checking. */
export const definePart = <A, R>(run: (args: A, context: JobContext) => R | Promise<R>) => ({ run });

/** Pairs schema and body for the compiler; nothing else. */
export const defineJob = <A extends z.ZodType, R>(job: Job<A, R>): Job<A, R> => job;
