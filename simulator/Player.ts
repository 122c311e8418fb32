import type { SimulatedGauge } from "./gauge/SimulatedGauge.ts";
import type { Output } from "./output/Output.ts";

export type Sending = "always" | "onRequest" | "onKey";

export type PlayerOptions = {
  /** `real`: as time passes; `full`: as fast as the bytes are taken. */
  readonly speed: "real" | "full";
  readonly sends: Sending;
  /** What asks for a reading, when it sends on request. */
  readonly request: string;
  /** Ends after so many seconds of the gauge's time; absent: never. */
  readonly seconds?: number | undefined;
  /** What the gauge's memory answers to a request; absent: it has none. */
  readonly answer?: ((request: string) => Uint8Array | undefined) | undefined;
  /** A second instrument in the same load train, and where its bytes go. */
  readonly second?: { readonly until: (tS: number) => Uint8Array; readonly output: Output } | undefined;
  /** Clamps and releases by itself, with these times; absent: on command only. */
  readonly auto?: { readonly restS: number; readonly holdS: number } | undefined;
};

/** Lets a gauge's time pass and carries its bytes out. */
export class Player {
  readonly #gauge: SimulatedGauge;
  readonly #output: Output;
  readonly #options: PlayerOptions;
  #last: Uint8Array = new Uint8Array(0); // the newest line, for a gauge that is asked
  #asked = "";
  #stopped = false;

  constructor(gauge: SimulatedGauge, output: Output, options: PlayerOptions) {
    this.#gauge = gauge;
    this.#output = output;
    this.#options = options;
  }

  /** Resolves when its time is over or it was stopped. */
  async run(): Promise<void> {
    const { rateHz } = this.#gauge.options;
    const block = Math.max(1, Math.round(rateHz / 50));
    const startMs = performance.now();
    const startCount = this.#gauge.count;
    while (!this.#over()) {
      if (this.#options.speed === "full") {
        await this.#step(block, true);
        continue;
      }
      const due = startCount + Math.floor(((performance.now() - startMs) / 1_000) * rateHz);
      while (this.#gauge.count < due && !this.#over())
        await this.#step(Math.min(block, due - this.#gauge.count), false);
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
  }

  stop(): void {
    this.#stopped = true;
  }

  /** The user presses the gauge's send key. */
  pressKey(): void {
    this.#output.send(this.#last);
  }

  /** Bytes from the PC: answers each whole request with the newest reading, or what the memory has to say. */
  received(bytes: Uint8Array): void {
    this.#asked = (this.#asked + Buffer.from(bytes).toString("latin1")).slice(-200);
    this.#answerFromMemory();
    while (this.#options.sends === "onRequest") {
      const at = this.#asked.indexOf(this.#options.request);
      if (at < 0) return;
      this.#asked = this.#asked.slice(at + this.#options.request.length);
      this.#output.send(this.#last);
    }
  }

  #answerFromMemory(): void {
    const { answer } = this.#options;
    for (const [request, name] of this.#asked.matchAll(/(DUMP|COUNT|TIME)\r/g)) {
      const bytes = answer?.(name!);
      if (bytes === undefined) continue;
      this.#asked = this.#asked.replace(request, "");
      this.#output.send(bytes);
    }
  }

  async #step(n: number, waits: boolean): Promise<void> {
    this.#clampByItself();
    if (this.#options.sends === "always") {
      const taken = this.#output.send(this.#gauge.advance(n));
      this.#sendSecond();
      if (waits && !taken) await this.#output.drained();
      else if (waits) await new Promise((resolve) => setImmediate(resolve)); // commands come in between
      return;
    }
    for (let i = 0; i < n; i += 1) {
      const line = this.#gauge.advance(1);
      if (line.length > 0) this.#last = line;
    }
    this.#sendSecond();
  }

  #sendSecond(): void {
    const { second } = this.#options;
    second?.output.send(second.until(this.#gauge.tS));
  }

  #clampByItself(): void {
    const { auto } = this.#options;
    if (auto === undefined) return;
    const sinceS = this.#gauge.tS - this.#gauge.load.changedS;
    if (this.#gauge.load.clamped) {
      if (sinceS >= auto.holdS) this.#gauge.release();
    } else if (sinceS >= auto.restS) this.#gauge.clamp();
  }

  #over(): boolean {
    const { seconds } = this.#options;
    return this.#stopped || (seconds !== undefined && this.#gauge.tS >= seconds);
  }
}
