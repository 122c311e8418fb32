import { inBoth } from "../../../words/inBoth.ts";

export const backupTexts = inBoth({
  title: ["Backup and restore", "Sichern und zurückholen"],
  lead: [
    "One file holds everything. A copy is made while you measure, and walked through before it counts as one.",
    "Eine Datei enthält alles. Eine Kopie entsteht, während gemessen wird, und wird durchgesehen, bevor sie als solche gilt.",
  ],
  step1: [
    "Setup: name a folder for the copy of each day, best on another disk or a share. Its state is in sight there.",
    "Einrichten: einen Ordner für die tägliche Kopie nennen, am besten auf einer anderen Platte oder im Netz. Dort steht auch, wie es um sie steht.",
  ],
  step2: [
    "Records: make a copy at once, any time, into any folder.",
    "Einträge: jederzeit sofort eine Kopie anlegen, in jeden Ordner.",
  ],
  step3: [
    "To go back, choose a copy under Records. It is restored beside the file in use and compared; only then do you decide. The file that was in use is kept.",
    "Zum Zurückholen unter Einträge eine Kopie wählen. Sie wird neben der benutzten Datei hergestellt und verglichen; erst dann wird entschieden. Die bisherige Datei bleibt erhalten.",
  ],
  step4: [
    "Check the entries now and then: every entry carries the hash of the one before, and the first that does not fit is named.",
    "Die Einträge ab und zu prüfen: Jeder trägt den Hash des vorigen, und der erste, der nicht passt, wird genannt.",
  ],
  picture: ["Records: check, copy, hand over.", "Einträge: prüfen, sichern, weitergeben."],
  note1: [
    "The chain finds accidents and naive edits. Whoever holds the file and its key can rewrite both; that is why every report prints the head of the chain.",
    "Die Kette findet Unfälle und einfache Eingriffe. Wer Datei und Schlüssel hat, kann beide neu schreiben; darum druckt jeder Bericht den Kopf der Kette.",
  ],
  note2: [
    "The file itself must lie on a disk of this computer; copies may lie on a share.",
    "Die Datei selbst muss auf einer Platte dieses Rechners liegen; Kopien dürfen ins Netz.",
  ],
});
