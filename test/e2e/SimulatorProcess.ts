import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { resolve } from "node:path";
import { createInterface } from "node:readline";

type Reply = {
  readonly host?: string;
  readonly port?: number;
  readonly ok?: boolean;
  readonly why?: string;
  readonly truth?: readonly Clamping[];
};
export type Clamping = {
  readonly onS: number;
  readonly offS?: number;
  readonly settledN: number;
  readonly peakN: number;
};

/** The simulated gauge as a program of its own, on a pseudo-terminal that a serial port driver opens. */
export class SimulatorProcess {
  /** Where it listens, when it was started with `--tcp`. */
  address: { readonly host: string; readonly port: number } | undefined;
  readonly #child: ChildProcess;
  readonly #replies: ((reply: Reply) => void)[] = [];

  private constructor(child: ChildProcess) {
    this.#child = child;
    createInterface({ input: child.stdout! }).on("line", (line) => this.#replies.shift()?.(JSON.parse(line) as Reply));
  }

  static async start(args: readonly string[]): Promise<SimulatorProcess> {
    const program = resolve(import.meta.dirname, "..", "..", "simulator", "main.ts");
    const child = spawn(process.execPath, [program, "--stop-with-input", ...args], {
      stdio: ["pipe", "pipe", "inherit"],
      env: { ...process.env, NODE_NO_WARNINGS: "1" },
    });
    const simulator = new SimulatorProcess(child);
    const { host, port } = await new Promise<Reply>((done, fail) => {
      simulator.#replies.push(done); // its first line says where it listens
      child.once("exit", () => fail(new Error(`the simulator did not start with ${args.join(" ")}`)));
    });
    if (host !== undefined && port !== undefined) simulator.address = { host, port };
    return simulator;
  }

  async tell(command: string): Promise<Reply> {
    const reply = new Promise<Reply>((done) => this.#replies.push(done));
    this.#child.stdin!.write(`${command}\n`);
    const answer = await reply;
    if (answer.ok === false) throw new Error(`${command}: ${answer.why}`);
    return answer;
  }

  async truth(): Promise<readonly Clamping[]> {
    return (await this.tell("truth")).truth ?? [];
  }

  /** Clamps, holds for so long, releases and rests. */
  async clampFor(holdMs: number, restMs: number): Promise<void> {
    await this.tell("clamp");
    await new Promise((done) => setTimeout(done, holdMs));
    await this.tell("release");
    await new Promise((done) => setTimeout(done, restMs));
  }

  async end(): Promise<void> {
    if (this.#child.exitCode !== null || this.#child.signalCode !== null) return;
    const ended = once(this.#child, "exit");
    this.#child.kill("SIGTERM");
    await ended;
  }
}
