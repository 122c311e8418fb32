import { inBoth } from "../../words/inBoth.ts";

/** Everything the import of a list says. */
export const importTexts = inBoth({
  "act.spindles": ["Import a list", "Liste importieren"],
  "act.adapters": ["Import adapters", "Adapter importieren"],
  "act.gauges": ["Import gauges", "Messgeräte importieren"],
  "title.spindles": ["Import spindles from a spreadsheet", "Spindeln aus einer Tabelle importieren"],
  "title.adapters": ["Import adapters from a spreadsheet", "Adapter aus einer Tabelle importieren"],
  "title.gauges": ["Import gauges from a spreadsheet", "Messgeräte aus einer Tabelle importieren"],
  why: [
    "Saved as CSV, with the names of the columns in the first line. First you see what would come of it; then all rows are imported, or none.",
    "Als CSV gespeichert, mit den Namen der Spalten in der ersten Zeile. Zuerst sieht man, was daraus würde; dann werden alle Zeilen importiert oder keine.",
  ],
  file: ["File", "Datei"],
  reading: ["Reading …", "Wird gelesen …"],
  summary: [
    (rows: string, separator: string, encoding: string) => `${rows} rows, ${separator} between the cells, ${encoding}.`,
    (rows: string, separator: string, encoding: string) =>
      `${rows} Zeilen, ${separator} zwischen den Zellen, ${encoding}.`,
  ],
  "separator.,": ["a comma", "ein Komma"],
  "separator.;": ["a semicolon", "ein Semikolon"],
  "separator.\t": ["a tab", "ein Tabulator"],
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

/** What stands against an import, less the place. `about` is the cell, the other row or the field. */
export const problemTexts = inBoth({
  unreadable: ["this is no table with a head", "das ist keine Tabelle mit Kopfzeile"],
  cells: [
    "more or fewer cells than the head; quote cells that hold the separator",
    "mehr oder weniger Zellen als der Kopf; Zellen mit dem Trennzeichen in Anführungszeichen setzen",
  ],
  fieldTwice: [
    (field: string) => `two columns are taken for “${field}”: leave one out`,
    (field: string) => `zwei Spalten gelten als „${field}“: eine weglassen`,
  ],
  fieldMissing: [
    (field: string) => `no column is taken for “${field}”, and it is needed`,
    (field: string) => `keine Spalte gilt als „${field}“, und sie wird gebraucht`,
  ],
  unitWanted: [
    (about: string) => `no unit of force for “${about}”: say which one it is`,
    (about: string) => `keine Krafteinheit für „${about}“: bitte angeben`,
  ],
  torque: [
    (about: string) => `“${about}” is a torque and no force: it cannot be read as one`,
    (about: string) => `„${about}“ ist ein Drehmoment und keine Kraft: als Kraft wird es nicht gelesen`,
  ],
  mass: [
    (about: string) => `“${about}” is a mass; write kgf or lbf where a force is meant`,
    (about: string) => `„${about}“ ist eine Masse; kgf oder lbf schreiben, wenn eine Kraft gemeint ist`,
  ],
  noForce: [(about: string) => `“${about}” is no force`, (about: string) => `„${about}“ ist keine Kraft`],
  noNumber: [
    (about: string) => `“${about}” is not the number that belongs here`,
    (about: string) => `„${about}“ ist nicht die Zahl, die hierher gehört`,
  ],
  noDate: [
    (about: string) => `“${about}” is no date here; write 2026-04-03 or 03.04.2026`,
    (about: string) => `„${about}“ ist hier kein Datum; 03.04.2026 oder 2026-04-03 schreiben`,
  ],
  mixedMarks: [
    (about: string) => `“${about}” has another decimal mark than the rows before: use one in the whole file`,
    (about: string) =>
      `„${about}“ hat ein anderes Dezimalzeichen als die Zeilen davor: eines für die ganze Datei benutzen`,
  ],
  needed: [(field: string) => `“${field}” is needed`, (field: string) => `„${field}“ wird gebraucht`],
  twinInFile: [
    (row: string) => `this stands in row ${row} already; the two could not be told apart`,
    (row: string) => `das steht schon in Zeile ${row}; die beiden ließen sich nicht unterscheiden`,
  ],
  twinInRegister: [
    (about: string) => `“${about}” is in the register already`,
    (about: string) => `„${about}“ ist schon verzeichnet`,
  ],
  limits: [
    "the limits must rise from minimum over warning and nominal to maximum",
    "die Grenzen müssen von der Mindestkraft über Warngrenze und Sollkraft zur Höchstkraft steigen",
  ],
  range: [
    (field: string) =>
      `“${field}” is outside what can be: forces, scales and uncertainties are above zero, names and notes end somewhere`,
    (field: string) =>
      `„${field}“ liegt außerhalb des Möglichen: Kräfte, Faktoren und Unsicherheiten sind über null, Namen und Bemerkungen enden irgendwo`,
  ],
  taperUnknown: [
    (about: string) => `“${about}” is no taper of a standard known here; it is kept as it stands`,
    (about: string) => `„${about}“ ist kein hier bekannter Normkegel; er wird übernommen, wie er dasteht`,
  ],
});

/** What a column can be taken for. */
export const fieldTexts = inBoth({
  name: ["name", "Name"],
  machine: ["machine", "Maschine"],
  area: ["area", "Bereich"],
  taper: ["taper", "Kegel"],
  unitSerial: ["serial number of the unit in it", "Seriennummer der Einheit darin"],
  minimum: ["minimum", "Mindestkraft"],
  warning: ["warning limit", "Warngrenze"],
  nominal: ["nominal", "Sollkraft"],
  maximum: ["maximum", "Höchstkraft"],
  unit: ["unit of force", "Krafteinheit"],
  limitsFrom: ["where the figures come from", "Herkunft der Zahlen"],
  intervalDays: ["days between checks", "Tage zwischen Prüfungen"],
  intervalToolChanges: ["tool changes between checks", "Werkzeugwechsel zwischen Prüfungen"],
  wedgeRatio: ["wedge ratio", "Keilübersetzung"],
  springPack: ["spring pack", "Federpaket"],
  order: ["position on the way", "Platz auf dem Weg"],
  note: ["note", "Bemerkung"],
  serial: ["serial number", "Seriennummer"],
  scale: ["scale", "Faktor"],
  scaleUncertainty: ["standard uncertainty of the scale", "Standardunsicherheit des Faktors"],
  calibratedOn: ["calibrated on", "kalibriert am"],
  dueOn: ["due on", "fällig am"],
  capacity: ["capacity", "Nennlast"],
  resolution: ["resolution", "Auflösung"],
  provedOn: ["proved on", "geprüft am"],
});
