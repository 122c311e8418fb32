import { inBoth } from "../../words/inBoth.ts";

/** What is asked about a file of old checks. */
export const questionTexts = inBoth({
  sheet: ["Sheet", "Blatt"],
  chooseSheet: ["choose", "wählen"],
  dateOrder: ["Dates such as 03/04/2026", "Datumsangaben wie 03/04/2026"],
  dateOrderHint: ["The file itself does not tell which comes first.", "Die Datei selbst verrät nicht, was vorn steht."],
  chooseOrder: ["choose", "wählen"],
  dayFirst: ["day first: 3 April", "Tag vorn: 3. April"],
  monthFirst: ["month first: March 4", "Monat vorn: 4. März"],
  names: ["Names that are not known here", "Namen, die hier nicht bekannt sind"],
  nameColumn: ["name in the file", "Name in der Datei"],
  rowsColumn: ["rows", "Zeilen"],
  toColumn: ["is", "ist"],
  choose: ["choose", "wählen"],
  create: ["a new spindle", "eine neue Spindel"],
  leaveOutRows: ["leave these rows out", "diese Zeilen weglassen"],
  leaveOutName: ["leave the name out", "den Namen weglassen"],
  createAll: ["All the others are new spindles", "Alle übrigen sind neue Spindeln"],
  leaveOutAll: ["Leave all the others out", "Alle übrigen weglassen"],
  moreNames: [(n: string) => `… and ${n} more names.`, (n: string) => `… und ${n} weitere Namen.`],
});
