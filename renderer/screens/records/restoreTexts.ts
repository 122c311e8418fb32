import { inBoth } from "../../words/inBoth.ts";

/** What Records says of the way back from a copy. */
export const restoreTexts = inBoth({
  title: ["Back to a copy", "Zurück zu einer Kopie"],
  why: [
    "The copy is first restored beside the records and compared with them; nothing changes until you say so.",
    "Die Kopie wird zuerst neben den Einträgen wiederhergestellt und mit ihnen verglichen; vorher ändert sich nichts.",
  ],
  folder: ["Folder with the copies", "Ordner mit den Kopien"],
  look: ["Show the copies", "Kopien zeigen"],
  noneThere: ["There is no copy in this folder.", "In diesem Ordner liegt keine Kopie."],
  otherWorks: ["of other records", "von anderen Einträgen"],
  compare: ["Restore beside and compare", "Daneben herstellen und vergleichen"],
  comparing: ["Being restored and compared …", "Wird hergestellt und verglichen …"],
  file: ["Or a file by name", "Oder eine Datei mit Namen"],
  fileHint: [
    "A copy elsewhere, or the data file of a computer that is gone.",
    "Eine Kopie an anderer Stelle oder die Datei eines Rechners, den es nicht mehr gibt.",
  ],
  found: [
    (entries: string, until: string) => `The copy is whole: ${entries} entries, the newest of ${until}.`,
    (entries: string, until: string) => `Die Kopie ist heil: ${entries} Einträge, der neueste vom ${until}.`,
  ],
  nothingLost: [
    "It holds everything that stands in the records now.",
    "Sie enthält alles, was jetzt in den Einträgen steht.",
  ],
  lost: [
    (entries: string, checks: string) =>
      `${entries} entries of today's records are not in it, ${checks} of them checks. They would be gone from the screens and stay in the old file only.`,
    (entries: string, checks: string) =>
      `${entries} Einträge von heute stehen nicht darin, davon ${checks} Prüfungen. Sie verschwänden aus den Ansichten und blieben nur in der alten Datei.`,
  ],
  cannotCompare: [
    "Today's records are damaged and could not be compared.",
    "Die heutigen Einträge sind beschädigt und ließen sich nicht vergleichen.",
  ],
  otherChain: [
    "These are other records: none of their chains is in the file that is open.",
    "Das sind andere Einträge: Keine ihrer Ketten steht in der offenen Datei.",
  ],
  colChain: ["chain", "Kette"],
  colHere: ["entries now", "Einträge jetzt"],
  colThere: ["in the copy", "in der Kopie"],
  colSame: ["the same up to", "gleich bis"],
  swap: ["Put it in place …", "An die Stelle setzen …"],
  leave: ["Leave everything as it is", "Alles lassen, wie es ist"],
  sureTitle: ["Put the copy in the place of the records?", "Die Kopie an die Stelle der Einträge setzen?"],
  caution: ["Before you go on:", "Bevor es weitergeht:"],
  cautionWhy: [
    "from now on the program works with the copy, on every page. What was measured since is not in it: a spindle may stand as good whose last check said stop. Look at each spindle's last check before it is used, and measure again where in doubt.",
    "ab jetzt arbeitet das Programm auf jeder Seite mit der Kopie. Was seither gemessen wurde, steht nicht darin: Eine Spindel kann als gut dastehen, deren letzte Prüfung Stopp sagte. Vor der Benutzung bei jeder Spindel die letzte Prüfung ansehen und im Zweifel neu messen.",
  ],
  keptWhy: [
    "The present file stays beside the new one under another name.",
    "Die jetzige Datei bleibt unter anderem Namen neben der neuen liegen.",
  ],
  swapNow: ["Put the copy in place", "Kopie an die Stelle setzen"],
  kept: [
    (path: string) => `Restored. The file in use before lies at ${path}`,
    (path: string) => `Wiederhergestellt. Die vorherige Datei liegt unter ${path}`,
  ],
});
