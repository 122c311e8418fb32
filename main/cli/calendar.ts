import { randomUUID } from "node:crypto";
import { writeFileSync } from "node:fs";
import { Jobs } from "../jobs/Jobs.ts";
import { dueCalendar } from "../report/dueCalendar.ts";
import { worksDay } from "../rounds/worksDay.ts";
import { openStore } from "../store/open.ts";
import { spindleList } from "../store/records/spindles.ts";
import { readWorks } from "../store/records/works.ts";
import { type Command, UsageError } from "./Command.ts";
import { dataFileOf, dataOptions } from "./dataOptions.ts";
import { languageOf } from "./languageOf.ts";
import { lookInto } from "./lookInto.ts";
import { parseOptions } from "./parseOptions.ts";

/** Due dates of all spindles as an iCalendar file, or as a list. Looks only; works beside a running program. */
export const command: Command = {
  usage:
    "[--data FILE | --demo] [--out FILE] [--language en|de] [--json]   due dates as iCalendar; taken in again, a calendar moves its events",
  async run(args, io) {
    const { values } = parseOptions(args, { ...dataOptions, out: { type: "string" }, language: { type: "string" } });
    const language = languageOf(values.language);
    const demo = values.demo === true;
    const path = dataFileOf(values);
    const damage = lookInto(path, demo);
    if (damage !== undefined) {
      io.err(`holdfast calendar: ${damage}\n`);
      return 3;
    }
    const jobs = new Jobs({ path, demo, newId: randomUUID, onChange: () => {} });
    const nowMs = Date.now();
    const { due } = await jobs.run("fleet", { nowMs }, io.signal);
    const store = openStore({ path, demo, readOnly: true, now: Date.now });
    try {
      const works = readWorks(store.db);
      if (works === undefined) throw new UsageError("the works are not described yet; start the program once");
      const today = worksDay(nowMs, works.timeZone);
      const stampMs = store.lastEntryAtMs() ?? 0;
      const { name: worksName, worksId } = works;
      const text = dueCalendar(due, spindleList(store.db), { worksName, worksId, language, stampMs });
      if (values.out !== undefined) writeFileSync(values.out, text);
      if (values.json === true) io.out(`${JSON.stringify({ today, due })}\n`);
      else if (values.out === undefined) io.out(text);
      else io.out(`${values.out}: ${due.length} due dates\n`);
      return 0;
    } finally {
      store.close();
    }
  },
};
