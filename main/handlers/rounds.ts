import type { Handlers } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { MadeFile, RoundView } from "../../app/contract/roundViews.ts";
import type { Round } from "../../app/ledger/round.ts";
import { dueList } from "../../app/round/due/dueList.ts";
import { dueCalendar } from "../report/dueCalendar.ts";
import { labelSheet } from "../report/labels/labelSheet.ts";
import { labelsOf } from "../report/labels/labelsOf.ts";
import { roundCsv } from "../report/round/roundCsv.ts";
import { roundSheet } from "../report/round/roundSheet.ts";
import { sheetFacts } from "../report/round/sheetFacts.ts";
import { dueFacts } from "../rounds/dueFactsOf.ts";
import { planRound } from "../rounds/planRound.ts";
import { readRound, roundList } from "../rounds/roundRecords.ts";
import { refuseIfChanged } from "../rounds/roundVersion.ts";
import { toRoundView } from "../rounds/toRoundView.ts";
import { CALENDAR_KEY, worksCalendar } from "../rounds/worksCalendar.ts";
import { worksDay } from "../rounds/worksDay.ts";
import { spindleList } from "../store/records/spindles.ts";
import type { Context } from "./Context.ts";

type Part = Pick<
  Handlers,
  | "rounds.due"
  | "rounds.getCalendar"
  | "rounds.saveCalendar"
  | "rounds.list"
  | "rounds.get"
  | "rounds.save"
  | "rounds.end"
  | "rounds.sheet"
  | "rounds.calendar"
  | "labels.print"
>;

/** What to measure next, the rounds made of it, and what is printed for them. */
export function roundHandlers(context: Context): Part {
  const { store, hub, works, now } = context;
  const today = () => worksDay(now(), works().timeZone);

  const found = (roundId: string): Round => {
    const round = readRound(store.db, roundId);
    if (round === undefined)
      throw new AppError("notFound", "There is no such round in this data file.", { key: "noRound" });
    return round;
  };
  const file = (body: Round): RoundView => {
    store.append([{ kind: "round", body }]);
    const view = toRoundView(store.db, body, works());
    hub.say("round.changed", view);
    return view;
  };
  const due = async () => {
    const fleet = await context.fleet.view().catch((cause: unknown) => {
      context.log.error("forecasts for the due list failed", cause);
      return undefined;
    });
    const calendar = worksCalendar(store.db);
    const rows = fleet?.due ?? dueList(dueFacts(store.db, works(), undefined), calendar, today());
    return { today: today(), rows, calendar };
  };

  return {
    "rounds.due": due,
    "rounds.getCalendar": () => worksCalendar(store.db),
    "rounds.saveCalendar": (calendar) => {
      const wrong = calendar.closed.find(({ from, to }) => from > to);
      if (wrong !== undefined)
        throw new AppError("invalid", `${wrong.from} to ${wrong.to}: the last day lies before the first.`, {
          key: "calendarOrder",
          field: "closed",
        });
      store.append([{ kind: "setting", body: { key: CALENDAR_KEY, value: calendar } }]);
      hub.say("register.changed", { what: "works" }); // due dates follow it on every page
      return calendar;
    },
    "rounds.list": () => roundList(store.db).map((round) => toRoundView(store.db, round, works())),
    "rounds.get": ({ roundId }) => toRoundView(store.db, found(roundId), works()),
    "rounds.save": (input) => {
      const before = input.roundId === undefined ? undefined : found(input.roundId);
      if (before !== undefined && before.state !== "open")
        throw new AppError("conflict", "This round has ended. Make a new one.", { key: "roundEnded" });
      if (before !== undefined) refuseIfChanged(before, input.version);
      return file(planRound(store.db, input, input.roundId ?? store.newId(), before));
    },
    "rounds.end": ({ roundId, version, state }) => {
      const round = found(roundId);
      if (round.state !== state) refuseIfChanged(round, version);
      const view = round.state === state ? toRoundView(store.db, round, works()) : file({ ...round, state });
      context.lead.forget(roundId);
      return view;
    },
    "rounds.sheet": async ({ roundId, as, language, paper = "A4" }): Promise<MadeFile> => {
      const round = found(roundId);
      const facts = sheetFacts(store, toRoundView(store.db, round, works()), works(), language);
      const name = `round-${round.on}`;
      return as === "csv"
        ? made(`${name}.csv`, "text/csv;charset=utf-8", Buffer.from(roundCsv(facts, language)))
        : made(
            `${name}.pdf`,
            "application/pdf",
            await roundSheet(facts, language, { version: context.version, nowMs: now(), paper }),
          );
    },
    "rounds.calendar": async ({ language }): Promise<MadeFile> => {
      const { rows } = await due();
      const text = dueCalendar(rows, spindleList(store.db), {
        worksName: works().name,
        worksId: works().worksId,
        language,
        stampMs: store.lastEntryAtMs() ?? now(),
      });
      return made("holdfast-due.ics", "text/calendar;charset=utf-8", Buffer.from(text));
    },
    "labels.print": async ({ what, ids, size, skip, language = "en" }): Promise<MadeFile> => {
      const labels = labelsOf(store.db, what, ids);
      if (labels.length === 0)
        throw new AppError("invalid", "There is nothing in use to print a label for.", { key: "noLabels" });
      return made(`labels-${what}.pdf`, "application/pdf", await labelSheet(labels, size, skip ?? 0, language));
    },
  };
}

const made = (fileName: string, mime: string, bytes: Uint8Array): MadeFile => ({
  fileName,
  mime,
  base64: Buffer.from(bytes).toString("base64"),
});
