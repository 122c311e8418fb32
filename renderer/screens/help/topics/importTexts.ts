import { inBoth } from "../../../words/inBoth.ts";

export const importTexts = inBoth({
  title: ["Bring old lists in", "Alte Listen übernehmen"],
  lead: [
    "Spindles, gauges, adapters and old checks come from a spreadsheet or a CSV file, whole or not at all.",
    "Spindeln, Messgeräte, Adapter und alte Prüfungen kommen aus einer Tabelle oder CSV-Datei, ganz oder gar nicht.",
  ],
  step1: [
    "Open the list's place (Spindles, Gauges or Records) and choose Import.",
    "Den Ort der Liste öffnen (Spindeln, Messgeräte oder Einträge) und Import wählen.",
  ],
  step2: [
    "Choose the file. Its columns are matched by their heads; mend what was not understood.",
    "Die Datei wählen. Die Spalten werden nach ihren Köpfen zugeordnet; nachhelfen, wo etwas nicht verstanden wurde.",
  ],
  step3: [
    "Look at the preview: each row that cannot be taken says why, with its line number. Correct the file or leave the row out.",
    "Die Vorschau ansehen: Jede Zeile, die nicht geht, sagt mit ihrer Nummer warum. Die Datei verbessern oder die Zeile weglassen.",
  ],
  step4: [
    "Import. Everything is taken in one step, or nothing.",
    "Importieren. Alles wird in einem Schritt übernommen oder nichts.",
  ],
  picture: [
    "The list of spindles; Import stands at its head.",
    "Die Liste der Spindeln; der Import steht an ihrem Kopf.",
  ],
  note1: [
    "Units stand in the column's head or beside the value; torque is refused. A file has one decimal mark: 17,92 and 17.92 in one file are asked about.",
    "Einheiten stehen im Kopf der Spalte oder beim Wert; Drehmoment wird abgelehnt. Eine Datei hat ein Dezimalzeichen: 17,92 und 17.92 in einer Datei werden nachgefragt.",
  ],
  note2: [
    "Old values are judged as typed values, without readings behind them, and say so.",
    "Alte Werte werden wie eingetippte beurteilt, ohne Messwerte dahinter, und sagen das auch.",
  ],
});
