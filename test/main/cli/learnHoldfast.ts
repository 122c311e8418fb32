import { Readable } from "node:stream";
import { runCli } from "../../../main/cli/main.ts";

/** Runs the command line with captured output. */
export async function holdfast(args: readonly string[], stdin: string | Uint8Array = "") {
  let out = "";
  let err = "";
  const code = await runCli(args, {
    stdin: Readable.from([Buffer.from(stdin)]),
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    env: {},
    signal: new AbortController().signal,
  });
  return { code, out, err };
}
