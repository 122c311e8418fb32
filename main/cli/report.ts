import { type ReportOrder, reportOrder } from "../../app/contract/reports.ts";
import { openReader } from "../store/open.ts";
import { spindleList } from "../store/records/spindles.ts";
import { type Command, UsageError } from "./Command.ts";
import { dataFileOf, dataOptions } from "./dataOptions.ts";
import { languageOf } from "./languageOf.ts";
import { lookInto } from "./lookInto.ts";
import { paperOf } from "./paperOf.ts";
import { parseOptions } from "./parseOptions.ts";
import { proofDataFor, proofIdOf } from "./reportProof.ts";
import { runJob } from "./runJob.ts";
import { writeNew } from "./writeNew.ts";

/** Reports of the records as PDF. Looks only; works beside a running program. */
export const command: Command = {
  usage:
    "check ID | spindle NAME | round ID | proof ID|GAUGE | works [--since DATE] --out FILE.pdf [--paper A4|Letter] [--language en|de] [--data FILE | --demo] [--json]   a report as PDF; a proof also as data, by the name FILE.csv or FILE.json",
  async run(args, io) {
    const { values, files } = parseOptions(args, {
      ...dataOptions,
      out: { type: "string" },
      paper: { type: "string" },
      language: { type: "string" },
      since: { type: "string" },
    });
    if (values.out === undefined) throw new UsageError("name the file to write with --out FILE.pdf");
    const path = dataFileOf(values);
    const demo = values.demo === true;
    const damage = lookInto(path, demo);
    if (damage !== undefined) {
      io.err(`holdfast report: ${damage}\n`);
      return 3;
    }
    const order = orderOf(path, files, {
      paper: paperOf(values.paper),
      language: languageOf(values.language),
      since: values.since,
    });
    const data = order.what === "proof" ? proofDataFor(path, order.proofId, values.out) : undefined;
    writeNew(values.out, data ?? Buffer.from((await runJob({ path, demo }, "report", order, io)).base64, "base64"));
    io.out(values.json === true ? `${JSON.stringify({ file: values.out, ...order })}\n` : `${values.out}\n`);
    return 0;
  },
};

type Options = {
  readonly paper: "A4" | "Letter";
  readonly language: "en" | "de";
  readonly since: string | undefined;
};

function orderOf(path: string, [what, which, ...more]: readonly string[], { since, ...look }: Options): ReportOrder {
  if (more.length > 0) throw new UsageError("one report at a time");
  const order = reportOrder.safeParse(
    what === "check"
      ? { what, checkId: which, ...look }
      : what === "spindle"
        ? { what, spindleId: spindleIdOf(path, which), ...look }
        : what === "round"
          ? { what, roundId: which, ...look }
          : what === "proof"
            ? { what, proofId: proofIdOf(path, which), ...look }
            : { what, since, ...look },
  );
  if (!order.success || (what === "works" && which !== undefined))
    throw new UsageError("say what of: check ID, spindle NAME, round ID, proof ID or works, and --since as YYYY-MM-DD");
  return order.data;
}

/** A spindle by its name as people write it, or by its id. */
function spindleIdOf(path: string, named: string | undefined): string | undefined {
  const db = openReader(path);
  try {
    const wanted = named?.trim().toLowerCase();
    const found = spindleList(db).filter(
      ({ spindle }) => spindle.spindleId === wanted || spindle.name.toLowerCase() === wanted,
    );
    if (found.length === 1) return found[0]!.spindle.spindleId;
    throw new UsageError(
      found.length === 0
        ? `there is no spindle ${named ?? "(name it)"}`
        : `there are ${found.length} spindles ${named}; name one by its id`,
    );
  } finally {
    db.close();
  }
}
