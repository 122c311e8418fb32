import { Readable } from "node:stream";
import type { CommandIo } from "../../main/cli/Command.ts";

/** A command line whose output is kept: `text` is what was said, `errors` what went wrong. */
export function captureIo(env: CommandIo["env"] = {}): { io: CommandIo; text: () => string; errors: () => string } {
  const out: string[] = [];
  const err: string[] = [];
  const io: CommandIo = {
    stdin: Readable.from([]),
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    env,
    signal: new AbortController().signal,
  };
  return { io, text: () => out.join(""), errors: () => err.join("") };
}
