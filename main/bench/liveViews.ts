import type { ReadingsBatch } from "../../app/contract/events.ts";
import type { LinkView } from "../../app/contract/linkViews.ts";
import type { LiveView } from "../../app/contract/seriesViews.ts";
import type { ReadingBatch } from "../../app/cycle/GaugeStream.ts";
import type { Session } from "../link/Session.ts";

/** What the screen shows of link and live force. */

const noLink: LinkView = {
  state: "closed",
  source: undefined,
  label: "",
  gaugeId: undefined,
  patternName: undefined,
  unit: undefined,
  rateHz: undefined,
  resolutionN: undefined,
  counters: { bytes: 0, lines: 0, readings: 0, rejected: 0, byReason: {} },
  problem: undefined,
  spoolTrimmed: false,
};

export function linkView(session: Session | undefined, patternName: string | undefined): LinkView {
  if (session === undefined) return noLink;
  const { state, source, label, unit, rateHz, resolutionN, counters, problem, spoolTrimmed } = session.status();
  const { bytes, lines, readings, rejected, byReason, lineRateHz } = counters;
  return {
    state,
    source,
    label,
    gaugeId: session.settings.gaugeId,
    patternName,
    unit,
    rateHz: rateHz ?? (lineRateHz || undefined), // 0: no line has come yet
    resolutionN,
    counters: { bytes, lines, readings, rejected, byReason },
    problem,
    spoolTrimmed,
  };
}

const noForce: LiveView = {
  forceN: undefined,
  word: "none",
  greatestN: undefined,
  zeroN: undefined,
  holdingS: undefined,
};

export function liveView(session: Session | undefined): LiveView {
  const live = session?.live;
  if (session === undefined || live === undefined) return noForce;
  const { state } = session.status();
  const { forceN, greatestN, zeroN, holdingS } = live;
  if (state === "silent") return { ...noForce, word: "silent", zeroN };
  if (state !== "open") return { ...noForce, zeroN };
  return { word: live.word, forceN, greatestN, zeroN, holdingS };
}

/** A batch for figure and strip chart. Overload stands as a break: places without a force are left out. */
export function readingsBatch(session: Session, { fromIndex, n, forcesN, timesS }: ReadingBatch): ReadingsBatch {
  const live = liveView(session);
  const zeroN = live.zeroN ?? 0;
  const timed = n > 0 && Number.isFinite(timesS[0]);
  const t: number[] = [];
  const forceN: number[] = [];
  for (let i = 0; i < n; i += 1) {
    const force = forcesN[i]!;
    if (!Number.isFinite(force)) continue;
    t.push(timed ? timesS[i]! : fromIndex + i);
    forceN.push(force - zeroN);
  }
  return { t, forceN, timed, live };
}
