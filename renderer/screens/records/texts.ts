import { inBoth } from "../../words/inBoth.ts";

/** Everything Records says. */
export const recordsTexts = inBoth({
  title: ["Records", "Einträge"],
  why: [
    "Every check and every change is an entry that is never altered; each carries the hash of the one before.",
    "Jede Prüfung und jede Änderung ist ein Eintrag, der nie geändert wird; jeder trägt den Hash des vorigen.",
  ],
  dataFile: ["data file", "Datei"],
  verify: ["Are they whole?", "Sind sie heil?"],
  verifyWhy: [
    "Walks through every entry and every kept reading and compares the hashes.",
    "Geht durch jeden Eintrag und jeden aufgehobenen Messwert und vergleicht die Hashes.",
  ],
  verifyAct: ["Verify the records", "Einträge prüfen"],
  verifying: ["Verifying …", "Wird geprüft …"],
  whole: [(n: string) => `${n} entries verified: all whole.`, (n: string) => `${n} Einträge geprüft: alle heil.`],
  damagedFound: [
    (n: number) =>
      `${n} places are damaged. Keep the file as it is, restore from the last good copy beside it, and compare.`,
    (n: number) =>
      `${n} Stellen sind beschädigt. Die Datei so lassen, die letzte gute Kopie daneben wiederherstellen und vergleichen.`,
  ],
  backup: ["A safe copy", "Eine sichere Kopie"],
  backupWhy: [
    "One file holds everything, readings too. Copy it to another disk or a network folder; measuring goes on meanwhile.",
    "Eine Datei enthält alles, auch die Messwerte. Auf eine andere Platte oder einen Netzordner kopieren; gemessen werden kann weiter.",
  ],
  folder: ["Folder for the copy", "Ordner für die Kopie"],
  folderHint: ["For example /media/backup or D:\\Backup", "Zum Beispiel /media/backup oder D:\\Sicherung"],
  folderNeeded: ["A folder is needed.", "Ein Ordner fehlt."],
  backupAct: ["Make a copy", "Kopie anlegen"],
  copying: ["Copying …", "Wird kopiert …"],
  copied: [(path: string) => `Copied to ${path}`, (path: string) => `Kopiert nach ${path}`],
  copiedPlain: ["Copied.", "Kopiert."],
  rejudge: ["What would today's limits say?", "Was würden die heutigen Grenzen sagen?"],
  rejudgeWhy: [
    "Goes through all checks with today's limits and rules. Nothing is filed: what was filed stands.",
    "Geht alle Prüfungen mit den heutigen Grenzen und Regeln durch. Nichts wird abgelegt: Das Abgelegte gilt weiter.",
  ],
  rejudgeAct: ["Go through all checks", "Alle Prüfungen durchgehen"],
  rejudging: ["Going through the checks …", "Die Prüfungen werden durchgegangen …"],
  rejudgedSame: [
    (n: string) => `${n} checks: today's word is the filed one for all of them.`,
    (n: string) => `${n} Prüfungen: Heute hieße es bei allen wie abgelegt.`,
  ],
  rejudged: [
    (changed: string, n: string) => `${changed} of ${n} checks would be judged otherwise today.`,
    (changed: string, n: string) => `${changed} von ${n} Prüfungen würden heute anders beurteilt.`,
  ],
  notJudged: [(n: string) => `${n} could not be judged anew.`, (n: string) => `${n} ließen sich nicht neu beurteilen.`],
  filedAs: ["filed as", "abgelegt als"],
  todayAs: [(verdict: string) => `today ${verdict}`, (verdict: string) => `heute ${verdict}`],
  changedFirst: ["The gravest first", "Das Schwerste zuerst"],
  fromTo: [
    (filed: string, today: string) => `${filed}, today ${today}`,
    (filed: string, today: string) => `${filed}, heute ${today}`,
  ],
  moreChanged: [(n: string) => `… and ${n} more.`, (n: string) => `… und ${n} weitere.`],
  stop: ["Stop", "Anhalten"],
  stopped: ["Stopped; nothing was changed.", "Angehalten; nichts wurde geändert."],
});
