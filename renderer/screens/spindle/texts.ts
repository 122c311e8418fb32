import { inBoth } from "../../words/inBoth.ts";

/** Everything one spindle's page says. */
export const spindleTexts = inBoth({
  "source.docked": ["docked", "ausgelesen"],
  "source.typed": ["typed in", "eingetippt"],
  "source.imported": ["imported", "importiert"],
  all: ["All spindles", "Alle Spindeln"],
  unit: [(serial: string) => `unit ${serial}`, (serial: string) => `Einheit ${serial}`],
  measureNow: ["Measure now", "Jetzt messen"],
  noteService: ["Note a service", "Wartung eintragen"],
  edit: ["Edit", "Bearbeiten"],

  // The sentence
  isBelow: [
    (value: string, share: string, baseline: string) => `${value} is ${share} below the baseline of ${baseline}.`,
    (value: string, share: string, baseline: string) =>
      `${value} liegt ${share} unter dem Ausgangswert von ${baseline}.`,
  ],
  isAbove: [
    (value: string, share: string, baseline: string) => `${value} is ${share} above the baseline of ${baseline}.`,
    (value: string, share: string, baseline: string) =>
      `${value} liegt ${share} über dem Ausgangswert von ${baseline}.`,
  ],
  holds: [
    (value: string, baseline: string) => `${value} holds the baseline of ${baseline}.`,
    (value: string, baseline: string) => `${value} hält den Ausgangswert von ${baseline}.`,
  ],
  plainValue: [
    (value: string) => `${value} at the last check.`,
    (value: string) => `${value} bei der letzten Prüfung.`,
  ],
  reaches: [
    (limit: string, when: string) => `At this rate it reaches ${limit} ${when}.`,
    (limit: string, when: string) => `Geht es so weiter, erreicht sie ${limit} ${when}.`,
  ],
  theWarning: ["its warning limit", "ihre Warngrenze"],
  theMinimum: ["its minimum", "ihre Mindestkraft"],
  between: [
    (low: string, high: string) => `between ${low} and ${high}`,
    (low: string, high: string) => `zwischen ${low} und ${high}`,
  ],
  about: [(month: string) => `about ${month}`, (month: string) => `etwa ${month}`],
  notBefore: [(low: string) => `not before ${low}`, (low: string) => `nicht vor ${low}`],
  notSoon: ["It reaches no limit within ten years.", "Sie erreicht in zehn Jahren keine Grenze."],
  already: [(limit: string) => `It has reached ${limit}.`, (limit: string) => `Sie hat ${limit} erreicht.`],
  cannotForecast: [
    "When it reaches a limit cannot be told yet.",
    "Wann sie eine Grenze erreicht, ist noch nicht zu sagen.",
  ],
  overdueSince: [
    (date: string) => `A check is overdue since ${date}.`,
    (date: string) => `Eine Prüfung ist überfällig seit ${date}.`,
  ],
  measureBy: [(date: string) => `Measure again by ${date}.`, (date: string) => `Wieder messen bis ${date}.`],
  neverMeasured: [
    "Not measured yet. The first check becomes its baseline.",
    "Noch nicht gemessen. Die erste Prüfung wird ihr Ausgangswert.",
  ],

  // Stop
  stopTitle: ["A stop stands on this spindle", "An dieser Spindel steht ein Stopp"],
  stopWhy: [
    (date: string) =>
      `Since ${date}. It is not to be used until someone entitled has decided. The builder's manual and local rules come first.`,
    (date: string) =>
      `Seit ${date}. Sie darf nicht benutzt werden, bis jemand Befugtes entschieden hat. Das Handbuch des Herstellers und örtliche Regeln gehen vor.`,
  ],
  release: ["Release the stop", "Stopp aufheben"],
  releaseTitle: ["Release the stop", "Stopp aufheben"],
  releaseWhy: [
    "A release stands on record with name and reason, and rests on a check made after the stop.",
    "Eine Aufhebung steht mit Name und Grund im Verzeichnis und stützt sich auf eine Prüfung nach dem Stopp.",
  ],
  releaseCheck: ["The check it rests on", "Die Prüfung, auf die sie sich stützt"],
  releaseNeedsCheck: [
    "Measure this spindle again first: a stop is released with a check made after it.",
    "Diese Spindel zuerst noch einmal messen: Ein Stopp wird mit einer späteren Prüfung aufgehoben.",
  ],
  who: ["Who releases it", "Wer ihn aufhebt"],
  whoNeeded: ["Someone must be named.", "Jemand muss genannt sein."],
  workOrder: ["Work order", "Auftrag"],

  // Aside
  looksLike: ["What it looks like", "Wonach es aussieht"],
  noHints: ["Nothing stands out.", "Nichts fällt auf."],
  limits: ["Limits", "Grenzen"],
  nominal: ["nominal", "Sollkraft"],
  warning: ["warning", "Warngrenze"],
  minimum: ["minimum", "Mindestkraft"],
  maximum: ["maximum", "Höchstkraft"],
  from: ["from", "laut"],
  rule: ["rule", "Regel"],
  due: ["next check", "nächste Prüfung"],
  overdue: [(date: string) => `${date}, past due`, (date: string) => `${date}, überfällig`],
  noLimits: ["None entered yet.", "Noch keine eingetragen."],
  baseline: ["baseline", "Ausgangswert"],

  // Checks
  checks: ["Checks", "Prüfungen"],
  colDate: ["check", "Prüfung"],
  colValue: [(unit: string) => `force, ${unit}`, (unit: string) => `Kraft, ${unit}`],
  colChange: ["from baseline", "zum Ausgangswert"],
  colVerdict: ["verdict", "Urteil"],
  colWith: ["with", "mit"],
  more: ["Show earlier ones", "Frühere zeigen"],
  isBaseline: ["baseline", "Ausgangswert"],
  voided: [(reason: string) => `void: ${reason}`, (reason: string) => `ungültig: ${reason}`],
  noChecks: [
    "No check yet. Measure this spindle, and its history begins here.",
    "Noch keine Prüfung. Diese Spindel messen, dann beginnt hier ihr Verlauf.",
  ],
  services: ["Services", "Wartungen"],

  // Service form
  serviceTitle: ["Note a service", "Wartung eintragen"],
  serviceKind: ["What was done", "Was gemacht wurde"],
  serviceDate: ["When", "Wann"],
  serviceDateWrong: ["A date is needed, not after today.", "Ein Datum wird gebraucht, nicht nach heute."],
  serviceParts: ["Parts", "Teile"],
  serviceCounter: ["Tool changes then", "Werkzeugwechsel dabei"],
  newUnit: ["Serial number of the new unit", "Seriennummer der neuen Einheit"],
  newBaseline: ["The next check becomes the new baseline.", "Die nächste Prüfung wird der neue Ausgangswert."],
  serviceCaution: [
    "Springs store energy: taking a clamping unit apart is work for trained people with the builder's tools.",
    "Federn speichern Energie: Eine Spanneinheit zu zerlegen ist Arbeit für Geschulte mit den Werkzeugen des Herstellers.",
  ],
  cautionTitle: ["Caution:", "Vorsicht:"],
});
