import type { Writing } from "../../records/Writing.ts";
import { roundReportTexts } from "./roundReportTexts.ts";
import type { StopResult } from "./roundResult.ts";

type Todo = { readonly text: string; readonly grave: boolean };

/** What is to be done after a round, the gravest first; one line when nothing is. Spindles no longer in use ask for nothing. */
export function roundTodo(stops: readonly StopResult[], write: Writing): Todo[] {
  const words = roundReportTexts[write.language];
  const inUse = stops.filter(({ stop }) => !stop.retired);
  const line = (
    key: "stop" | "act" | "cannotTell" | "watch" | "missing" | "remeasure",
    which: (result: StopResult) => boolean,
    grave: boolean,
  ): Todo[] => {
    const found = inUse.filter(which);
    const names = found.map(({ stop, dueOn }) =>
      key !== "watch" || dueOn === undefined ? stop.name : words.by(stop.name, write.plainDay(dueOn)),
    );
    return found.length === 0 ? [] : [{ text: words[`todo.${key}`](names.join(", ")), grave }];
  };
  const verdict = (wanted: string) => (result: StopResult) => result.filed?.check.verdict === wanted;
  const todo = [
    ...line("stop", verdict("stop"), true),
    ...line("act", verdict("act"), true),
    ...line("cannotTell", verdict("cannotTell"), true),
    ...line("watch", verdict("watch"), false),
    ...line("missing", ({ filed }) => filed === undefined, false),
    ...line("remeasure", ({ filed }) => filed?.summary.remeasure === true, false),
  ];
  return todo.length > 0 ? todo : [{ text: words.nothing, grave: false }];
}
