import { inBoth } from "../../../words/inBoth.ts";

/** A gauge's page, and the checks a bad proof puts in doubt. */
export const afterTexts = inBoth({
  noGauge: ["There is no such gauge", "Dieses Messgerät gibt es nicht"],
  noGaugeWhy: ["It may be in another data file.", "Es steht vielleicht in einer anderen Datei."],
  never: [
    (name: string) => `${name} has never been proved: every verdict with it says so.`,
    (name: string) => `${name} wurde nie geprüft: Jedes Urteil damit sagt es.`,
  ],
  proved: [
    (name: string, on: string, how: string) => `${name} was last proved on ${on}: ${how}.`,
    (name: string, on: string, how: string) => `${name} wurde zuletzt am ${on} geprüft: ${how}.`,
  ],
  until: [
    (on: string) => `The next proof is due on ${on}.`,
    (on: string) => `Die nächste Prüfung ist am ${on} fällig.`,
  ],
  late: [
    (on: string) => `The next proof was due on ${on}.`,
    (on: string) => `Die nächste Prüfung war am ${on} fällig.`,
  ],
  driftIs: [
    (share: string, u: string) => `It drifts by ${share} ± ${u} a year.`,
    (share: string, u: string) => `Es driftet um ${share} ± ${u} im Jahr.`,
  ],
  driftUnknown: ["From four proofs on a yearly drift is told.", "Ab vier Prüfungen wird eine jährliche Drift genannt."],
  prove: ["Prove this gauge", "Dieses Messgerät prüfen"],
  adjust: ["Record an adjustment", "Justierung eintragen"],
  proofs: ["Proofs", "Prüfungen"],
  none: [
    "No proof yet. The first one gives the gauge its curve and its due date.",
    "Noch keine Prüfung. Die erste gibt dem Messgerät seine Kurve und sein Fälligkeitsdatum.",
  ],
  colOn: ["on", "am"],
  colAs: ["gauge", "Messgerät"],
  colMethod: ["method", "Verfahren"],
  colClass: ["class", "Klasse"],
  colWorst: ["largest U, %", "größtes U, %"],
  colJudged: ["so", "also"],
  colChange: ["against before, %", "gegen vorher, %"],
  colCurve: ["curve", "Kurve"],
  curveInUse: ["in use", "in Gebrauch"],
  curveTaken: ["taken", "übernommen"],
  curveNot: ["not taken", "nicht übernommen"],
  adjustments: ["Adjustments", "Justierungen"],
  drift: ["Drift from proof to proof", "Drift von Prüfung zu Prüfung"],
  driftAbout: [
    (n: string) =>
      `How far each of ${n} proofs lay from the one before, where they lay furthest apart, with its uncertainty.`,
    (n: string) =>
      `Wie weit jede von ${n} Prüfungen von der davor lag, dort wo sie am weitesten auseinanderlagen, mit Unsicherheit.`,
  ],
  axisDrift: ["change, %", "Änderung, %"],
  axisDay: ["proved on", "geprüft am"],
  driftPoint: [
    (from: string, to: string, share: string, u: string, at: string) => `${from} to ${to}: ${share} ± ${u} at ${at}`,
    (from: string, to: string, share: string, u: string, at: string) => `${from} bis ${to}: ${share} ± ${u} bei ${at}`,
  ],
  changeWord: ["change", "Änderung"],

  toGauges: ["Gauges", "Messgeräte"],
  showAffected: ["Show the checks in doubt", "Zweifelhafte Prüfungen zeigen"],
  affected: ["Checks in doubt", "Zweifelhafte Prüfungen"],
  affectedSince: [
    (n: string, on: string) => `${n} checks since the last good proof on ${on}, held against what was found.`,
    (n: string, on: string) => `${n} Prüfungen seit der letzten guten am ${on}, gegen das Gefundene gehalten.`,
  ],
  affectedAll: [
    (n: string) => `${n} checks: there was no good proof before, so all with this gauge are listed.`,
    (n: string) => `${n} Prüfungen: Davor gab es keine gute, darum stehen alle mit diesem Messgerät hier.`,
  ],
  affectedNone: ["No check was made with it in that time.", "In dieser Zeit wurde keine Prüfung damit gemacht."],
  changed: [
    (n: number) =>
      n === 0
        ? "None of their verdicts would change."
        : n === 1
          ? "The verdict of one would change."
          : `The verdicts of ${n} would change.`,
    (n: number) =>
      n === 0
        ? "Keines ihrer Urteile würde sich ändern."
        : n === 1
          ? "Das Urteil von einer würde sich ändern."
          : `Die Urteile von ${n} würden sich ändern.`,
  ],
  nothingRewritten: [
    "Nothing filed is rewritten. Marked spindles stand on the list of what is due.",
    "Nichts Abgelegtes wird geändert. Markierte Spindeln stehen auf der Liste des Fälligen.",
  ],
  colTick: ["mark", "markieren"],
  colCheck: ["check", "Prüfung"],
  colSpindle: ["spindle", "Spindel"],
  colFiled: [(unit: string) => `filed, ${unit}`, (unit: string) => `abgelegt, ${unit}`],
  colNow: [(unit: string) => `would be, ${unit}`, (unit: string) => `wäre, ${unit}`],
  colWas: ["verdict filed", "abgelegtes Urteil"],
  colWouldBe: ["would be", "wäre"],
  same: ["the same", "dasselbe"],
  marked: ["marked", "markiert"],
  tickOf: [
    (spindle: string, on: string) => `Measure ${spindle} again (check of ${on})`,
    (spindle: string, on: string) => `${spindle} neu messen (Prüfung vom ${on})`,
  ],
  tickChanged: ["Tick those whose verdict would change", "Die ankreuzen, deren Urteil sich ändern würde"],
  mark: [
    (n: number) => (n === 1 ? "Mark 1 for a new measurement" : `Mark ${n} for a new measurement`),
    (n: number) => `${n} zum Neumessen markieren`,
  ],
  markedNow: [(n: string) => `${n} marked.`, (n: string) => `${n} markiert.`],
  toProof: ["To the proof", "Zur Prüfung"],
});
