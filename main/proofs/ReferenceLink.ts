import type { LinkView, Source } from "../../app/contract/linkViews.ts";
import { AppError } from "../../app/contract/result.ts";
import type { ReadingBatch } from "../../app/cycle/GaugeStream.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import { autoPattern } from "../bench/autoPattern.ts";
import { linkView } from "../bench/liveViews.ts";
import { nominalRate } from "../bench/nominalRate.ts";
import { LinkError } from "../link/LinkProblem.ts";
import { Session, type SessionDeps } from "../link/Session.ts";

export type ReferenceHearer = {
  readings(batch: ReadingBatch): void;
  /** The port was lost; it is looked for by itself. */
  gap(): void;
  changed(): void;
};

type Wanted = {
  readonly source: Source;
  readonly pattern: LinePattern | undefined;
  readonly patternName: string | undefined;
  readonly capacityN: number;
};

/** After so long an instrument that sends has sent enough to be learned from. */
const LISTEN_MS = 2_500;

/** The reference transducer's own port: a second session beside the gauge's, with no series and no cycles to keep. */
export class ReferenceLink {
  readonly #deps: SessionDeps;
  readonly #newId: () => string;
  readonly #hearer: ReferenceHearer;
  #session: Session | undefined;
  #patternName: string | undefined;
  #cancelListening: (() => void) | undefined;

  constructor(deps: SessionDeps, newId: () => string, hearer: ReferenceHearer) {
    this.#deps = deps;
    this.#newId = newId;
    this.#hearer = hearer;
  }

  get session(): Session | undefined {
    return this.#session;
  }

  get view(): LinkView {
    return linkView(this.#session, this.#patternName);
  }

  /** @throws LinkError  the source cannot be opened */
  async open({ source, pattern, patternName, capacityN }: Wanted): Promise<void> {
    await this.close();
    this.#patternName = patternName;
    const session: Session = new Session(
      { sessionId: this.#newId(), source, pattern, rateHz: pattern?.rateHz, capacityN },
      this.#deps,
      {
        changed: () => {
          if (this.#session === session) this.#hearer.changed();
        },
        readings: (batch) => this.#hearer.readings(batch),
        cycle: () => {}, // loads of a rig are no clampings
        gap: () => this.#hearer.gap(),
      },
    );
    this.#session = session;
    try {
      await session.open();
    } catch (cause) {
      if (cause instanceof LinkError) throw cause;
      throw new AppError("link", "The reference's port could not be opened.", { cause });
    }
    if (pattern === undefined) this.#listen(session, capacityN);
  }

  async close(): Promise<void> {
    this.#cancelListening?.();
    const session = this.#session;
    this.#session = undefined;
    this.#patternName = undefined;
    await session?.close();
  }

  /** Learns by itself what asks no question; for anything else the reference's record names a pattern. */
  #listen(session: Session, capacityN: number): void {
    this.#cancelListening = this.#deps.clock.after(LISTEN_MS, () => {
      if (session !== this.#session || session.status().pattern !== undefined) return;
      const pattern = autoPattern(session.tail(), this.#deps.onFault);
      if (pattern === undefined || pattern === "asks") {
        this.#listen(session, capacityN);
        return;
      }
      const rateHz = pattern.rateHz ?? nominalRate(session.status().counters.lineRateHz);
      session.setPattern(pattern, rateHz, capacityN);
      this.#patternName = "learned";
      this.#hearer.changed();
    });
  }
}
