import { inBoth } from "../../words/inBoth.ts";

/** What Setup says of the daily backup. */
export const backupTexts = inBoth({
  title: ["A copy a day", "Eine Kopie am Tag"],
  why: [
    "One file with everything, written while you measure, then opened and walked through entry by entry. A stick, another disk or a network folder: anything that is not this disk.",
    "Eine Datei mit allem, geschrieben, während gemessen wird, danach geöffnet und Eintrag für Eintrag durchgegangen. Ein Stick, eine andere Platte oder ein Netzordner: alles, was nicht diese Platte ist.",
  ],
  folder: ["Folder for the daily copy", "Ordner für die tägliche Kopie"],
  folderHint: [
    "For example /media/backup or D:\\Backup. Empty: no copy is made.",
    "Zum Beispiel /media/backup oder D:\\Sicherung. Leer: Es wird keine Kopie gemacht.",
  ],
  keep: ["Older copies that stay, one each", "Ältere Kopien, die bleiben, je eine"],
  days: ["days", "Tage"],
  weeks: ["weeks", "Wochen"],
  months: ["months", "Monate"],
  wholeNumber: [
    (low: number, high: number) => `${low} to ${high}`,
    (low: number, high: number) => `${low} bis ${high}`,
  ],
  save: ["Save and copy now", "Speichern und jetzt kopieren"],
  saveNone: ["Save without a copy", "Ohne Kopie speichern"],
  none: ["No daily copy: no folder is chosen.", "Keine tägliche Kopie: Es ist kein Ordner gewählt."],
  noneDemo: [
    "The demo makes no daily copy. The folder is for your own records.",
    "Die Demo macht keine tägliche Kopie. Der Ordner gilt für die eigenen Einträge.",
  ],
  last: [(when: string) => `Last copy: ${when}.`, (when: string) => `Letzte Kopie: ${when}.`],
  lastVerified: [
    (when: string, n: string) => `Last copy: ${when}, ${n} entries walked, all whole.`,
    (when: string, n: string) => `Letzte Kopie: ${when}, ${n} Einträge durchgegangen, alle heil.`,
  ],
  waiting: ["The first copy is being made.", "Die erste Kopie wird gemacht."],
  failed: [
    (why: string) => `The last try failed: ${why} It is tried again every ten minutes.`,
    (why: string) => `Der letzte Versuch schlug fehl: ${why} Alle zehn Minuten wird es wieder versucht.`,
  ],
  bannerNone: [
    "These records have no copy anywhere. A folder for a daily one is chosen in Setup.",
    "Von diesen Einträgen gibt es nirgends eine Kopie. Ein Ordner für eine tägliche wird unter Einrichten gewählt.",
  ],
  bannerLate: [
    (when: string) => `No copy of the records since ${when}.`,
    (when: string) => `Keine Kopie der Einträge seit ${when}.`,
  ],
  bannerNever: ["No copy of the records has been made yet.", "Von den Einträgen gibt es noch keine Kopie."],
  toSetup: ["To Setup", "Zum Einrichten"],
});
