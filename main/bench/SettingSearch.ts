import type { SerialSetting } from "../../app/contract/linkViews.ts";
import type { JobView } from "../../app/contract/programViews.ts";
import type { Clock } from "../link/Clock.ts";
import { findSetting } from "../link/findSetting.ts";
import { LinkError } from "../link/LinkProblem.ts";
import type { LinkDeps } from "../link/LiveLink.ts";

export type SettingSearchDeps = {
  readonly clock: Clock;
  readonly makeSource: LinkDeps["makeSource"];
  readonly newId: () => string;
  readonly onChange: (job: JobView) => void;
};

/** Listening through a port's settings: long, can be stopped, and told like a job, though it waits rather than works. */
export class SettingSearch {
  readonly #deps: SettingSearchDeps;
  #view: JobView | undefined;
  #stop: AbortController | undefined;

  constructor(deps: SettingSearchDeps) {
    this.#deps = deps;
  }

  get view(): JobView | undefined {
    return this.#view;
  }

  /** Starts it, ending one that runs; what becomes of it comes by `onChange`. */
  start(path: string): { readonly jobId: string } {
    this.#stop?.abort();
    const stop = new AbortController();
    this.#stop = stop;
    const jobId = this.#deps.newId();
    const say = (part: Partial<JobView>) => {
      const blank: JobView = {
        jobId,
        what: "findSetting",
        done: 0,
        total: undefined,
        state: "running",
        message: undefined,
        result: undefined,
      };
      this.#view = { ...(this.#view?.jobId === jobId ? this.#view : blank), ...part };
      this.#deps.onChange(this.#view);
    };
    say({});
    void this.#search(path, stop.signal, say);
    return { jobId };
  }

  stop(jobId: string): boolean {
    if (this.#view?.jobId !== jobId || this.#view.state !== "running") return false;
    this.#stop?.abort();
    return true;
  }

  close(): void {
    this.#stop?.abort();
  }

  async #search(path: string, signal: AbortSignal, say: (part: Partial<JobView>) => void): Promise<void> {
    const { clock, makeSource } = this.#deps;
    try {
      const found = await findSetting({
        clock,
        signal,
        makeSource: (setting: SerialSetting) => makeSource({ kind: "serial", path, setting }),
        onProgress: ({ done, total, setting }) => say({ done, total, result: setting }),
      });
      if (found.kind === "found") say({ state: "finished", result: found.setting });
      else say({ state: "failed", result: undefined, message: words[found.kind] });
    } catch (cause) {
      const aborted = signal.aborted || (cause instanceof LinkError && cause.code === "aborted");
      say({ state: aborted ? "stopped" : "failed", message: cause instanceof Error ? cause.message : String(cause) });
    }
  }
}

const words = {
  silent:
    "Nothing came from this port. Is the gauge on, and the right port chosen? A gauge that sends on a key or on request must be made to send.",
  unclear:
    "Something comes from this port, but under no setting does it read as lines. Look up the gauge's setting and choose it by hand.",
} as const;
