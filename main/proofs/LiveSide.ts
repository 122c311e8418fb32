import type { LinkState, LinkView } from "../../app/contract/linkViews.ts";
import type { Parsed } from "../../app/contract/methods.ts";
import type { ReadingBatch } from "../../app/cycle/GaugeStream.ts";
import { linePatternSchema } from "../../app/gauge/linePattern.ts";
import type { SessionDeps } from "../link/Session.ts";
import type { Db } from "../store/db.ts";
import { readPattern } from "../store/records/patterns.ts";
import { LiveWatch, type Look } from "./LiveWatch.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { ReferenceLink } from "./ReferenceLink.ts";
import { ToldReady } from "./ToldReady.ts";
import { wantedN } from "./wantedN.ts";

export type LiveDeps = {
  readonly db: Db;
  readonly newId: () => string;
  readonly today: () => string;
  /** For the reference's port; `makeSource` knows the simulator's second instrument. */
  readonly session: SessionDeps;
  /** Starts the simulator where its second instrument is asked for. */
  readonly startSimulator: () => Promise<void>;
  /** The gauge's own link, as it stands now. */
  readonly gauge: () => {
    readonly state: LinkState;
    readonly resolutionN: number | undefined;
    readonly unit: string | undefined;
    readonly gaugeId: string | undefined;
  };
};

export type LiveHearer = {
  /** The reference's port was lost. */
  lost(): void;
  /** The reference's link has changed. */
  changed(): void;
  /** It is time to look again. */
  tick(): void;
};

/** How often steadiness is looked at and told. */
const TICK_MS = 250;

/** Both ports of a proof: the reference's own link, the streams of both, and the beat at which they are looked at. */
export class LiveSide {
  readonly #deps: LiveDeps;
  readonly #hearer: LiveHearer;
  readonly #watch = new LiveWatch();
  readonly #link: ReferenceLink;
  #cancelTick: (() => void) | undefined;
  readonly #ready = new ToldReady();

  constructor(deps: LiveDeps, hearer: LiveHearer) {
    this.#deps = deps;
    this.#hearer = hearer;
    this.#link = new ReferenceLink(deps.session, deps.newId, {
      readings: (batch) => this.#watch.reference.push(batch, this.#nowS()),
      gap: () => hearer.lost(),
      changed: () => hearer.changed(),
    });
  }

  get referenceView(): LinkView {
    return this.#link.view;
  }

  /** Time offset between the ports as it was last told. */
  get offset(): LiveWatch["offset"] {
    return this.#watch.offset;
  }

  heard(batch: ReadingBatch): void {
    this.#watch.gauge.push(batch, this.#nowS());
  }

  /** What was read before has no place in time any more. */
  cut(): void {
    this.#watch.cut();
    this.#ready.forget();
  }

  /** As `look`, for what is told now. */
  tell(draft: ProofDraft): Look {
    const told = this.look(draft);
    this.#ready.tell(told, this.#nowS());
    return told;
  }

  /** As `look`, for a hand that takes what it has just been told. */
  atHand(draft: ProofDraft): Look {
    const now = this.look(draft);
    return { watch: now.watch, taking: this.#ready.atHand(now, this.#nowS()) };
  }

  /** What was told as ready has been taken, or something else is asked for. */
  forget(): void {
    this.#ready.forget();
  }

  look(draft: ProofDraft): Look {
    const reference = this.#link.session?.status();
    const links = {
      gauge: this.#deps.gauge(),
      reference: { state: reference?.state ?? ("closed" as const), resolutionN: reference?.resolutionN },
    };
    return this.#watch.look(draft, wantedN(draft), links, this.#deps.today(), this.#nowS());
  }

  async openReference(
    { reference, gauge }: ProofDraft,
    { source, patternId }: Parsed<"proof.openReference">,
  ): Promise<void> {
    const { db, startSimulator } = this.#deps;
    if (source.kind === "simulated") await startSimulator();
    const wanted = patternId ?? reference.transducer?.patternId;
    const stored = wanted === undefined ? undefined : readPattern(db, wanted);
    this.cut();
    await this.#link.open({
      source,
      pattern: stored && linePatternSchema.parse(stored.pattern),
      patternName: stored?.name,
      capacityN: reference.transducer?.capacityN ?? gauge.capacityN,
    });
  }

  async closeReference(): Promise<void> {
    await this.#link.close();
    this.cut();
  }

  /** From here on it beats, until `stop`. */
  start(): void {
    this.stop();
    this.#cancelTick = this.#deps.session.clock.after(TICK_MS, () => {
      this.start();
      this.#hearer.tick();
    });
  }

  stop(): void {
    this.#cancelTick?.();
    this.#cancelTick = undefined;
  }

  #nowS(): number {
    return this.#deps.session.clock.monotonicMs() / 1_000;
  }
}
