import { AppError } from "../../app/contract/result.ts";
import { type Simulator, startSimulator } from "../link/simulated.ts";

/** The simulated gauge as a program beside this one, started when it is first wanted. */
export class SimulatedGauge {
  readonly #args: readonly string[];
  #running: Simulator | undefined;

  constructor(args: readonly string[]) {
    this.#args = args;
  }

  get running(): Simulator | undefined {
    return this.#running;
  }

  async start(): Promise<void> {
    this.#running ??= await startSimulator({ args: this.#args });
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
