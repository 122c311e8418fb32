import { inBoth } from "../../../words/inBoth.ts";

export const serviceTexts = inBoth({
  title: ["Service and baseline", "Wartung und Ausgangswert"],
  lead: [
    "Did the last service help? Only a check before and a check after can tell.",
    "Hat die letzte Wartung geholfen? Das sagen nur eine Prüfung davor und eine danach.",
  ],
  caution: [
    "Springs in a clamping unit store energy: opening one is work for trained people, by the builder's manual and local rules.",
    "Federn in einer Spanneinheit speichern Energie: Sie zu öffnen ist Arbeit für Geschulte, nach Handbuch und örtlichen Regeln.",
  ],
  step1: [
    "Measure with the reason before service (N on Measure).",
    "Mit dem Grund vor der Wartung messen (N beim Messen).",
  ],
  step2: [
    "On the spindle's page, note the service: what was done, when, which parts, and whether the history begins anew.",
    "Auf der Seite der Spindel die Wartung eintragen: was, wann, welche Teile, und ob der Verlauf neu beginnt.",
  ],
  step3: [
    "Measure again with the reason after service. The page compares both, with the uncertainty of the difference.",
    "Mit dem Grund nach der Wartung wieder messen. Die Seite vergleicht beide, mit der Unsicherheit des Unterschieds.",
  ],
  step4: [
    "New springs or a new unit: the check after it becomes the baseline. Any check can be made the baseline, with a reason.",
    "Neue Federn oder eine neue Einheit: Die Prüfung danach wird der Ausgangswert. Jede Prüfung lässt sich mit Grund dazu machen.",
  ],
  picture: [
    "A spindle that ran dry, was greased, and is well again.",
    "Eine Spindel, die trocken lief, geschmiert wurde und wieder gut ist.",
  ],
  note1: [
    "Reading the course (common practice): a slow steady fall is tiring springs; a small step down a broken one; falling force with more scatter a dry gripper; all spindles of one gauge at once is the gauge.",
    "Den Verlauf lesen (verbreitete Praxis): langsames stetiges Fallen sind müde Federn; ein kleiner Sprung nach unten eine gebrochene; fallende Kraft mit mehr Streuung ein trockener Greifer; alle Spindeln eines Messgeräts zugleich das Messgerät.",
  ],
});
