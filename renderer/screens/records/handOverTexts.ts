import { inBoth } from "../../words/inBoth.ts";

/** What Records says of handing over. */
export const handOverTexts = inBoth({
  folderHint: ["For example /media/backup or D:\\Export", "Zum Beispiel /media/backup oder D:\\Ausgabe"],
  folderNeeded: ["A folder is needed.", "Ein Ordner fehlt."],
  export: ["Everything in open formats", "Alles in offenen Formaten"],
  exportWhy: [
    "One archive with every entry as JSON Lines and as CSV, for other programs and for decades. Names and PINs stay here.",
    "Ein Archiv mit jedem Eintrag als JSON Lines und als CSV, für andere Programme und für Jahrzehnte. Namen und PINs bleiben hier.",
  ],
  exportDamaged: [
    "The records are damaged. What can be read is written all the same; damaged.txt in the archive names what cannot.",
    "Die Einträge sind beschädigt. Was sich lesen lässt, wird trotzdem geschrieben; damaged.txt im Archiv nennt, was fehlt.",
  ],
  leftOut: [
    (n: string) => `${n} places are damaged or gone; damaged.txt in the archive names them.`,
    (n: string) => `${n} Stellen sind beschädigt oder fehlen; damaged.txt im Archiv nennt sie.`,
  ],
  exportFolder: ["Folder for the archive", "Ordner für das Archiv"],
  withReadings: ["with the readings of every clamping", "mit den Messwerten jedes Spannvorgangs"],
  exportAct: ["Export everything", "Alles ausgeben"],
  exporting: ["Exporting …", "Wird ausgegeben …"],
  exported: [
    (entries: string, file: string) => `${entries} entries written to ${file}`,
    (entries: string, file: string) => `${entries} Einträge geschrieben nach ${file}`,
  ],
  import: ["Take an archive over", "Ein Archiv übernehmen"],
  importWhy: [
    "Every entry is checked against its chain. All of it is taken over, or nothing; what is here stays. Filing waits meanwhile.",
    "Jeder Eintrag wird gegen seine Kette geprüft. Alles wird übernommen oder nichts; was hier ist, bleibt. Abgelegt wird erst danach wieder.",
  ],
  importFile: ["Archive file", "Archivdatei"],
  importHint: ["For example /media/backup/holdfast.zip", "Zum Beispiel /media/backup/holdfast.zip"],
  fileNeeded: ["A file is needed.", "Eine Datei fehlt."],
  importAct: ["Take it over", "Übernehmen"],
  importing: ["Taking over …", "Wird übernommen …"],
  imported: [
    (added: string, all: string) => `${added} of ${all} entries were new and stand here now.`,
    (added: string, all: string) => `${added} von ${all} Einträgen waren neu und stehen jetzt hier.`,
  ],
  summary: ["A summary of the works", "Übersicht über das Werk"],
  summaryWhy: [
    "Every spindle in the order in which to look after it, and what changed since a day, as a PDF.",
    "Jede Spindel in der Reihenfolge, in der sie dran ist, und was sich seit einem Tag geändert hat, als PDF.",
  ],
  since: ["Changes since", "Änderungen seit"],
  sinceHint: ["Empty: the last 30 days.", "Leer: die letzten 30 Tage."],
  paper: ["Paper size", "Papierformat"],
  summaryAct: ["Make the summary", "Übersicht erstellen"],
  summing: ["Being made …", "Wird erstellt …"],
  saved: ["Handed to the browser as a download.", "Als Download an den Browser übergeben."],
  notAccredited: [
    "A report from here is a record of your own measurements, not an accredited certificate.",
    "Ein Bericht von hier hält eigene Messungen fest und ist kein akkreditiertes Zertifikat.",
  ],
  validate: ["Does this installation compute right?", "Rechnet diese Installation richtig?"],
  validateWhy: [
    "Runs published checks of standards and handbooks here, as a laboratory does before use and after each change.",
    "Rechnet veröffentlichte Prüfwerte aus Normen und Handbüchern hier nach, wie ein Labor es vor dem Einsatz und nach jeder Änderung tut.",
  ],
  validateAct: ["Validate the program", "Programm validieren"],
  reportAct: ["Report as PDF", "Bericht als PDF"],
  validating: ["Computing …", "Wird gerechnet …"],
  validated: [
    (n: string) => `${n} published cases, all passed.`,
    (n: string) => `${n} veröffentlichte Fälle, alle bestanden.`,
  ],
  notValidated: [
    (failed: number, n: number) =>
      `${failed} of ${n} cases failed. Do not use this installation for results that count until the cause is known.`,
    (failed: number, n: number) =>
      `${failed} von ${n} Fällen nicht bestanden. Diese Installation nicht für Ergebnisse nutzen, die zählen, bis die Ursache bekannt ist.`,
  ],
  programHash: ["hash of the measuring core", "Hash des Messkerns"],
});
