import { rmSync } from "node:fs";
import { fillIfEmpty } from "../bench/fillDemo.ts";
import { programVersion } from "../programVersion.ts";
import { dataFile } from "../store/dataFile.ts";
import { openStore } from "../store/open.ts";
import { StoreError } from "../store/StoreError.ts";
import { type Command, UsageError } from "./Command.ts";
import { parseOptions } from "./parseOptions.ts";
import { command as serve } from "./serve.ts";

const options = {
  fill: { type: "boolean" },
  anew: { type: "boolean" },
  data: { type: "string" },
  port: { type: "string" },
} as const;

/** The demo works: built where they are missing, then served; with `--fill` it stops after building. */
export const command: Command = {
  usage: "[--fill] [--anew] [--data FILE] [--port N]   the demo works; --anew builds them again from nothing",
  async run(args, io) {
    const { values } = parseOptions(args, options);
    const path = values.data ?? dataFile(true);
    if (values.fill !== true) {
      const passed = [
        ...(values.data === undefined ? [] : ["--data", values.data]),
        ...(values.port === undefined ? [] : ["--port", values.port]),
      ];
      return serve.run(["--demo", "--open", ...passed], io);
    }
    try {
      if (values.anew === true) forget(path);
      const store = openStore({ path, demo: true, now: Date.now });
      const checks = await fillIfEmpty(store, Date.now, programVersion).finally(() => store.close());
      io.out(
        checks === 0
          ? `The demo works stand already in ${path}.\n`
          : `${checks} checks of the demo works were filed in ${path}.\n`,
      );
      return 0;
    } catch (cause) {
      if (cause instanceof StoreError) throw new UsageError(cause.message);
      throw cause;
    }
  },
};

/** Takes a demo file away; a file that is not the demo's is refused by opening it as one first. */
function forget(path: string): void {
  openStore({ path, demo: true, now: Date.now }).close();
  for (const end of ["", "-wal", "-shm", ".lock"]) rmSync(`${path}${end}`, { force: true });
}
