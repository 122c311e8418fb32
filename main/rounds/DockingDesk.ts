import { setImmediate as nextTurn } from "node:timers/promises";
import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { DockingView } from "../../app/contract/roundViews.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Jobs } from "../jobs/Jobs.ts";
import type { Store } from "../store/Store.ts";
import { acceptDocking, type FiledDocking, filedBefore } from "./acceptDocking.ts";
import type { DockingRequest } from "./DockingWork.ts";
import { type PackedWork, unpackWork } from "./packWork.ts";

export type DockingDeskDeps = {
  readonly store: Store;
  readonly jobs: Pick<Jobs, "beginOwn">;
  readonly works: () => Works;
  readonly now: () => number;
  readonly version: string;
};

/** A docking in work: what was asked, and what came of it. Nothing of it is filed. */
export type OpenDocking = { readonly request: DockingRequest; readonly packed: PackedWork };

/** Dockings in work that are kept; an older one is read again from its file. */
const KEPT = 8;
/** Up to so many readings are filed at once; more would hold the core up, and a thread takes a while to start. */
const AT_ONCE = 300;

/**
 * Dockings in work. They are read and matched in a thread of their own, since a full memory takes seconds and the gauge at
 * the bench goes on sending; what was asked last of a docking counts, whichever answer comes first.
 */
export class DockingDesk {
  readonly #deps: DockingDeskDeps;
  readonly #asked = new Map<string, DockingRequest>();
  readonly #work = new Map<string, OpenDocking>();
  /** One filing after the other: the second of two looks at what the first has filed. */
  #filing: Promise<unknown> = Promise.resolve();

  constructor(deps: DockingDeskDeps) {
    this.#deps = deps;
  }

  /** @throws JobError  what reading ended with, `stopped` among it; what stood of this docking before stands on then */
  async read(request: DockingRequest): Promise<DockingView> {
    const { jobs, works, now } = this.#deps;
    const { dockingId } = request;
    const before = this.#asked.get(dockingId);
    this.#asked.set(dockingId, request);
    try {
      const packed = await jobs.beginOwn("docking", { request, works: works(), nowMs: now() }).ended;
      if (this.#asked.get(dockingId) === request) this.#keep({ request, packed });
      return packed.view;
    } catch (cause) {
      if (this.#asked.get(dockingId) === request) this.#goBack(dockingId, before);
      throw cause;
    }
  }

  /** @throws AppError  it is not kept any more, or not read yet */
  work(dockingId: string): OpenDocking {
    return this.#work.get(dockingId) ?? notOpen();
  }

  /** What was asked last of a docking, answered or not. */
  asked(dockingId: string): DockingRequest {
    return this.#asked.get(dockingId) ?? notOpen();
  }

  /**
   * Files what the page shows. A docking that is not kept any more may have been filed before: then that is the answer.
   * @throws AppError  what stands in the way, as `acceptDocking` says it
   */
  file(input: Parsed<"docking.accept">): Promise<FiledDocking> {
    const filing = this.#filing.then(() => this.#file(input));
    this.#filing = filing.catch(() => undefined);
    return filing;
  }

  async #file(input: Parsed<"docking.accept">): Promise<FiledDocking> {
    const { store, jobs, works, now, version } = this.#deps;
    const { dockingId } = input;
    const open = this.#work.get(dockingId);
    if (open === undefined) return filedBefore(store.db, dockingId) ?? notOpen();
    const { request, packed } = open;
    const facts = { works: works(), version };
    if (packed.view.takes.length <= AT_ONCE) {
      const filed = acceptDocking(input, unpackWork(packed, request), { ...facts, store, nowMs: now() });
      this.#forget(dockingId);
      return filed;
    }
    await nextTurn(); // checking a call of so many readings has taken its share of this one
    const ended = await jobs.beginOwn("dockingFiling", { input, request, bytes: packed.bytes, ...facts }).ended;
    if ("refused" in ended) throw new AppError(ended.refused.code, ended.refused.message, { ...ended.refused });
    this.#forget(dockingId);
    return ended.filed;
  }

  #forget(dockingId: string): void {
    this.#asked.delete(dockingId);
    this.#work.delete(dockingId);
  }

  #keep(work: OpenDocking): void {
    const { dockingId } = work.request;
    this.#work.delete(dockingId);
    this.#work.set(dockingId, work);
    for (const old of [...this.#work.keys()].slice(0, -KEPT)) this.#forget(old);
  }

  #goBack(dockingId: string, before: DockingRequest | undefined): void {
    if (before === undefined) this.#asked.delete(dockingId);
    else this.#asked.set(dockingId, before);
  }
}

function notOpen(): never {
  throw new AppError(
    "notFound",
    "This docking is not open any more. Read the memory or the file again; nothing is lost.",
    { key: "noDocking" },
  );
}
