import { inBoth } from "../../../words/inBoth.ts";

export const proofTexts = inBoth({
  title: ["Prove a gauge", "Ein Messgerät prüfen"],
  lead: [
    "Once a year, after an overload or a fall, and whenever the spindles of one gauge move together: compare it with a reference.",
    "Einmal im Jahr, nach Überlast oder Sturz und immer, wenn sich die Spindeln eines Messgeräts gemeinsam bewegen: gegen eine Referenz vergleichen.",
  ],
  caution: [
    "Weights and presses can crush: nobody under or beside the load. Stay in line, never beyond the gauge's capacity; the maker's manual and local rules come first.",
    "Gewichte und Pressen können quetschen: niemand unter oder neben der Last. In der Achse bleiben, nie über die Nennlast; Anleitung des Herstellers und örtliche Regeln gehen vor.",
  ],
  step1: [
    "Gauges: open the gauge and begin a proof. Choose the reference; it should be at least three times better, better ten.",
    "Messgeräte: das Messgerät öffnen und eine Prüfung beginnen. Die Referenz wählen; sie sollte mindestens dreimal besser sein, besser zehnmal.",
  ],
  step2: [
    "Load up to capacity three times, let it rest, zero.",
    "Dreimal bis zur Nennlast belasten, ruhen lassen, nullen.",
  ],
  step3: [
    "Follow the plan: five to ten rising steps, three runs, the gauge turned between them; some falling steps show the hysteresis.",
    "Dem Plan folgen: fünf bis zehn steigende Stufen, drei Reihen, dazwischen das Messgerät drehen; einige fallende Stufen zeigen die Umkehrspanne.",
  ],
  step4: [
    "Read the result: curve, uncertainty, class where the data are enough. File it as found, before anything is adjusted.",
    "Das Ergebnis lesen: Kurve, Unsicherheit, Klasse, wo die Daten reichen. Vor jeder Justierung als vorgefunden ablegen.",
  ],
  step5: [
    "Was it off? The checks it touched since the last proof are listed; nothing filed is changed, spindles can be marked for measuring again. After an adjustment, prove again: as left.",
    "Lag es daneben? Die seit der letzten Prüfung betroffenen Prüfungen sind gelistet; Abgelegtes ändert sich nicht, Spindeln lassen sich zum Nachmessen vormerken. Nach einer Justierung noch einmal prüfen: wie hinterlassen.",
  ],
  picture: [
    "Gauges and adapters with the state of their proofs.",
    "Messgeräte und Adapter mit dem Stand ihrer Prüfungen.",
  ],
  note1: [
    "A report from here records your own comparison. It is no accredited certificate.",
    "Ein Bericht von hier hält Ihren eigenen Vergleich fest. Er ist kein akkreditierter Schein.",
  ],
});
