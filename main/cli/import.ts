import { resolve } from "node:path";
import { type Imported, importArchive } from "../archive/importArchive.ts";
import { dataFile } from "../store/dataFile.ts";
import { openStore } from "../store/open.ts";
import { StoreError } from "../store/StoreError.ts";
import { type Command, type CommandIo, UsageError } from "./Command.ts";
import { dataOptions } from "./dataOptions.ts";
import { parseOptions } from "./parseOptions.ts";

/** Takes an archive's records over, into a new data file or beside what is there. */
export const command: Command = {
  usage:
    "FILE.zip [--data FILE | --demo] [--json]   take the records of an archive over, all or nothing; refused while the program has the data file open",
  async run(args, io) {
    const { values, files } = parseOptions(args, dataOptions);
    const [file, ...more] = files;
    if (file === undefined || more.length > 0) throw new UsageError("name one archive to take over");
    const demo = values.demo === true;
    const to = values.data ?? dataFile(demo);
    try {
      const taken = takeOver(to, demo, resolve(file), io);
      io.out(values.json === true ? `${JSON.stringify({ data: to, ...taken })}\n` : inWords(to, taken));
      return 0;
    } catch (cause) {
      if (io.signal.aborted) throw new UsageError("stopped; nothing was taken over");
      if (!(cause instanceof StoreError)) throw cause;
      if (cause.code !== "damaged") throw new UsageError(cause.message);
      io.err(`holdfast import: ${cause.message}\n`);
      return 3;
    }
  },
};

function takeOver(to: string, demo: boolean, file: string, io: CommandIo): Imported {
  const store = openStore({ path: to, demo, now: Date.now });
  try {
    return importArchive(store, file, { progress: () => {}, goOn: () => io.signal.throwIfAborted() });
  } finally {
    store.close();
  }
}

function inWords(to: string, { file, added, entries, heads }: Imported): string {
  const chains = heads.map(({ origin, entries: n, head }) => `  chain ${origin}: ${n} entries, head ${head}\n`);
  return `${to}: ${added} of ${entries} entries of ${file} were new and stand here now.\n${chains.join("")}`;
}
