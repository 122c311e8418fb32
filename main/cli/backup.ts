import { randomUUID } from "node:crypto";
import { JobError } from "../jobs/JobError.ts";
import { Jobs } from "../jobs/Jobs.ts";
import type { BackupMade } from "../store/copies/backup.ts";
import { type Command, UsageError } from "./Command.ts";
import { dataFileOf, dataOptions } from "./dataOptions.ts";
import { lookInto } from "./lookInto.ts";
import { parseOptions } from "./parseOptions.ts";

/** Makes a verified copy of the data file, while the program may go on measuring. */
export const command: Command = {
  usage:
    "DIR [--data FILE | --demo] [--json]   copy the records into a folder and walk the copy; works while the program runs",
  async run(args, io) {
    const { values, files } = parseOptions(args, dataOptions);
    const [folder, ...more] = files;
    if (folder === undefined || more.length > 0) throw new UsageError("name one folder to put the backup in");
    const path = dataFileOf(values);
    const damage = lookInto(path, values.demo === true);
    if (damage !== undefined) {
      io.err(`holdfast backup: ${damage}\n`);
      return 3;
    }
    const jobs = new Jobs({ path, demo: values.demo === true, newId: randomUUID, onChange: () => {} });
    try {
      const made = await jobs.run("backup", { folder }, io.signal);
      io.out(values.json === true ? `${JSON.stringify(made)}\n` : inWords(made));
      return made.damagedCount === 0 ? 0 : 3;
    } catch (cause) {
      if (cause instanceof JobError && cause.code !== "internal") throw new UsageError(cause.message);
      throw cause;
    }
  },
};

function inWords({ file, entries, bytes, damaged, damagedCount }: BackupMade): string {
  const size = bytes < 1e6 ? `${Math.ceil(bytes / 1e3)} KB` : `${(bytes / 1e6).toFixed(1)} MB`;
  if (damagedCount === 0) return `${file}: ${entries} entries, ${size}, opened and walked: nothing is damaged.\n`;
  return (
    `${file}: ${entries} entries, ${size}. The records themselves are damaged in ${damagedCount} places, first: ${damaged[0]?.detail}. ` +
    "The copy holds what could be read; older backups were left alone.\n"
  );
}
