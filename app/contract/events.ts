import type { BackupView } from "./backupViews.ts";
import type { LinkView } from "./linkViews.ts";
import type { JobView, PcSettings, ProgramView } from "./programViews.ts";
import type { ProofWatch, RunningProof } from "./proofViews.ts";
import type { CheckRow, SpindleRow } from "./recordViews.ts";
import type { RoundView } from "./roundViews.ts";
import type { CycleView, Draft, LiveView } from "./seriesViews.ts";

/**
 * A batch of live readings for figure and strip chart, already thinned to what a screen can show. Times in
 * seconds from the stream's start; reading numbers when no rate is known. `forceN` is net of zero.
 */
export type ReadingsBatch = {
  readonly t: readonly number[];
  readonly forceN: readonly number[];
  readonly timed: boolean;
  readonly live: LiveView;
};

/** Everything the core says unasked: `noun.pastTense`. */
export type Events = {
  "readings.arrived": ReadingsBatch;
  /** The first push after a page's token was taken: from here on it hears everything. Numbered like readings. */
  "page.joined": null;
  "link.changed": LinkView;
  "cycle.closed": { readonly seriesId: string; readonly cycle: CycleView };
  "draft.changed": Draft;
  "check.filed": { readonly row: CheckRow; readonly spindle: SpindleRow; readonly undoUntilMs: number };
  "spindle.changed": SpindleRow;
  /** A list has changed: the page asks for it again when it shows it. */
  "register.changed": { readonly what: "spindles" | "adapters" | "gauges" | "operators" | "works" | "patterns" };
  "round.changed": RoundView;
  /** A memory was filed: its spindles have said so themselves. */
  "docking.filed": { readonly dockingId: string; readonly checks: number };
  /** The proof in work; undefined when it was filed or discarded. */
  "proof.changed": { readonly proof: RunningProof | undefined };
  /** Steadiness and time left, a few times a second while a proof is read live. */
  "proof.watched": ProofWatch;
  /** What proofs stand on, or what was filed of them: a page asks again for what it shows. */
  "proofs.changed": {
    readonly what: "references" | "plans" | "tables" | "proofs" | "adjustments" | "marks";
    readonly gaugeId: string | undefined;
  };
  "backup.changed": BackupView;
  "settings.changed": PcSettings;
  "program.changed": ProgramView;
  "job.progressed": JobView;
  "job.finished": JobView;
};

export type EventName = keyof Events;
/**
 * Every push but readings (and `page.joined`) takes the next number, the same for all pages; a readings batch carries the number of the
 * last such push before it, since batches are thinned for each page. A page that has seen `n` and meets a
 * push over `n + 1`, or one of those two over `n`, has missed something and asks for `state.snapshot`.
 */
export type Push<E extends EventName = EventName> = {
  readonly seq: number;
  readonly event: E;
  readonly data: Events[E];
};
