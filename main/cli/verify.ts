import { randomUUID } from "node:crypto";
import { JobError } from "../jobs/JobError.ts";
import { Jobs } from "../jobs/Jobs.ts";
import type { LedgerReport } from "../store/ledger/LedgerReport.ts";
import { openStore } from "../store/open.ts";
import { rebuildProjections } from "../store/projections/rebuildProjections.ts";
import { StoreError } from "../store/StoreError.ts";
import { type Command, type CommandIo, UsageError } from "./Command.ts";
import { dataFileOf, dataOptions } from "./dataOptions.ts";
import { lookInto } from "./lookInto.ts";
import { parseOptions } from "./parseOptions.ts";

/** Walks the whole data file and says what holds. Looks only; works beside a running program. */
export const command: Command = {
  usage:
    "[--data FILE | --demo] [--rebuild] [--json]   walk the records and say what holds; --rebuild also recomputes every list from the ledger",
  async run(args, io) {
    const { values } = parseOptions(args, {
      ...dataOptions,
      rebuild: { type: "boolean" },
      repair: { type: "boolean" },
    });
    const path = dataFileOf(values);
    const demo = values.demo === true;
    const damage = lookInto(path, demo);
    if (damage === undefined && values.repair === true) repair(path, demo);
    const report =
      damage === undefined
        ? await walk(path, values.rebuild === true || values.repair === true, io)
        : unreadable(damage);
    io.out(values.json === true ? `${JSON.stringify(report)}\n` : inWords(path, report));
    return report.damagedCount === 0 ? 0 : 3;
  },
};

/** The lists are made from the ledger; where only they are damaged, making them anew is all it takes. */
function repair(path: string, demo: boolean): void {
  try {
    const store = openStore({ path, demo, now: Date.now });
    try {
      rebuildProjections(store);
    } finally {
      store.close();
    }
  } catch (cause) {
    throw cause instanceof StoreError ? new UsageError(cause.message) : cause;
  }
}

async function walk(path: string, rebuild: boolean, io: CommandIo): Promise<LedgerReport> {
  const jobs = new Jobs({ path, demo: false, newId: randomUUID, onChange: () => {} });
  try {
    return await jobs.run("verify", { rebuild }, io.signal);
  } catch (cause) {
    if (cause instanceof JobError && cause.code === "damaged") return unreadable(cause.message);
    throw cause;
  }
}

const unreadable = (detail: string): LedgerReport => ({
  entries: 0,
  waveforms: 0,
  waveformsLeftOut: 0,
  signedHeads: 0,
  keys: [],
  chains: [],
  damaged: [{ what: "structure", fault: "unreadable", detail }],
  damagedCount: 1,
});

function inWords(path: string, report: LedgerReport): string {
  const lines = [
    `${path}: ${report.entries} entries, ${report.waveforms} waveforms, ${report.signedHeads} signed heads`,
  ];
  for (const { origin, entries, head, firstDamaged } of report.chains) {
    const holds =
      firstDamaged === undefined
        ? "holds"
        : `holds up to entry ${firstDamaged - 1}; entry ${firstDamaged} is the first damaged`;
    lines.push(`  chain ${origin}: ${entries} entries, ${holds}; head ${head}`);
  }
  if (report.waveformsLeftOut > 0)
    lines.push(`  ${report.waveformsLeftOut} waveforms stayed behind when records were taken over`);
  for (const { what, detail } of report.damaged.slice(0, SHOWN)) lines.push(`  damaged (${what}): ${detail}`);
  if (report.damagedCount > SHOWN) lines.push(`  and ${report.damagedCount - SHOWN} more`);
  lines.push(report.damagedCount === 0 ? "Nothing is damaged." : advice);
  return `${lines.join("\n")}\n`;
}

const SHOWN = 20;
const advice =
  "Something is damaged. Nothing was changed. Entries before the first damaged one of a chain, and those after it that are not named, still stand. " +
  "Restore the last backup to a new place (holdfast restore) and compare before you go on.";
