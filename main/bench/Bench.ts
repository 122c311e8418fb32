import type { LearnView, LineView, LinkView, Source } from "../../app/contract/linkViews.ts";
import type { Output, Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { LiveView, ZeroView } from "../../app/contract/seriesViews.ts";
import { type LinePattern, linePatternSchema } from "../../app/gauge/linePattern.ts";
import type { PushHub } from "../host/PushHub.ts";
import { LinkError } from "../link/LinkProblem.ts";
import { markSeries } from "../link/recover.ts";
import { Session, type SessionDeps } from "../link/Session.ts";
import type { SessionSettings } from "../link/SessionTypes.ts";
import type { Log } from "../log.ts";
import { readGauge } from "../store/records/gauges.ts";
import { readPattern } from "../store/records/patterns.ts";
import type { Store } from "../store/Store.ts";
import { autoPattern } from "./autoPattern.ts";
import type { BenchEar } from "./BenchEar.ts";
import type { DraftState } from "./DraftState.ts";
import { hearSession } from "./hearSession.ts";
import { keepPattern } from "./keepPattern.ts";
import { learnFrom, tailLines } from "./learnViews.ts";
import { linkView, liveView } from "./liveViews.ts";
import { nominalRate } from "./nominalRate.ts";
import { placeOfSource } from "./placeOfSource.ts";
import type { Series } from "./Series.ts";
import type { SettingSearch } from "./SettingSearch.ts";
import type { SimulatedGauge } from "./SimulatedGauge.ts";
import { withRate } from "./withRate.ts";
import { zeroNow } from "./zeroNow.ts";

export type BenchDeps = {
  readonly store: Store;
  readonly hub: PushHub;
  readonly log: Log;
  readonly session: Omit<SessionDeps, "onFault">;
  /** Commands for the simulated gauge, where one runs. */
  readonly simulated: SimulatedGauge;
  readonly search: SettingSearch;
};

/** After so long a gauge that sends has sent enough to be learned from. */
const LISTEN_MS = 2_500;

/** Shown for a pattern that was learned and has no name of its own yet. */
const learnedName = "learned";

/** The one gauge that is connected: opening, learning its lines, zero, and the stream of its cycles into the series in work. */
export class Bench {
  readonly #deps: BenchDeps;
  readonly #series: Series;
  #session: Session | undefined;
  #patternName: string | undefined;
  #patternId: string | undefined;
  #cancelListening: (() => void) | undefined;
  #ear: BenchEar | undefined;

  constructor(deps: BenchDeps, series: Series) {
    this.#deps = deps;
    this.#series = series;
  }

  get session(): Session | undefined {
    return this.#session;
  }

  get patternId(): string | undefined {
    return this.#patternId;
  }

  /** From here on this one hears the gauge too. */
  listen(ear: BenchEar): void {
    this.#ear = ear;
  }

  linkView(): LinkView {
    return linkView(this.#session, this.#patternName);
  }

  liveView(): LiveView {
    return liveView(this.#session);
  }

  /** Opens a source; what was open before is closed. The pattern asked for, else the gauge's own, else it is learned. */
  async open({ source, gaugeId, patternId }: Parsed<"link.open">): Promise<LinkView> {
    await this.close();
    if (source.kind === "simulated") await this.#deps.simulated.start();
    const { store } = this.#deps;
    const gauge = gaugeId === undefined ? undefined : readGauge(store.db, gaugeId);
    const wanted = patternId ?? gauge?.patternId;
    const stored = wanted === undefined ? undefined : readPattern(store.db, wanted);
    const pattern = stored && linePatternSchema.parse(stored.pattern);
    this.#patternId = stored?.patternId;
    this.#patternName = stored?.name;
    this.#series.tagGauge(gaugeId);
    await this.#begin({
      sessionId: store.newId(),
      source,
      pattern,
      rateHz: pattern?.rateHz,
      capacityN: gauge?.capacityN,
      gaugeId,
      usb: gauge?.usb,
      seriesId: this.#series.state.seriesId,
    });
    if (pattern === undefined) this.#listen();
    return this.linkView();
  }

  async close(): Promise<LinkView> {
    this.#cancelListening?.();
    await this.#session?.close();
    this.#session = undefined;
    this.#patternName = undefined;
    this.#patternId = undefined;
    const view = this.linkView();
    this.#deps.hub.say("link.changed", view);
    return view;
  }

  /** Closes the link when it holds the source that something else is to open. */
  async freeFor(source: Source): Promise<void> {
    const held = this.#session?.settings.source;
    if (held !== undefined && placeOfSource(held) === placeOfSource(source)) await this.close();
  }

  /** The series in work takes the running session's stream from where it stands. */
  followInto(series: Series): void {
    const session = this.#session;
    if (session === undefined) return;
    const live = session.live;
    series.follow(session.settings.sessionId, live?.cycleFromIndex ?? live?.places ?? 0);
    session.mark(series.state.seriesId, "began");
  }

  /** Notes in every spool the series was fed from that it is filed: what is kept for recovery may then go. */
  noteFiled({ seriesId, sessions }: DraftState): void {
    const { log, session } = this.#deps;
    for (const { sessionId } of sessions) {
      if (sessionId === this.#session?.settings.sessionId) this.#session.mark(seriesId, "filed");
      else
        markSeries(session.spoolFolder, sessionId, seriesId, "filed").catch((cause) => log.error("the spool", cause));
    }
  }

  learn(input: Parsed<"link.learn">): LearnView {
    return learnFrom(this.#session, input);
  }

  /** Keeps a pattern under a name, gives it to the gauge, and reads with it from now on. */
  async adoptPattern(input: Parsed<"link.usePattern">): Promise<Output<"link.usePattern">> {
    const { name, gaugeId } = input;
    const raw = withRate(input.pattern, this.#session?.status().counters.lineRateHz);
    const pattern = linePatternSchema.parse(raw);
    const patternId = keepPattern(this.#deps.store, name, raw, gaugeId);
    await this.#readWith(pattern, name, patternId);
    return { patternId };
  }

  tail(): readonly LineView[] {
    const session = this.#session;
    return session === undefined ? [] : tailLines(session.tail().bytes, session.status().pattern);
  }

  takeZero(): ZeroView {
    return zeroNow(this.#session);
  }

  /** Listens through the settings of a port; the port must be free, so an open link is closed first. */
  async findSetting(path: string): Promise<{ readonly jobId: string }> {
    await this.close();
    return this.#deps.search.start(path);
  }

  async simulated(input: Parsed<"simulated.command">): Promise<void> {
    await this.#deps.simulated.command(input.forceN === undefined ? input.command : `${input.command} ${input.forceN}`);
  }

  async #begin(settings: SessionSettings): Promise<void> {
    const { log, hub, session: deps } = this.#deps;
    const session: Session = new Session(
      settings,
      { ...deps, onFault: (cause) => log.error("the link", cause) },
      hearSession(() => session, {
        hub,
        series: this.#series,
        ear: () => this.#ear,
        changed: () => {
          if (this.#session === session) hub.say("link.changed", this.linkView());
        },
      }),
    );
    this.#session = session;
    this.#ear?.gaugeCut("opened");
    try {
      await session.open();
    } catch (cause) {
      // The session stays to be looked at: its status says what stands in the way.
      if (cause instanceof LinkError) throw cause;
      throw new AppError("link", "The gauge's port could not be opened.", { cause });
    }
    this.followInto(this.#series);
  }

  /** With a pattern in use already the source is opened anew: what was read by another pattern stays as it was read. */
  async #readWith(pattern: LinePattern, name: string | undefined, patternId: string | undefined): Promise<void> {
    this.#cancelListening?.();
    const session = this.#session;
    if (session === undefined) return;
    const { hub, store } = this.#deps;
    const gaugeId = session.settings.gaugeId ?? this.#series.state.tag.gaugeId;
    const capacityN = gaugeId === undefined ? undefined : readGauge(store.db, gaugeId)?.capacityN;
    const rateHz = pattern.rateHz ?? nominalRate(session.status().counters.lineRateHz);
    if (session.status().pattern === undefined) {
      session.setPattern(pattern, rateHz, capacityN);
    } else {
      await session.close();
      const { usb, source } = session.status();
      await this.#begin({
        sessionId: store.newId(),
        source,
        pattern,
        rateHz,
        capacityN,
        gaugeId,
        usb,
        seriesId: this.#series.state.seriesId,
      });
    }
    this.#patternName = name ?? learnedName;
    this.#patternId = patternId;
    hub.say("link.changed", this.linkView());
  }

  /** Learns by itself what asks no question; anything else waits for the user in state `listening`. */
  #listen(): void {
    const session = this.#session;
    const { hub, log } = this.#deps;
    const onFault = (cause: unknown) => log.error("learning", cause);
    this.#cancelListening = this.#deps.session.clock.after(LISTEN_MS, () => {
      if (session === undefined || session !== this.#session || session.status().pattern !== undefined) return;
      const pattern = autoPattern(session.tail(), onFault);
      if (pattern === undefined) this.#listen();
      else if (pattern === "asks")
        hub.say("link.changed", this.linkView()); // the page asks `link.learn` for the questions
      else this.#readWith(pattern, undefined, undefined).catch(onFault);
    });
  }
}
