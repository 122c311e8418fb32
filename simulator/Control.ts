import { gaugeCommands, runGaugeCommand } from "./gauge/gaugeCommands.ts";
import type { SimulatedGauge } from "./gauge/SimulatedGauge.ts";
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

  constructor(gauge: SimulatedGauge, output: Output, player: Player) {
    this.#gauge = gauge;
    this.#output = output;
    this.#player = player;
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
        return { ok: true, did: helpText() };
      case "quit":
        this.#player.stop();
        return { ok: true, did: "ending" };
      default:
        return { ok: true, did: runGaugeCommand(this.#gauge, line) };
    }
  }
}

function helpText(): string {
  const lines = Object.entries(gaugeCommands).map(
    ([name, { takes, does }]) => `${name} ${takes}`.trim().padEnd(22) + does,
  );
  return [...lines, ...Object.entries(own).map(([name, does]) => name.padEnd(22) + does)].join("\n");
}
