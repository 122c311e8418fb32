import { type Command, type CommandIo, UsageError } from "./Command.ts";
import { processIo } from "./processIo.ts";

/** Loaded only when called: `convert` need not wait for the database. */
const commands: Readonly<Record<string, () => Promise<{ readonly command: Command }>>> = {
  cycles: () => import("./cycles.ts"),
  learn: () => import("./learn.ts"),
  convert: () => import("./convert.ts"),
  judge: () => import("./judge.ts"),
  trend: () => import("./trend.ts"),
  prove: () => import("./prove.ts"),
  simulate: () => import("./simulate.ts"),
  demo: () => import("./demo.ts"),
  serve: () => import("./serve.ts"),
  calendar: () => import("./calendar.ts"),
  labels: () => import("./labels.ts"),
  verify: () => import("./verify.ts"),
  backup: () => import("./backup.ts"),
  restore: () => import("./restore.ts"),
  people: () => import("./people.ts"),
  export: () => import("./export.ts"),
  import: () => import("./import.ts"),
  report: () => import("./report.ts"),
  validate: () => import("./validate.ts"),
};

/**
 * Runs one subcommand and answers the exit code (design: 0 done, 1 fault of ours, 2 wrong use or bad input,
 * 3 data damaged or validation failed).
 */
export async function runCli(args: readonly string[], io: CommandIo): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined || name === "help" || name === "--help" || name === "-h") {
    io.out(await helpText());
    return name === undefined ? 2 : 0;
  }
  const load = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (load === undefined) {
    io.err(`holdfast ${name}: there is no such command; see holdfast help\n`);
    return 2;
  }
  try {
    const { command } = await load();
    if (rest.includes("--help") || rest.includes("-h")) {
      io.out(`holdfast ${name} ${command.usage}\n`);
      return 0;
    }
    return await command.run(rest, io);
  } catch (cause) {
    if (cause instanceof UsageError) {
      io.err(`holdfast ${name}: ${oneLine(cause.message)}\n`);
      return 2;
    }
    io.err(
      `holdfast ${name}: a fault of the program: ${oneLine(cause instanceof Error ? (cause.stack ?? cause.message) : String(cause))}\n`,
    );
    return 1;
  }
}

async function helpText(): Promise<string> {
  const lines = await Promise.all(
    Object.entries(commands).map(async ([name, load]) => `  ${name} ${(await load()).command.usage}`),
  );
  return `holdfast COMMAND …\n\n${lines.join("\n")}\n\nFILE may be - for standard input; --json prints one JSON document.\n`;
}

const oneLine = (text: string) => text.replace(/\s*\n\s*/g, " | ");

if (import.meta.main) process.exitCode = await runCli(process.argv.slice(2), processIo());
