import { readFileSync } from "node:fs";
import { basename, resolve } from "node:path";
import { importedKind } from "../../app/contract/importViews.ts";
import { type Imported, importArchive } from "../archive/importArchive.ts";
import { dataFile } from "../store/dataFile.ts";
import { openStore } from "../store/open.ts";
import type { Store } from "../store/Store.ts";
import { StoreError } from "../store/StoreError.ts";
import { type Command, type CommandIo, UsageError } from "./Command.ts";
import { dataOptions } from "./dataOptions.ts";
import { importSheet, sheetOptions } from "./importSheet.ts";
import { parseOptions } from "./parseOptions.ts";

const options = { ...dataOptions, ...sheetOptions } as const;

/** Takes an archive's records over, or a spreadsheet's, into a new data file or beside what is there. */
export const command: Command = {
  usage:
    "FILE.zip [--data FILE | --demo] [--json]   take the records of an archive over, all or nothing; refused while the program has the data file open\n" +
    "         FILE.csv|FILE.xlsx --kind checks|spindles|adapters|gauges [--column HEAD=FIELD]… [--unit U] [--date-order day|month] [--sheet NAME] " +
    "[--spindle NAME=NAME]… [--new-spindles create|leave-out] [--pass-over-known] [--preview]   take a spreadsheet in, all rows or none",
  async run(args, io) {
    const { values, files } = parseOptions(args, options);
    const [file, ...more] = files;
    if (file === undefined || more.length > 0) throw new UsageError("name one file to take over");
    const demo = values.demo === true;
    const to = values.data ?? dataFile(demo);
    const say = (inWords: string, result: object) =>
      io.out(values.json === true ? `${JSON.stringify({ data: to, ...result })}\n` : inWords);
    try {
      if (values.kind !== undefined) {
        const what = importedKind.safeParse(values.kind);
        if (!what.success)
          throw new UsageError(`there is no kind ${values.kind}; it is one of ${importedKind.options.join(", ")}`);
        const sheet = { what: what.data, fileName: basename(file).slice(-260), base64: bytesOf(file) };
        const done = await withStore(to, demo, (store) => importSheet(store, sheet, values, io));
        say(done.inWords, done.result);
        return 0;
      }
      const taken = await withStore(to, demo, (store) => importArchive(store, resolve(file), watchOf(io)));
      say(inWords(to, taken), taken);
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

async function withStore<T>(to: string, demo: boolean, work: (store: Store) => T | Promise<T>): Promise<T> {
  const store = openStore({ path: to, demo, now: Date.now });
  try {
    return await work(store);
  } finally {
    store.close();
  }
}

const watchOf = (io: CommandIo) => ({ progress: () => {}, goOn: () => io.signal.throwIfAborted() });

function bytesOf(file: string): string {
  try {
    return readFileSync(file).toString("base64");
  } catch {
    throw new UsageError(`${file} cannot be read`);
  }
}

function inWords(to: string, { file, added, entries, heads }: Imported): string {
  const chains = heads.map(({ origin, entries: n, head }) => `  chain ${origin}: ${n} entries, head ${head}\n`);
  return `${to}: ${added} of ${entries} entries of ${file} were new and stand here now.\n${chains.join("")}`;
}
