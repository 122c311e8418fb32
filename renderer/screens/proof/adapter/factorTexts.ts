import { inBoth } from "../../../words/inBoth.ts";

/** An adapter's scale out of the same loads with and without it. */
export const factorTexts = inBoth({
  title: [(name: string) => `Scale of adapter ${name}`, (name: string) => `Faktor des Adapters ${name}`],
  why: [
    "The same loads are read with and without the adapter, or with it and another whose scale is known. Screw it on anew for each run: that is what makes runs differ.",
    "Dieselben Lasten werden mit und ohne den Adapter gelesen, oder mit ihm und einem anderen, dessen Faktor bekannt ist. Für jeden Lauf neu anschrauben: Das ist es, was Läufe unterscheidet.",
  ],
  against: ["Compared with", "Verglichen mit"],
  alone: ["the gauge alone", "dem Messgerät allein"],
  from: ["Figures from", "Werte aus"],
  typed: ["typed in here", "hier eingetippt"],
  proofs: ["two filed proofs", "zwei abgelegten Prüfungen"],
  run: ["run", "Lauf"],
  colLoad: ["force", "Kraft"],
  colWithout: ["shown without it", "Anzeige ohne ihn"],
  colKnown: ["shown with the known one", "Anzeige mit dem bekannten"],
  colWith: ["shown with it", "Anzeige mit ihm"],
  rowOf: [(n: string) => `Reading ${n}`, (n: string) => `Messwert ${n}`],
  addRow: ["Add a reading", "Messwert hinzufügen"],
  removeRow: [(n: string) => `Remove reading ${n}`, (n: string) => `Messwert ${n} entfernen`],
  withoutProof: ["Proof without it", "Prüfung ohne ihn"],
  withProof: ["Proof with it", "Prüfung mit ihm"],
  choose: ["choose", "wählen"],
  gauge: ["Gauge", "Messgerät"],
  noProofs: [
    "No two proofs of one gauge to compare. Prove the gauge once alone and once with this adapter, or type the figures in.",
    "Keine zwei Prüfungen eines Messgeräts zum Vergleich. Das Messgerät einmal allein und einmal mit diesem Adapter prüfen, oder die Werte eintippen.",
  ],
  work: ["Work it out", "Ausrechnen"],
  is: [
    (scale: string, u: string, runs: string) => `Scale ${scale} ± ${u} (95 %), from ${runs} runs.`,
    (scale: string, u: string, runs: string) => `Faktor ${scale} ± ${u} (95 %), aus ${runs} Läufen.`,
  ],
  agrees: [
    (share: string, u: string, before: string) =>
      `It agrees with the ${before} it had: ${share}, where ± ${u} is explained by both uncertainties.`,
    (share: string, u: string, before: string) =>
      `Er stimmt mit dem bisherigen ${before} überein: ${share}, wo sich ± ${u} aus beiden Unsicherheiten erklären.`,
  ],
  isOff: [
    (share: string, u: string, before: string) =>
      `It is off the ${before} it had by ${share}; only ± ${u} is explained by both uncertainties. Look below which checks that puts in doubt.`,
    (share: string, u: string, before: string) =>
      `Er liegt um ${share} neben dem bisherigen ${before}; nur ± ${u} erklären sich aus beiden Unsicherheiten. Unten steht, welche Prüfungen das in Zweifel zieht.`,
  ],
  doubtNow: ["Which checks does this scale put in doubt?", "Welche Prüfungen zieht dieser Faktor in Zweifel?"],
  doubtBefore: [
    "Checks made with the scale before the last calibration",
    "Prüfungen mit dem Faktor vor der letzten Kalibrierung",
  ],
  madeSince: [
    (n: string, on: string) => `${n} checks used its calibration of ${on}; here they are held against this scale.`,
    (n: string, on: string) =>
      `${n} Prüfungen stützen sich auf seine Kalibrierung vom ${on}; hier gegen diesen Faktor gehalten.`,
  ],
  madeWith: [
    (n: string) => `${n} checks with the scale it had before, which nobody had calibrated, held against this one.`,
    (n: string) => `${n} Prüfungen mit dem Faktor davor, den niemand kalibriert hatte, gegen diesen gehalten.`,
  ],
  noneMade: [
    "No check was made with the scale before this one.",
    "Mit dem Faktor vor diesem wurde keine Prüfung gemacht.",
  ],
  byRun: ["Run by run", "Lauf für Lauf"],
  scale: ["scale", "Faktor"],
  file: ["File it as the adapter's new calibration", "Als neue Kalibrierung des Adapters ablegen"],
  dueOn: ["Next one due on", "Nächste fällig am"],
  filed: [
    (version: string) => `Filed as calibration ${version}.`,
    (version: string) => `Abgelegt als Kalibrierung ${version}.`,
  ],
  noNumber: ["Every figure must be above zero.", "Jeder Wert muss über null liegen."],
  noAdapter: ["There is no such adapter", "Diesen Adapter gibt es nicht"],
  noAdapterWhy: ["It may be in another data file.", "Er steht vielleicht in einer anderen Datei."],
  caution: [
    "Never load beyond the smallest capacity in the load train; nobody under or beside the load; the manuals and local rules come first.",
    "Nie über die kleinste Nennlast im Strang belasten; niemand unter oder neben der Last; Handbücher und örtliche Regeln gehen vor.",
  ],
  cautionTitle: ["Before each load:", "Vor jeder Last:"],
});
