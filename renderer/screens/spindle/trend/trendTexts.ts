import { inBoth } from "../../../words/inBoth.ts";

/** What the trend chart and its figures say. */
export const trendTexts = inBoth({
  warning: ["warning", "Warnung"],
  minimum: ["least", "mindestens"],
  maximum: ["most", "höchstens"],
  guard: ["guard band", "Schutzband"],
  today: ["today", "heute"],
  baseline: ["baseline", "Ausgangswert"],
  step: [(share: string) => `step ${share}`, (share: string) => `Sprung ${share}`],
  reach: [(when: string) => `warning: ${when}`, (when: string) => `Warnung: ${when}`],
  reachMinimum: [(when: string) => `least: ${when}`, (when: string) => `Mindestkraft: ${when}`],
  between: [(low: string, high: string) => `${low} to ${high}`, (low: string, high: string) => `${low} bis ${high}`],
  from: [(low: string) => `from ${low} on`, (low: string) => `ab ${low}`],
  about: [
    (n: number) =>
      `Trend of ${n} checks. Arrow keys walk through them, Enter opens one; the table below holds the same.`,
    (n: number) =>
      `Verlauf von ${n} Prüfungen. Pfeiltasten gehen sie durch, Enter öffnet eine; die Tabelle darunter sagt dasselbe.`,
  ],
  how: [
    "Marks show the verdict by their seat, whiskers the uncertainty; two small strokes under a mark: another gauge or adapter.",
    "Die Zeichen zeigen das Urteil durch ihren Sitz, die Striche die Unsicherheit; zwei kleine Striche darunter: anderes Messgerät oder anderer Adapter.",
  ],
  figures: ["The figures behind it", "Die Zahlen dahinter"],
  colFrom: ["from", "von"],
  colTo: ["to", "bis"],
  colN: ["checks", "Prüfungen"],
  colSlope: [(unit: string) => `${unit} a year`, (unit: string) => `${unit} im Jahr`],
  colInterval: ["interval, 90 %", "Intervall, 90 %"],
  colP: ["chance of no trend, p", "Zufall ohne Verlauf, p"],
  startFirst: ["first check", "erste Prüfung"],
  startService: ["service", "Wartung"],
  startStep: ["step", "Sprung"],
  noEnd: ["open", "offen"],
  cannotTell: ["cannot tell", "nicht zu sagen"],
  effect: ["What each service did", "Was jede Wartung bewirkte"],
  rose: [(change: string) => `rose by ${change}`, (change: string) => `stieg um ${change}`],
  fell: [(change: string) => `fell by ${change}`, (change: string) => `fiel um ${change}`],
  unchanged: ["unchanged within its scatter", "unverändert innerhalb der Streuung"],
  otherTools: ["measured with another gauge or adapter", "mit anderem Messgerät oder Adapter gemessen"],
});
