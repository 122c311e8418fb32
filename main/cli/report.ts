import { type ReportOrder, reportOrder } from "../../app/contract/reports.ts";
import { openReader } from "../store/open.ts";
import { spindleList } from "../store/records/spindles.ts";
import { type Command, UsageError } from "./Command.ts";
import { dataFileOf, dataOptions } from "./dataOptions.ts";
import { lookInto } from "./lookInto.ts";
import { paperOf } from "./paperOf.ts";
import { parseOptions } from "./parseOptions.ts";
import { runJob } from "./runJob.ts";
import { writeNew } from "./writeNew.ts";

/** Reports of the records as PDF. Looks only; works beside a running program. */
export const command: Command = {
  usage:
    "check ID | spindle NAME | works [--since DATE] --out FILE.pdf [--paper A4|Letter] [--data FILE | --demo] [--json]   a report as PDF",
  async run(args, io) {
    const { values, files } = parseOptions(args, {
      ...dataOptions,
      out: { type: "string" },
      paper: { type: "string" },
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
    const order = orderOf(path, files, { paper: paperOf(values.paper), since: values.since });
    const { base64 } = await runJob({ path, demo }, "report", order, io);
    writeNew(values.out, Buffer.from(base64, "base64"));
    io.out(values.json === true ? `${JSON.stringify({ file: values.out, ...order })}\n` : `${values.out}\n`);
    return 0;
  },
};

type Options = { readonly paper: "A4" | "Letter"; readonly since: string | undefined };

function orderOf(path: string, [what, which, ...more]: readonly string[], { paper, since }: Options): ReportOrder {
  if (more.length > 0) throw new UsageError("one report at a time");
  const order = reportOrder.safeParse(
    what === "check"
      ? { what, checkId: which, paper }
      : what === "spindle"
        ? { what, spindleId: spindleIdOf(path, which), paper }
        : { what, since, paper },
  );
  if (!order.success || (what === "works" && which !== undefined))
    throw new UsageError("say what of: check ID, spindle NAME or works, and --since as YYYY-MM-DD");
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
