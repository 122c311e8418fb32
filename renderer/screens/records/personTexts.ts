import { inBoth } from "../../../app/words/inBoth.ts";

/** What Records says of one person's entries. */
export const personTexts = inBoth({
  title: ["What is filed of one person", "Was von einer Person verzeichnet ist"],
  why: [
    "Every entry by or about a person, as JSON Lines and as CSV, with the name as it is kept. The PIN is no part of it.",
    "Jeder Eintrag von einer Person oder über sie, als JSON Lines und als CSV, mit dem Namen, wie er hier steht. Die PIN gehört nicht dazu.",
  ],
  who: ["Whose entries", "Wessen Einträge"],
  none: ["Nobody is on the list.", "Niemand steht auf der Liste."],
  folder: ["Folder for the person's archive", "Ordner für das Archiv der Person"],
  act: ["Hand out the entries", "Einträge ausgeben"],
  running: ["Being written …", "Wird geschrieben …"],
  done: [
    (entries: string, file: string) => `${entries} entries written to ${file}`,
    (entries: string, file: string) => `${entries} Einträge geschrieben nach ${file}`,
  ],
});
