import { gaugeCommands, runGaugeCommand } from "./gauge/gaugeCommands.ts";
import type { SimulatedGauge } from "./gauge/SimulatedGauge.ts";
import type { MemoryGauge } from "./memory/MemoryGauge.ts";
import { memoryCommands, runMemoryCommand } from "./memory/memoryCommands.ts";
import type { Output } from "./output/Output.ts";
import type { Player } from "./Player.ts";

/**
 * What the simulator answers to one command, as one line of JSON.
 * `truth` lists what the clampings so far really were, in newtons and seconds.
 */
export type ControlReply =
  | { readonly ok: true; readonly did: string; readonly truth?: SimulatedGauge["truth"] }
  | { readonly ok: false; readonly why: string };

/** Commands of the cable and the program, beside those of the gauge. */
const own: Readonly<Record<string, string>> = {
  unplug: "pulls the plug: the link goes",
  plug: "plugs it in again",
  key: "the gauge's send key",
  truth: "what the clampings really were",
  help: "this list",
  quit: "ends the program",
};

/** Takes command lines, one after the other, and answers each. */
export class Control {
  readonly #gauge: SimulatedGauge;
  readonly #output: Output;
  readonly #player: Player;
  readonly #memory: MemoryGauge | undefined;

  constructor(gauge: SimulatedGauge, output: Output, player: Player, memory?: MemoryGauge) {
    this.#gauge = gauge;
    this.#output = output;
    this.#player = player;
    this.#memory = memory;
  }

  async run(line: string): Promise<ControlReply> {
    try {
      return await this.#run(line);
    } catch (cause) {
      return { ok: false, why: cause instanceof Error ? cause.message : String(cause) };
    }
  }

  async #run(line: string): Promise<ControlReply> {
    switch (line.trim()) {
      case "unplug":
        await this.#output.unplug();
        return { ok: true, did: "unplugged" };
      case "plug":
        await this.#output.plug();
        return { ok: true, did: "plugged in" };
      case "key":
        this.#player.pressKey();
        return { ok: true, did: "sent" };
      case "truth":
        return { ok: true, did: "truth", truth: this.#gauge.truth };
      case "help":
        return { ok: true, did: helpText(this.#memory !== undefined) };
      case "quit":
        this.#player.stop();
        return { ok: true, did: "ending" };
      case "dump":
        return this.#dump();
      default:
        return { ok: true, did: this.#ofMemory(line) ?? runGaugeCommand(this.#gauge, line) };
    }
  }

  /** The user presses the send key for the whole memory. */
  #dump(): ControlReply {
    if (this.#memory === undefined) return { ok: false, why: "this gauge has no memory; start it with --memory" };
    this.#output.send(this.#memory.dump());
    return { ok: true, did: `sent ${this.#memory.memory.readings.length} readings` };
  }

  #ofMemory(line: string): string | undefined {
    return this.#memory === undefined ? undefined : runMemoryCommand(this.#memory, line);
  }
}

function helpText(withMemory: boolean): string {
  const known = {
    ...gaugeCommands,
    ...(withMemory ? { ...memoryCommands, dump: { takes: "", does: "sends the whole memory" } } : {}),
  };
  const lines = Object.entries(known).map(([name, { takes, does }]) => `${name} ${takes}`.trim().padEnd(22) + does);
  return [...lines, ...Object.entries(own).map(([name, does]) => name.padEnd(22) + does)].join("\n");
}
