import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { createInterface, type Interface } from "node:readline";
import { programRoot } from "../programRoot.ts";
import { LinkError } from "./LinkProblem.ts";

/** A simulated gauge that runs as a program beside this one. */
export type Simulator = {
  readonly address: { readonly host: string; readonly port: number };
  /** Of its second instrument, the reference in the same load train; undefined where it was started without one. */
  readonly reference: { readonly host: string; readonly port: number } | undefined;
  /**
   * Tells it something: "clamp", "clamp 17900", "release", "unplug" … ("help" lists all); answers what it did.
   * @throws LinkError  it refuses, or it has ended
   */
  command(line: string): Promise<string>;
  /** What its clampings really were, in newtons and seconds of its own time. */
  truth(): Promise<readonly SimulatedClamping[]>;
  /** Ends the program; it also ends by itself when this one does. */
  close(): Promise<void>;
};

export type SimulatedClamping = {
  readonly onS: number;
  readonly offS?: number | undefined;
  readonly settledN: number;
  readonly peakN: number;
};

export type SimulatorOptions = {
  /** Options of the program, such as `["--rate", "1000", "--format", "status"]`; see `holdfast simulate --help`. */
  readonly args?: readonly string[] | undefined;
  /** Where the program lies; absent: in this checkout. */
  readonly program?: string | undefined;
  readonly env?: NodeJS.ProcessEnv | undefined;
};

/** Where the simulator's program lies in a checkout. */
export const simulatorProgram = join(programRoot, "simulator", "main.ts");

type Reply = {
  readonly ok: boolean;
  readonly did?: string;
  readonly why?: string;
  readonly truth?: readonly SimulatedClamping[];
};

/**
 * Starts the simulated gauge on a free port of this machine.
 * @throws LinkError `simulatorFailed`, with what the program said
 */
export async function startSimulator(options: SimulatorOptions = {}): Promise<Simulator> {
  const { program = simulatorProgram, args = [], env = process.env } = options;
  const child = spawn(process.execPath, [program, "--tcp", "0", "--stop-with-input", ...args], {
    stdio: ["pipe", "pipe", "pipe"],
    // Electron's own binary runs programs as Node does when told to.
    env: { ...env, ELECTRON_RUN_AS_NODE: "1", NODE_NO_WARNINGS: "1" },
  });
  child.stdin.on("error", () => {}); // its end is told by 'exit'
  const lines = createInterface({ input: child.stdout });
  const { address, reference } = await firstLine(child, lines);
  const waiting: { done: (reply: Reply) => void; failed: (cause: Error) => void }[] = [];
  lines.on("line", (line) => waiting.shift()?.done(JSON.parse(line))); // one line for each command, in order
  child.once("exit", () => {
    for (const { failed } of waiting.splice(0)) failed(gone());
  });
  const ask = (line: string) =>
    new Promise<Reply>((done, failed) => {
      if (child.exitCode !== null || child.signalCode !== null) failed(gone());
      waiting.push({ done, failed });
      child.stdin.write(`${line.replaceAll("\n", " ")}\n`);
    });

  return {
    address,
    reference,
    async command(line) {
      const reply = await ask(line);
      if (!reply.ok) throw new LinkError("simulatorFailed", `the simulated gauge refuses: ${reply.why}`);
      return reply.did ?? "";
    },
    async truth() {
      return (await ask("truth")).truth ?? [];
    },
    async close() {
      if (child.exitCode !== null || child.signalCode !== null) return;
      const ended = once(child, "exit");
      child.kill();
      await ended;
    },
  };
}

const gone = () => new LinkError("simulatorFailed", "the simulated gauge has ended; start it again");

async function firstLine(child: ChildProcess, lines: Interface): Promise<Pick<Simulator, "address" | "reference">> {
  let said = "";
  child.stderr!.on("data", (text) => {
    said = (said + text).slice(-2_000);
  });
  const line = await new Promise<string>((done, failed) => {
    lines.once("line", done);
    child.once("error", (cause) =>
      failed(new LinkError("simulatorFailed", `the simulated gauge cannot be started: ${cause.message}`, cause)),
    );
    child.once("close", () =>
      failed(new LinkError("simulatorFailed", `the simulated gauge did not start: ${said.trim()}`)),
    );
  });
  type Place = Simulator["address"];
  const { host, port, reference } = JSON.parse(line) as Place & { reference?: Place }; // our own program's first line
  return { address: { host, port }, reference };
}
