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
  stop: ["Stop", "Anhalten"],
  stopped: ["Stopped; nothing was changed.", "Angehalten; nichts wurde geändert."],
});
