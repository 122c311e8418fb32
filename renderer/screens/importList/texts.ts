import { inBoth } from "../../words/inBoth.ts";

/** Everything the import of a list says. */
export const importTexts = inBoth({
  "act.spindles": ["Import a list", "Liste importieren"],
  "act.adapters": ["Import adapters", "Adapter importieren"],
  "act.gauges": ["Import gauges", "Messgeräte importieren"],
  "act.checks": ["Import old checks", "Alte Prüfungen importieren"],
  "title.spindles": ["Import spindles from a spreadsheet", "Spindeln aus einer Tabelle importieren"],
  "title.adapters": ["Import adapters from a spreadsheet", "Adapter aus einer Tabelle importieren"],
  "title.gauges": ["Import gauges from a spreadsheet", "Messgeräte aus einer Tabelle importieren"],
  "title.checks": ["Import old checks from a spreadsheet", "Alte Prüfungen aus einer Tabelle importieren"],
  why: [
    "A spreadsheet as XLSX or CSV, with the names of the columns above the rows. First you see what would come of it; then all rows are imported, or none.",
    "Eine Tabelle als XLSX oder CSV, mit den Namen der Spalten über den Zeilen. Zuerst sieht man, was daraus würde; dann werden alle Zeilen importiert oder keine.",
  ],
  checksWhy: [
    "One check a row: spindle, date, force; or several columns with one take each. Each is judged as a value typed in, against today’s limits, and is marked as imported. Nothing is known of its cycles and of the gauge’s state then.",
    "Eine Prüfung je Zeile: Spindel, Datum, Kraft; oder mehrere Spalten mit je einem Einzelwert. Jede wird wie ein eingetippter Wert beurteilt, nach den heutigen Grenzen, und als importiert gekennzeichnet. Über ihre Zyklen und den damaligen Zustand des Messgeräts ist nichts bekannt.",
  ],
  file: ["File", "Datei"],
  reading: ["Reading …", "Wird gelesen …"],
  summary: [
    (rows: string, separator: string, encoding: string) => `${rows} rows, ${separator} between the cells, ${encoding}.`,
    (rows: string, separator: string, encoding: string) =>
      `${rows} Zeilen, ${separator} zwischen den Zellen, ${encoding}.`,
  ],
  bookSummary: [
    (rows: string, sheet: string) => `${rows} rows of the sheet “${sheet}”.`,
    (rows: string, sheet: string) => `${rows} Zeilen aus dem Blatt „${sheet}“.`,
  ],
  "separator.,": ["a comma", "ein Komma"],
  "separator.;": ["a semicolon", "ein Semikolon"],
  "separator.\t": ["a tab", "ein Tabulator"],
  takes: [
    (rows: string) => `Rows with several takes: ${rows}. Each becomes one check, of their mean.`,
    (rows: string) => `Zeilen mit mehreren Einzelwerten: ${rows}. Aus jeder wird eine Prüfung mit deren Mittelwert.`,
  ],
  takesExample: [
    (row: string, takes: string, mean: string) => `Row ${row}: ${takes} give ${mean}.`,
    (row: string, takes: string, mean: string) => `Zeile ${row}: ${takes} ergeben ${mean}.`,
  ],
  columns: ["What each column is", "Was jede Spalte ist"],
  colHead: ["column", "Spalte"],
  colExamples: ["first cells", "erste Zellen"],
  colField: ["taken for", "gilt als"],
  leftOut: ["left out", "weggelassen"],
  unit: ["Unit of the forces", "Einheit der Kräfte"],
  unitHint: ["Where neither head nor cell names one.", "Wo weder Kopf noch Zelle eine nennt."],
  chooseUnit: ["choose", "wählen"],
  passOver: [
    "Pass over rows whose name is in the register already",
    "Zeilen übergehen, deren Name schon verzeichnet ist",
  ],
  passedOver: [(n: string) => `${n} rows are passed over.`, (n: string) => `${n} Zeilen werden übergangen.`],
  problems: ["To be put right first", "Zuerst zu klären"],
  remarks: ["To be looked at", "Zum Ansehen"],
  more: [(n: string) => `… and ${n} more.`, (n: string) => `… und ${n} weitere.`],
  row: [(row: string) => `Row ${row}`, (row: string) => `Zeile ${row}`],
  cell: [
    (row: string, column: string) => `Row ${row}, ${column}`,
    (row: string, column: string) => `Zeile ${row}, ${column}`,
  ],
  importAct: [(n: string) => `Import ${n} rows`, (n: string) => `${n} Zeilen importieren`],
  importing: ["Importing …", "Wird importiert …"],
  done: [(n: string) => `${n} rows imported.`, (n: string) => `${n} Zeilen importiert.`],
  tooLarge: [
    "This file is too large: 15 MB at most. Save only the list itself.",
    "Diese Datei ist zu groß: höchstens 15 MB. Bitte nur die Liste selbst speichern.",
  ],
  unreadableFile: ["This file cannot be read.", "Diese Datei lässt sich nicht lesen."],
});
