import { resolve } from "node:path";
import { JobError } from "../jobs/JobError.ts";
import { type Command, UsageError } from "./Command.ts";
import { dataFileOf, dataOptions } from "./dataOptions.ts";
import { lookInto } from "./lookInto.ts";
import { parseOptions } from "./parseOptions.ts";
import { runJob } from "./runJob.ts";
import { sizeText } from "./sizeText.ts";

/** Everything that is filed in open formats: JSON Lines and CSV in one archive. */
export const command: Command = {
  usage:
    "FILE.zip [--no-waveforms] [--data FILE | --demo] [--json]   all records as JSON Lines and CSV in one archive; works while the program runs",
  async run(args, io) {
    const { values, files } = parseOptions(args, { ...dataOptions, "no-waveforms": { type: "boolean" } });
    const [file, ...more] = files;
    if (file === undefined || more.length > 0) throw new UsageError("name one file to write the archive to");
    const path = dataFileOf(values);
    const damage = lookInto(path, values.demo === true);
    if (damage !== undefined) {
      io.err(`holdfast export: ${damage}\n`);
      return 3;
    }
    const waveforms = values["no-waveforms"] !== true;
    try {
      const made = await runJob({ path, demo: values.demo === true }, "export", { file: resolve(file), waveforms }, io);
      io.out(
        values.json === true
          ? `${JSON.stringify(made)}\n`
          : `${made.file}: ${made.entries} entries and ${made.waveforms} waveforms, ${sizeText(made.bytes)}\n`,
      );
      return 0;
    } catch (cause) {
      if (!(cause instanceof JobError && cause.code === "damaged")) throw cause;
      io.err(`holdfast export: ${cause.message}\n`);
      return 3;
    }
  },
};
