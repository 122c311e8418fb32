import { AppError } from "../../app/contract/result.ts";
import { type Simulator, startSimulator } from "../link/simulated.ts";

/** The simulated gauge as a program beside this one, started when it is first wanted. */
export class SimulatedGauge {
  readonly #args: readonly string[];
  #running: Simulator | undefined;
  #starting: Promise<Simulator> | undefined;

  constructor(args: readonly string[]) {
    this.#args = args;
  }

  get running(): Simulator | undefined {
    return this.#running;
  }

  /** Two ports opened at once share one program: gauge and reference hang in the same rig. */
  async start(): Promise<void> {
    if (this.#running !== undefined) return;
    this.#starting ??= startSimulator({ args: this.#args });
    try {
      this.#running = await this.#starting;
    } finally {
      this.#starting = undefined;
    }
  }

  async command(line: string): Promise<void> {
    if (this.#running === undefined) {
      throw new AppError("refused", "The simulated gauge is not connected. Connect it first.", { key: "notSimulated" });
    }
    await this.#running.command(line);
  }

  async close(): Promise<void> {
    await this.#running?.close();
    this.#running = undefined;
  }
}
