import { inBoth } from "./inBoth.ts";

/** Words that every place uses. */
export const commonTexts = inBoth({
  cancel: ["Cancel", "Abbrechen"],
  close: ["Close", "Schließen"],
  save: ["Save", "Speichern"],
  edit: ["Edit", "Bearbeiten"],
  none: ["none", "keine"],
  undo: ["Undo", "Rückgängig"],
  tryAgain: ["Try again", "Noch einmal versuchen"],
  loading: ["One moment …", "Einen Moment …"],
  reason: ["Reason", "Grund"],
  reasonHint: ["It stays with the record.", "Er bleibt beim Eintrag."],
  reasonNeeded: ["Please give a reason, a few words are enough.", "Bitte einen Grund nennen, ein paar Worte genügen."],
  nameNeeded: ["A name is needed.", "Ein Name fehlt."],
  noNumber: ["This is no number.", "Das ist keine Zahl."],
  aboveZero: ["This must be above zero.", "Das muss über null liegen."],
  /** Of day, month and year, in the pattern of a date. */
  dateLetters: ["dmy", "TMJ"],
  noDate: [
    (pattern: string) => `This is no day of the calendar. It is typed ${pattern}.`,
    (pattern: string) => `Diesen Tag gibt es nicht. Er wird so getippt: ${pattern}.`,
  ],
  pickDay: ["Pick a day", "Tag wählen"],
  chooseFile: ["Choose a file", "Datei wählen"],
  noFile: ["no file chosen", "keine Datei gewählt"],
  optional: ["may stay empty", "darf leer bleiben"],
  search: ["Search", "Suchen"],
  note: ["Note", "Bemerkung"],
  retired: ["retired", "stillgelegt"],
  operator: ["Operator", "Prüfer"],
  never: ["never", "nie"],
  saveCsv: ["Save as CSV", "Als CSV speichern"],
});
