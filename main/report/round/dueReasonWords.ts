import type { DueReason } from "../../../app/round/due/DueFacts.ts";

/** Why a spindle is due, in the words of sheets and calendars. */
export const dueReasonWords: Readonly<Record<"en" | "de", Readonly<Record<DueReason, string>>>> = {
  en: {
    stopped: "a stop stands on it",
    afterCrash: "after a crash",
    act: "the last check said act",
    remeasure: "marked to be measured again",
    afterService: "after work on the spindle",
    cannotTell: "the last check could not tell",
    neverMeasured: "never measured",
    watch: "it is watched",
    toolChanges: "tool changes since the last check",
    forecast: "it nears a limit",
    interval: "the interval is over",
  },
  de: {
    stopped: "für sie gilt ein Halt",
    afterCrash: "nach einem Anprall",
    act: "letzte Prüfung: handeln",
    remeasure: "zum Nachmessen vorgemerkt",
    afterService: "nach Arbeit an der Spindel",
    cannotTell: "letzte Prüfung ohne Aussage",
    neverMeasured: "noch nie gemessen",
    watch: "sie wird beobachtet",
    toolChanges: "Werkzeugwechsel seit der letzten Prüfung",
    forecast: "sie nähert sich einer Grenze",
    interval: "das Intervall ist abgelaufen",
  },
};
