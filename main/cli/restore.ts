import { restore } from "../store/copies/restore.ts";
import { StoreError } from "../store/StoreError.ts";
import { type Command, type CommandIo, UsageError } from "./Command.ts";
import { parseOptions } from "./parseOptions.ts";

/** Restores a backup to a new place. Never overwrites, and touches no data file in use. */
export const command: Command = {
  usage: "FILE --data NEW [--demo] [--json]   restore a backup to a new place and compare it",
  async run(args, io) {
    const { values, files } = parseOptions(args, {
      data: { type: "string" },
      demo: { type: "boolean" },
      json: { type: "boolean" },
    });
    const [from, ...more] = files;
    if (from === undefined || more.length > 0) throw new UsageError("name one backup to restore");
    if (values.data === undefined)
      throw new UsageError("say where to with --data NEW; a file that is there is never overwritten");
    const to = values.data;
    try {
      const watch = { progress: () => {}, goOn: () => io.signal.throwIfAborted() };
      const report = await restore({ from, to, demo: values.demo === true, now: Date.now, watch });
      const { entries, waveforms, chains, damaged } = report;
      io.out(
        values.json === true
          ? `${JSON.stringify({ file: to, entries, waveforms, chains, damaged })}\n`
          : `${to}: ${entries} entries and ${waveforms} waveforms restored from ${from}; copy and backup are the same to the last entry.\n`,
      );
      return 0;
    } catch (cause) {
      return failed(cause, io);
    }
  },
};

function failed(cause: unknown, io: CommandIo): number {
  if (!(cause instanceof StoreError)) throw io.signal.aborted ? new UsageError("stopped; nothing was restored") : cause;
  if (cause.code !== "damaged") throw new UsageError(cause.message);
  io.err(`holdfast restore: ${cause.message}\n`);
  return 3;
}
