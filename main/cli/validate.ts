import { validationReport } from "../report/validationReport.ts";
import { notRun, validate } from "../validate/validate.ts";
import { type Command, UsageError } from "./Command.ts";
import { languageOf } from "./languageOf.ts";
import { paperOf } from "./paperOf.ts";
import { parseOptions } from "./parseOptions.ts";
import { writeNew } from "./writeNew.ts";

/** The published checks on this installation. Needs no data file. */
export const command: Command = {
  usage:
    "[--out FILE.pdf] [--paper A4|Letter] [--language en|de] [--json]   run the published checks on this installation; exit 3 when one fails",
  async run(args, io) {
    const { values, files } = parseOptions(args, {
      out: { type: "string" },
      paper: { type: "string" },
      language: { type: "string" },
      json: { type: "boolean" },
    });
    if (files.length > 0) throw new UsageError("it takes no file; name the report with --out FILE.pdf");
    const look = { paper: paperOf(values.paper), language: languageOf(values.language) };
    const found = validate({ nowMs: Date.now(), goOn: () => io.signal.throwIfAborted() });
    if (values.out !== undefined) writeNew(values.out, await validationReport(found, notRun(), look));
    io.out(values.json === true ? `${JSON.stringify(found)}\n` : inWords(found));
    return found.failed.length === 0 ? 0 : 3;
  },
};

function inWords({ program, programHash, cases, failed }: ReturnType<typeof validate>): string {
  const wrong = cases
    .filter((one) => !one.pass)
    .map((one) => `  FAILED ${one.id} ${one.what}: expected ${one.expected}, got ${one.got} (within ${one.within})\n`);
  const end = failed.length === 0 ? "all passed" : `${failed.length} failed`;
  return `Holdfast ${program}, measuring core ${programHash ?? "not at hand"}\n${cases.length} published cases: ${end}\n${wrong.join("")}`;
}
