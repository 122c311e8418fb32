import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { RoundView } from "../../app/contract/roundViews.ts";
import type { Draft } from "../../app/contract/seriesViews.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Round } from "../../app/ledger/round.ts";
import { nextStop } from "../../app/round/lead/nextStop.ts";
import type { LedTo } from "../bench/DraftState.ts";
import type { Series } from "../bench/Series.ts";
import type { PushHub } from "../host/PushHub.ts";
import type { EntryDraft, Store } from "../store/Store.ts";
import { isSettled } from "./isSettled.ts";
import { readRound } from "./roundRecords.ts";
import { toRoundView } from "./toRoundView.ts";
import { worksDay } from "./worksDay.ts";

export type RoundLeadDeps = {
  readonly store: Store;
  readonly series: Series;
  readonly hub: PushHub;
  readonly works: () => Works;
  readonly now: () => number;
};

/**
 * A round in hand leads the series in work from stop to stop: it tags spindle and adapter, and after each filing the next
 * ones. Which round it is stands in the draft and survives a restart; what became of its stops stands in the ledger.
 */
export class RoundLead {
  readonly #deps: RoundLeadDeps;

  constructor(deps: RoundLeadDeps) {
    this.#deps = deps;
  }

  /** @throws AppError  no such round, one that has ended, or a series that is not filed yet */
  take(roundId: string): Draft {
    const { store, works, now } = this.#deps;
    const round = readRound(store.db, roundId);
    if (round === undefined)
      throw new AppError("notFound", "There is no such round in this data file.", { key: "noRound" });
    if (round.state !== "open")
      throw new AppError("conflict", "This round has ended. Make a new one.", { key: "roundEnded" });
    this.#refuseInWork();
    const today = worksDay(now(), works().timeZone);
    // Walked before its day: a check of today would not count for it otherwise.
    if (round.on > today) this.#file({ ...round, on: today });
    const proposed = { gaugeId: round.gaugeId ?? undefined, operatorId: round.operatorId ?? undefined };
    return this.#deps.series.lead({ ...this.#next(roundId, undefined, undefined)!, proposed }); // it was just found
  }

  putAway(): Draft {
    const { series } = this.#deps;
    if (series.state.roundId === undefined) return series.view;
    this.#refuseInWork();
    return series.lead(undefined);
  }

  /** A round that was ended or cancelled leads no more; what is measured already keeps its tag. */
  forget(roundId: string): void {
    const { series } = this.#deps;
    const { tag, ...state } = series.state;
    if (state.roundId !== roundId) return;
    const kept = inWork(series) ? tag : { spindleId: undefined, adapterId: undefined };
    series.lead({ ...kept, roundId: undefined, adapterBefore: undefined });
  }

  /** @throws AppError  another round is in hand, the spindle is none of it, or its series is not filed yet */
  pass({ roundId, spindleId, as, why }: Parsed<"rounds.pass">): Draft {
    const { store, series, now, works } = this.#deps;
    const round = readRound(store.db, roundId);
    if (round === undefined || series.state.roundId !== roundId)
      throw new AppError("conflict", "Another round is in hand now. Look at what is shown.", { key: "otherRound" });
    this.#refuseInWork();
    if (series.state.tag.spindleId !== spindleId) throw goneOn();
    if (!round.stops.some((stop) => stop.spindleId === spindleId))
      throw new AppError("invalid", "This spindle is no stop of the round.", { key: "noStopOfRound" });
    const passed = { as, why, at: new Date(now()).toISOString() };
    const said: Round = {
      ...round,
      stops: round.stops.map((stop) => (stop.spindleId === spindleId ? { ...stop, passed } : stop)),
    };
    const over = said.state === "open" && isSettled(store.db, said, works(), new Set());
    this.#file(over ? { ...said, state: "done" } : said);
    return series.lead(this.#next(roundId, spindleId, series.state.adapterBefore));
  }

  /** The round a check of the series in work belongs to: none when its spindle is no stop of the one in hand. */
  roundOfCheck(): Round | undefined {
    const { roundId, tag } = this.#deps.series.state;
    const round = roundId === undefined ? undefined : readRound(this.#deps.store.db, roundId);
    return round?.stops.some((stop) => stop.spindleId === tag.spindleId) === true ? round : undefined;
  }

  /** What goes into the ledger beside a check of this spindle: the round as done when nothing of it is left. */
  closing(spindleId: string): readonly EntryDraft[] {
    const { store, works } = this.#deps;
    const round = this.roundOfCheck();
    if (round?.state !== "open" || !isSettled(store.db, round, works(), new Set([spindleId]))) return [];
    return [{ kind: "round", body: { ...round, state: "done" } }];
  }

  /** Where the round in hand leads after the series in work was filed. */
  after(): LedTo | undefined {
    const { roundId, tag, adapterBefore } = this.#deps.series.state;
    if (roundId === undefined) return undefined;
    const ofRound = this.roundOfCheck() !== undefined;
    return this.#next(roundId, tag.spindleId, ofRound ? tag.adapterId : adapterBefore);
  }

  /** A check was taken back: its stop is open again, and the round goes back to it when nothing new is measured yet. */
  undone(spindleId: string): void {
    const { store, series, works } = this.#deps;
    const { roundId, adapterBefore } = series.state;
    const round = roundId === undefined ? undefined : readRound(store.db, roundId);
    const stop = round?.stops.find((s) => s.spindleId === spindleId);
    if (round === undefined || stop === undefined) return;
    if (round.state === "done" && !isSettled(store.db, round, works(), new Set()))
      this.#file({ ...round, state: "open" });
    else this.tell();
    if (!inWork(series))
      series.lead({ spindleId, adapterId: stop.adapterId ?? undefined, roundId: round.roundId, adapterBefore });
  }

  /** Says to all pages how the round in hand stands. */
  tell(): void {
    const { store, hub, works, series } = this.#deps;
    const { roundId } = series.state;
    const round = roundId === undefined ? undefined : readRound(store.db, roundId);
    if (round !== undefined) hub.say("round.changed", toRoundView(store.db, round, works()));
  }

  #next(roundId: string, from: string | undefined, adapterBefore: string | undefined): LedTo | undefined {
    const { store, works } = this.#deps;
    const round = readRound(store.db, roundId);
    if (round === undefined) return undefined;
    const { stops } = toRoundView(store.db, round, works());
    const at = nextStop(
      stops.map(({ spindleId, done, retired, passed }) => ({
        spindleId,
        retired,
        done: done !== undefined,
        passed: passed?.as,
      })),
      from,
    );
    const stop = at === undefined ? undefined : stops[at];
    return { roundId, adapterBefore, spindleId: stop?.spindleId, adapterId: stop?.adapterId };
  }

  #file(body: Round): RoundView {
    const { store, hub, works } = this.#deps;
    store.append([{ kind: "round", body }]);
    const view = toRoundView(store.db, body, works());
    hub.say("round.changed", view);
    return view;
  }

  #refuseInWork(): void {
    if (inWork(this.#deps.series))
      throw new AppError(
        "refused",
        "What was measured is not filed yet. File it, or start over, and then go on with the round.",
        { key: "seriesInWork" },
      );
  }
}

/** Another page has gone on with the round: what was meant for one stop is not said of the next. */
const goneOn = () =>
  new AppError(
    "conflict",
    "The round has gone on meanwhile, on another page. Look at the stop that is shown now; nothing was changed.",
    { key: "roundChanged" },
  );

const inWork = ({ state }: Series) =>
  state.typed !== undefined || state.cycles.some((cycle) => cycle.dropped === undefined);
