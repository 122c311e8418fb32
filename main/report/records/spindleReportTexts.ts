import { inBoth } from "../../../app/words/inBoth.ts";

/** Everything a spindle's report says beside the words it shares with the screens. */
export const spindleReportTexts = inBoth({
  title: [(name: string) => `History of ${name}`, (name: string) => `Verlauf von ${name}`],
  subject: ["Clamping force of a spindle, its history", "Spannkraft einer Spindel, ihr Verlauf"],
  never: ["Never measured", "Nie gemessen"],
  stopStands: [
    (day: string) => `A stop stands since ${day}; nobody has released it.`,
    (day: string) => `Seit ${day} steht ein Stopp; niemand hat ihn aufgehoben.`,
  ],
  last: ["last check", "letzte Prüfung"],
  count: ["checks that count", "Prüfungen, die zählen"],
  baseline: ["baseline", "Ausgangswert"],
  ofDay: [(value: string, day: string) => `${value} of ${day}`, (value: string, day: string) => `${value} vom ${day}`],
  sinceBaseline: ["since the baseline", "seit dem Ausgangswert"],
  limits: ["limits", "Grenzen"],
  limitsFrom: ["taken from", "entnommen aus"],
  taper: ["taper", "Kegel"],
  unitSerial: ["unit's serial no.", "Seriennr. der Einheit"],
  due: ["next check due", "nächste Prüfung fällig"],
  note: ["note", "Bemerkung"],

  course: ["Course", "Verlauf"],
  day: ["day", "Tag"],
  month: ["month", "Monat"],
  force: [(unit: string) => `force at the taper, ${unit}`, (unit: string) => `Kraft am Kegel, ${unit}`],
  courseAlt: [
    (n: number, days: number) => `Force of ${n} checks over ${days} days; the figures stand in the table of checks.`,
    (n: number, days: number) =>
      `Kraft von ${n} Prüfungen über ${days} Tage; die Zahlen stehen in der Tabelle der Prüfungen.`,
  ],
  "limit.minimum": ["Builder's minimum", "Mindestkraft des Herstellers"],
  "limit.warning": ["Warning", "Warngrenze"],
  hint: [
    (pattern: string, fit: string, pro: string) => `${pattern}: ${fit}. For it: ${pro}.`,
    (pattern: string, fit: string, pro: string) => `${pattern}: ${fit}. Dafür: ${pro}.`,
  ],
  hintAgainst: [(con: string) => ` Against it: ${con}.`, (con: string) => ` Dagegen: ${con}.`],

  services: ["Services and events", "Wartungen und Ereignisse"],
  none: ["None on record.", "Keine verzeichnet."],
  date: ["date", "Tag"],
  what: ["what", "was"],
  parts: ["parts and note", "Teile und Bemerkung"],
  newSerial: ["new serial no.", "neue Seriennr."],
  by: ["by", "von"],

  checks: ["Checks, newest first", "Prüfungen, die neueste zuerst"],
  newest: [
    (n: number) => `The newest ${n}; older ones are in the records.`,
    (n: number) => `Die neuesten ${n}; ältere stehen in den Aufzeichnungen.`,
  ],
  measured: ["measured", "gemessen"],
  verdict: ["verdict", "Urteil"],
  fromBaseline: ["from baseline", "Änderung"],
  remarks: ["remarks", "Bemerkungen"],
  VOID: ["VOID", "UNGÜLTIG"],
  REPLACED: ["REPLACED", "ERSETZT"],
  madeVoid: [(why: string) => `made void: ${why}`, (why: string) => `für ungültig erklärt: ${why}`],
  replaced: [(why: string) => `replaced: ${why}`, (why: string) => `ersetzt: ${why}`],
  remeasure: ["to be measured again", "nachzumessen"],
});
