import type { PushHub } from "../host/PushHub.ts";
import type { Session } from "../link/Session.ts";
import type { SessionReceiver } from "../link/SessionTypes.ts";
import { encodeWaveform } from "../store/waveform.ts";
import type { BenchEar } from "./BenchEar.ts";
import { readingsBatch } from "./liveViews.ts";
import { packable } from "./packable.ts";
import type { Series } from "./Series.ts";
import { toCycleView } from "./toDraftView.ts";

/** Who is told what a session brings. */
export type SessionHearers = {
  readonly hub: PushHub;
  /** The series in work, which takes the cycles. */
  readonly series: Series;
  /** Who hears the gauge too; undefined: nobody. */
  readonly ear: () => BenchEar | undefined;
  readonly changed: () => void;
};

/** What the connected gauge's session brings: readings to the pages, cycles into the series, gaps to all who listen. */
export function hearSession(session: () => Session, { hub, series, ear, changed }: SessionHearers): SessionReceiver {
  return {
    changed,
    readings: (batch) => {
      hub.readings(readingsBatch(session(), batch));
      ear()?.heard(batch);
    },
    cycle: (cycle, waveform) => {
      if (ear()?.isLive === true) return; // a load of a proof
      const { sessionId } = session().settings;
      const added = series.addCycle(sessionId, cycle, (cycleId) => encodeWaveform(cycleId, packable(waveform)));
      if (added === undefined) return;
      const { seriesId, cycles } = series.state;
      const number = cycles.findIndex((c) => c.cycleId === added.cycleId) + 1;
      hub.say("cycle.closed", { seriesId, cycle: toCycleView(added.cycleId, number, cycle, undefined) });
    },
    gap: (atS) => {
      series.gap(session().settings.sessionId, atS);
      ear()?.gaugeCut("lost");
    },
  };
}
