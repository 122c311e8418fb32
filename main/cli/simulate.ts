import { spawn } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { simulatorProgram } from "../link/simulated.ts";
import { type Command, UsageError } from "./Command.ts";

const usage =
  "[--tcp PORT | --pty [--path LINK] | --file FILE] [--json] [--control PORT] [--rate HZ] [--unit U] [--capacity F] [--force F] [--noise F] [--zero F] [--drift F] [--gain X] [--format NAME] [--seed N] [--sends always|onRequest|onKey] [--request TEXT] [--auto [--rest S] [--hold S]] [--speed real|full] [--seconds S] [--reference PORT [--reference-rate HZ] [--reference-jitter S] [--reference-unit U]] [--memory N [--dump-format list|columns|blocks] [--clock-offset S] [--clock-drift S]]  a simulated gauge; commands on standard input, help lists them";

/** What the simulator prints: where it listens, then an answer to each command. */
type Line = Readonly<Record<string, unknown>>;

/** Starts the simulated gauge as a program of its own and carries commands to it. */
export const command: Command = {
  usage,
  async run(args, io) {
    const json = args.includes("--json");
    const passed = args.filter((arg) => arg !== "--json");
    const toStdout = passed[passed.indexOf("--file") + 1] === "-" && passed.includes("--file");
    const child = spawn(process.execPath, [simulatorProgram, ...passed], {
      stdio: ["pipe", "pipe", "pipe"],
      env: { ...io.env, ELECTRON_RUN_AS_NODE: "1", NODE_NO_WARNINGS: "1" },
    });
    const stop = () => child.kill("SIGTERM");
    io.signal.addEventListener("abort", stop, { once: true });
    child.stdin.on("error", () => {}); // its end is told by 'close'
    io.stdin.pipe(child.stdin);
    let said = "";
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      said = (said + text).slice(-2_000);
    });
    // With the lines of the gauge on standard output nothing else may stand there.
    if (toStdout) child.stdout.setEncoding("latin1").on("data", (text: string) => io.out(text));
    else
      createInterface({ input: child.stdout }).on("line", (line) =>
        io.out(json ? `${line}\n` : wordsFor(JSON.parse(line))),
      );
    const [code] = await once(child, "close");
    io.signal.removeEventListener("abort", stop);
    io.stdin.unpipe(child.stdin);
    if (code === 2) throw new UsageError(said.replace(/^simulator: /, "").trim());
    if (code !== 0 && !io.signal.aborted) throw new Error(`the simulator ended with ${code}: ${said.trim()}`);
    return 0;
  },
};

function wordsFor(line: Line): string {
  if (line.ok === false) return `  ${line.why}\n`;
  if (line.truth !== undefined) return `  ${JSON.stringify(line.truth)}\n`;
  if (line.ok === true) return `  ${String(line.did).replaceAll("\n", "\n  ")}\n`;
  const where =
    line.kind === "tcp"
      ? `TCP port ${line.host}:${line.port}`
      : line.kind === "pty"
        ? `serial port ${line.path}`
        : `file ${line.path}`;
  const control = line.controlPort === undefined ? "" : `; commands also on 127.0.0.1:${line.controlPort}`;
  const { reference } = line as { reference?: Line };
  const second = reference === undefined ? "" : `; its reference on ${reference.host}:${reference.port}`;
  return `Simulated gauge on ${where}${second}${control}. Commands: clamp, release, … (help lists all, quit ends).\n`;
}
