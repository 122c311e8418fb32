import { randomUUID } from "node:crypto";
import { writeFileSync } from "node:fs";
import { dueList } from "../../app/round/due/dueList.ts";
import { Jobs } from "../jobs/Jobs.ts";
import { dueCalendar } from "../report/dueCalendar.ts";
import { dueFacts } from "../rounds/dueFactsOf.ts";
import { worksCalendar } from "../rounds/worksCalendar.ts";
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
    const fleet = await jobs.run("fleet", {}, io.signal);
    const store = openStore({ path, demo, readOnly: true, now: Date.now });
    try {
      const works = readWorks(store.db);
      if (works === undefined) throw new UsageError("the works are not described yet; start the program once");
      const today = worksDay(Date.now(), works.timeZone);
      const rows = dueList(dueFacts(store.db, works, fleet), worksCalendar(store.db), today);
      const stampMs = store.lastEntryAtMs() ?? 0;
      const { name: worksName, worksId } = works;
      const text = dueCalendar(rows, spindleList(store.db), { worksName, worksId, language, stampMs });
      if (values.out !== undefined) writeFileSync(values.out, text);
      if (values.json === true) io.out(`${JSON.stringify({ today, due: rows })}\n`);
      else if (values.out === undefined) io.out(text);
      else io.out(`${values.out}: ${rows.length} due dates\n`);
      return 0;
    } finally {
      store.close();
    }
  },
};
