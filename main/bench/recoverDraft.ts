import { recover } from "../link/recover.ts";
import type { Log } from "../log.ts";
import type { Db } from "../store/db.ts";
import { loadDraft } from "../store/draft.ts";
import { encodeWaveform } from "../store/waveform.ts";
import type { DraftState } from "./DraftState.ts";
import { packable } from "./packable.ts";
import type { Series } from "./Series.ts";

/** The series that was in work when the program stopped, as the store kept it. JSON drops what is undefined, and reading it gives the same. */
export function loadState(db: Db): DraftState | undefined {
  const saved = loadDraft(db);
  return saved === undefined ? undefined : (saved.body as DraftState); // written by `saveDraft` from a DraftState
}

/**
 * Replays the spools of the sessions that fed the series: cycles that had closed get their readings back, one that was
 * in work is offered as cut. The same bytes give the same cycles, so nothing stands twice.
 */
export async function recoverInto(series: Series, spoolFolder: string, log: Log): Promise<void> {
  const { sessions } = series.state;
  for (const { sessionId } of sessions) {
    try {
      const recovered = await recover(spoolFolder, sessionId);
      for (const { cycle, waveform } of recovered?.cycles ?? []) {
        series.addCycle(sessionId, cycle, (cycleId) => encodeWaveform(cycleId, packable(waveform)));
      }
    } catch (cause) {
      log.error("a spool could not be replayed", cause); // the cycles the draft itself keeps are still offered
    }
  }
  series.markRecovered();
}
