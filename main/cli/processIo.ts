import type { CommandIo } from "./Command.ts";

/** The process's own streams and signals, for the program itself; tests hand in their own. */
export function processIo(): CommandIo {
  const stop = new AbortController();
  process.once("SIGINT", () => stop.abort());
  process.once("SIGTERM", () => stop.abort());
  // A reader that stops early (`| head`) is no fault of ours.
  process.stdout.on("error", (cause: NodeJS.ErrnoException) => process.exit(cause.code === "EPIPE" ? 0 : 1));
  return {
    stdin: process.stdin,
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    env: process.env,
    signal: stop.signal,
  };
}
