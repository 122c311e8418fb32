import type { FleetView } from "../../app/contract/recordViews.ts";
import type { Jobs } from "../jobs/Jobs.ts";
import type { Store } from "../store/Store.ts";

type Parts = {
  readonly store: Pick<Store, "lastPlace">;
  readonly jobs: Pick<Jobs, "run">;
  readonly now: () => number;
  /** The works' own day. */
  readonly today: () => string;
};

/** All spindles ranked and with their due dates, worked out in a thread, and anew only when something was filed or a day has begun. */
export class FleetInFile {
  readonly #parts: Parts;
  #asked: { readonly place: number; readonly on: string; readonly view: Promise<FleetView> } | undefined;
  #last: FleetView | undefined;

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  /** What was worked out last, as it was then; undefined until the first time. */
  get last(): FleetView | undefined {
    return this.#last;
  }

  /** @throws  what the job ended with; the next one who asks has it tried again */
  view(): Promise<FleetView> {
    const { store, jobs, now, today } = this.#parts;
    const [place, on] = [store.lastPlace(), today()];
    if (this.#asked?.place === place && this.#asked.on === on) return this.#asked.view;
    const view = jobs.run("fleet", { nowMs: now() });
    this.#asked = { place, on, view };
    view.then(
      (found) => {
        this.#last = found;
      },
      () => {
        if (this.#asked?.view === view) this.#asked = undefined;
      },
    );
    return view;
  }
}
