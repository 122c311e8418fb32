import { inBoth } from "../../../words/inBoth.ts";

/** What the trend chart and its figures say. */
export const trendTexts = inBoth({
  warning: ["warning", "Warnung"],
  minimum: ["minimum", "Mindestkraft"],
  maximum: ["maximum", "Höchstkraft"],
  guard: ["guard band", "Schutzband"],
  today: ["today", "heute"],
  baseline: ["baseline", "Ausgangswert"],
  stepWithin: [
    (share: string, low: string, high: string) => `step ${share} (${low} to ${high})`,
    (share: string, low: string, high: string) => `Sprung ${share} (${low} bis ${high})`,
  ],
  tool: [
    (name: string) => (name === "" ? "another gauge or adapter" : `now with ${name}`),
    (name: string) => (name === "" ? "anderes Messgerät oder anderer Adapter" : `nun mit ${name}`),
  ],
  counts: [(n: string) => `${n} changes`, (n: string) => `${n} Wechsel`],
  step: [(share: string) => `step ${share}`, (share: string) => `Sprung ${share}`],
  reach: [(when: string) => `warning: ${when}`, (when: string) => `Warnung: ${when}`],
  reachMinimum: [(when: string) => `minimum: ${when}`, (when: string) => `Mindestkraft: ${when}`],
  between: [(low: string, high: string) => `${low} to ${high}`, (low: string, high: string) => `${low} bis ${high}`],
  from: [(low: string) => `from ${low} on`, (low: string) => `ab ${low}`],
  about: [
    (n: number, from: string, to: string) =>
      `Trend of ${n} checks, shown from ${from} to ${to}. Arrow keys walk through them, Enter opens one, plus and minus zoom, 0 shows all; “As a table” holds the same.`,
    (n: number, from: string, to: string) =>
      `Verlauf von ${n} Prüfungen, gezeigt von ${from} bis ${to}. Pfeiltasten gehen sie durch, Enter öffnet eine, Plus und Minus vergrößern und verkleinern, 0 zeigt alles; „Als Tabelle“ sagt dasselbe.`,
  ],
  how: [
    "Marks show the verdict by their seat, whiskers the uncertainty; two small strokes under a mark: another gauge or adapter. Drag over a stretch to see it nearer.",
    "Die Zeichen zeigen das Urteil durch ihren Sitz, die Striche die Unsicherheit; zwei kleine Striche darunter: anderes Messgerät oder anderer Adapter. Über ein Stück ziehen zeigt es näher.",
  ],
  axis: ["Across", "Waagrecht"],
  axisDate: ["By date", "Nach Datum"],
  axisCounter: ["By tool changes", "Nach Werkzeugwechseln"],
  tools: ["Trend", "Verlauf"],
  nearer: ["Nearer", "Näher"],
  farther: ["Farther", "Weiter weg"],
  showAll: ["Show all", "Alles zeigen"],
  asTable: ["As a table", "Als Tabelle"],
  asPicture: ["As a picture", "Als Bild"],
  savePng: ["Save as PNG", "Als PNG speichern"],
  saveSvg: ["Save as SVG", "Als SVG speichern"],
  shownOf: [
    (from: string, to: string) => `Shown: ${from} to ${to}`,
    (from: string, to: string) => `Gezeigt: ${from} bis ${to}`,
  ],
  pictureAbout: [
    (n: number, from: string, to: string) =>
      `${n} checks, ${from} to ${to}; whiskers: expanded uncertainty; band: 90 %`,
    (n: number, from: string, to: string) =>
      `${n} Prüfungen, ${from} bis ${to}; Striche: erweiterte Messunsicherheit; Band: 90 %`,
  ],
  noCounter: ["No check with a counter reading to show.", "Keine Prüfung mit Zählerstand zu zeigen."],
  colDate: ["date", "Datum"],
  colCounter: ["tool changes", "Werkzeugwechsel"],
  colForce: [(unit: string) => `force, ${unit}`, (unit: string) => `Kraft, ${unit}`],
  colLine: [(unit: string) => `robust line, ${unit}`, (unit: string) => `robuste Linie, ${unit}`],
  colVerdict: ["verdict", "Urteil"],
  colWhat: ["what happened", "was geschah"],
  stray: ["stands off alone", "steht allein daneben"],
  steps: ["Steps", "Sprünge"],
  stepInterval: [
    (low: string, high: string) => `, interval ${low} to ${high}`,
    (low: string, high: string) => `, Intervall ${low} bis ${high}`,
  ],
  stepUnclear: [
    "; a slope explains it nearly as well, so the history is not cut there",
    "; ein Gefälle erklärt es fast ebenso gut, darum wird der Verlauf dort nicht geteilt",
  ],
  stepTool: ["; the gauge or adapter changed just then", "; Messgerät oder Adapter wechselte genau da"],
  colSlopeCounter: [(unit: string) => `${unit} per 10000 changes`, (unit: string) => `${unit} je 10000 Wechsel`],
  figures: ["The figures behind it", "Die Zahlen dahinter"],
  colFrom: ["from", "von"],
  colTo: ["to", "bis"],
  colN: ["checks", "Prüfungen"],
  colSlope: [(unit: string) => `${unit} a year`, (unit: string) => `${unit} im Jahr`],
  colInterval: ["interval, 95 %", "Intervall, 95 %"],
  colP: ["chance of no trend, p", "Zufall ohne Verlauf, p"],
  startFirst: ["first check", "erste Prüfung"],
  startService: ["service", "Wartung"],
  startStep: ["step", "Sprung"],
  noEnd: ["open", "offen"],
  cannotTell: ["cannot tell", "nicht zu sagen"],
});
