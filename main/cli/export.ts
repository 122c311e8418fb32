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
    "FILE.zip [--no-waveforms] [--salvage] [--data FILE | --demo] [--json]   all records as JSON Lines and CSV in one archive; works while the program runs; --salvage writes what can be read of damaged records",
  async run(args, io) {
    const { values, files } = parseOptions(args, {
      ...dataOptions,
      "no-waveforms": { type: "boolean" },
      salvage: { type: "boolean" },
    });
    const [file, ...more] = files;
    if (file === undefined || more.length > 0) throw new UsageError("name one file to write the archive to");
    const path = dataFileOf(values);
    const damage = lookInto(path, values.demo === true);
    const salvage = values.salvage === true;
    if (damage !== undefined && !salvage) {
      io.err(`holdfast export: ${damage}\n`);
      return 3;
    }
    const waveforms = values["no-waveforms"] !== true;
    try {
      const made = await runJob(
        { path, demo: values.demo === true },
        "export",
        { file: resolve(file), waveforms, salvage },
        io,
      );
      io.out(
        values.json === true
          ? `${JSON.stringify(made)}\n`
          : `${made.file}: ${made.entries} entries and ${made.waveforms} waveforms, ${sizeText(made.bytes)}\n`,
      );
      if (made.leftOut > 0)
        io.err(`holdfast export: ${made.leftOut} places are damaged; damaged.txt in the archive names them\n`);
      return made.leftOut > 0 ? 3 : 0;
    } catch (cause) {
      if (!(cause instanceof JobError && cause.code === "damaged")) throw cause;
      io.err(`holdfast export: ${cause.message}\n`);
      return 3;
    }
  },
};
