import { writeFileSync } from "node:fs";
import { type LabelSize, labelSheet, labelSizes } from "../report/labels/labelSheet.ts";
import { labelsOf } from "../report/labels/labelsOf.ts";
import { openStore } from "../store/open.ts";
import { type Command, UsageError } from "./Command.ts";
import { dataFileOf, dataOptions } from "./dataOptions.ts";
import { languageOf } from "./languageOf.ts";
import { lookInto } from "./lookInto.ts";
import { parseOptions } from "./parseOptions.ts";

const kinds = ["spindles", "adapters", "gauges"] as const;

/** Labels with QR codes as a PDF for label paper. Looks only; works beside a running program. */
export const command: Command = {
  usage:
    "[spindles|adapters|gauges] --out FILE.pdf [--size small|medium|large] [--skip N] [--language en|de] [--data FILE | --demo] [--json]   QR labels for label paper",
  async run(args, io) {
    const { values, files } = parseOptions(args, {
      ...dataOptions,
      out: { type: "string" },
      size: { type: "string" },
      skip: { type: "string" },
      language: { type: "string" },
    });
    const what = kinds.find((kind) => kind === (files[0] ?? "spindles"));
    if (what === undefined || files.length > 1)
      throw new UsageError(`say what the labels are for: ${kinds.join(", ")}`);
    const size = values.size ?? "medium";
    if (!Object.hasOwn(labelSizes, size))
      throw new UsageError(`--size must be one of ${Object.keys(labelSizes).join(", ")}, got ${size}`);
    const skip = Number(values.skip ?? "0");
    if (!Number.isInteger(skip) || skip < 0) throw new UsageError(`--skip must be a whole number, got ${values.skip}`);
    const language = languageOf(values.language);
    if (values.out === undefined) throw new UsageError("name the file to write with --out FILE.pdf");
    const path = dataFileOf(values);
    const damage = lookInto(path, values.demo === true);
    if (damage !== undefined) {
      io.err(`holdfast labels: ${damage}\n`);
      return 3;
    }
    const store = openStore({ path, demo: values.demo === true, readOnly: true, now: Date.now });
    const labels = labelsOf(store.db, what);
    store.close();
    if (labels.length === 0) throw new UsageError(`no ${what} are in use: there is nothing to print a label for`);
    writeFileSync(values.out, await labelSheet(labels, size as LabelSize, skip, language)); // hasOwn has just shown it
    const said =
      values.json === true
        ? JSON.stringify({ file: values.out, labels: labels.length })
        : `${values.out}: ${labels.length} labels`;
    io.out(`${said}\n`);
    return 0;
  },
};
