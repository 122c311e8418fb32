import { inBoth } from "../../../../app/words/inBoth.ts";

/** Everything the report of a round's result says. */
export const roundReportTexts = inBoth({
  title: [(name: string) => `Result of the round: ${name}`, (name: string) => `Ergebnis des Rundgangs: ${name}`],
  subject: ["Clamping forces measured on a round", "Spannkräfte, auf einem Rundgang gemessen"],
  progress: [
    (done: number, of: number) => `${done} of ${of} spindles measured`,
    (done: number, of: number) => `${done} von ${of} Spindeln gemessen`,
  ],
  day: ["planned for", "geplant für"],
  state: ["state", "Stand"],
  "state.open": ["open", "offen"],
  "state.done": ["done", "erledigt"],
  "state.cancelled": ["cancelled", "abgesagt"],
  works: ["works", "Werk"],
  gauge: ["gauge", "Messgerät"],
  plannedBy: ["planned for whom", "vorgesehen für"],
  measuredBy: ["measured by", "gemessen von"],
  from: ["measured", "gemessen"],
  between: [
    (first: string, last: string) => `${first} to ${last}`,
    (first: string, last: string) => `${first} bis ${last}`,
  ],
  notNamed: ["not named", "nicht genannt"],
  changes: ["adapter changes", "Adapterwechsel"],
  note: ["note", "Bemerkung"],

  todo: ["What needs doing now", "Was jetzt zu tun ist"],
  nothing: [
    "Nothing before the next round: every spindle was measured and found good.",
    "Nichts vor dem nächsten Rundgang: Jede Spindel wurde gemessen und ist gut.",
  ],
  "todo.stop": [
    (names: string) =>
      `STOP: ${names}. Do not use until someone entitled has decided; the builder's manual and local rules come first.`,
    (names: string) =>
      `STOPP: ${names}. Nicht benutzen, bis jemand Befugtes entschieden hat; Handbuch des Herstellers und örtliche Regeln gehen vor.`,
  ],
  "todo.act": [
    (names: string) =>
      `Act: ${names}. Take out of heavy work and plan the service. Springs store energy: opening a clamping unit is work for trained people with the builder's tools.`,
    (names: string) =>
      `Handeln: ${names}. Nicht mehr schwer zerspanen und die Wartung planen. Federn speichern Energie: Eine Spanneinheit zu öffnen ist Arbeit für Geschulte mit den Werkzeugen des Herstellers.`,
  ],
  "todo.cannotTell": [
    (names: string) => `Measure again, it cannot be told: ${names}. Until then treat as the builder's manual asks.`,
    (names: string) =>
      `Noch einmal messen, es ist unklar: ${names}. Bis dahin so behandeln, wie das Handbuch es verlangt.`,
  ],
  "todo.watch": [
    (names: string) => `Watch, measure again sooner: ${names}.`,
    (names: string) => `Beobachten, früher wieder messen: ${names}.`,
  ],
  "todo.missing": [
    (names: string) => `Not measured yet: ${names}.`,
    (names: string) => `Noch nicht gemessen: ${names}.`,
  ],
  "todo.remeasure": [
    (names: string) => `Marked to be measured again: ${names}.`,
    (names: string) => `Zum Nachmessen vorgemerkt: ${names}.`,
  ],
  by: [(name: string, day: string) => `${name} (by ${day})`, (name: string, day: string) => `${name} (bis ${day})`],

  results: ["Planned and measured", "Geplant und gemessen"],
  no: ["no.", "Nr."],
  spindle: ["spindle", "Spindel"],
  adapter: ["taper, adapter", "Kegel, Adapter"],
  expected: [(unit: string) => `expected, ${unit}`, (unit: string) => `erwartet, ${unit}`],
  force: [(unit: string) => `force, ${unit}`, (unit: string) => `Kraft, ${unit}`],
  verdict: ["verdict", "Urteil"],
  fromBaseline: ["from baseline", "Änderung"],
  when: ["when, by", "wann, von"],
  notMeasured: ["not measured", "nicht gemessen"],
  otherwise: ["measured outside this round", "außerhalb dieses Rundgangs gemessen"],
  retired: ["not in use any more", "nicht mehr in Betrieb"],
  limitsNote: [
    "± is the expanded uncertainty. Verdicts are as filed, with the limits of that day; each check has a report of its own.",
    "± ist die erweiterte Unsicherheit. Urteile wie abgelegt, mit den Grenzen jenes Tages; zu jeder Prüfung gibt es einen eigenen Bericht.",
  ],
  reasons: ["Why", "Warum"],

  leftOut: ["Readings that were left out", "Weggelassene Messwerte"],
  noneLeftOut: ["None: every reading that came back is filed.", "Keine: Jeder zurückgebrachte Messwert ist abgelegt."],
  notDocked: [
    "Nothing was docked or typed in for this round; its checks were measured one by one.",
    "Für diesen Rundgang wurde nichts ausgelesen oder eingetippt; seine Prüfungen wurden einzeln gemessen.",
  ],
  reading: ["reading", "Messwert"],
  raw: ["as it came", "wie es kam"],
  why: ["why", "warum"],
  "why.asked": ["left out when asked", "auf Frage weggelassen"],
  "why.torque": ["a unit of torque", "Drehmomenteinheit"],
  "why.overload": ["overload", "Überlast"],
  "why.unreadable": ["no readable force", "keine lesbare Kraft"],
  "why.noClamping": ["nothing seemed clamped", "wohl nichts gespannt"],
  "why.dateOutside": ["not of this round's day", "nicht vom Tag des Rundgangs"],
  "why.valueTwice": ["the same value twice", "derselbe Wert zweimal"],
  "why.maximumKept": ["maximum not cleared", "Spitze nicht gelöscht"],
  "why.unitFactor": ["another unit was set", "andere Einheit eingestellt"],
  "why.belongsNowhere": ["fits no spindle", "passt zu keiner Spindel"],
  "why.unknownLocation": ["location of no spindle", "Ort keiner Spindel"],
  "why.wrongLocation": ["location and force disagree", "Ort und Kraft passen nicht"],
  "why.byHand": ["left out by hand", "von Hand weggelassen"],
  docked: ["docked from", "ausgelesen aus"],
  "source.port": ["the gauge", "dem Messgerät"],
  "source.file": ["a file", "einer Datei"],
  "source.sheet": ["the written sheet", "dem geschriebenen Blatt"],
  readings: [
    (n: number, source: string) => `${n} readings from ${source}`,
    (n: number, source: string) => `${n} Messwerte aus ${source}`,
  ],
  clock: ["gauge's clock", "Uhr des Messgeräts"],
  off: [
    (seconds: string) => `off by ${seconds} s, corrected`,
    (seconds: string) => `um ${seconds} s falsch, berichtigt`,
  ],
  before: ["Before the next round", "Vor dem nächsten Rundgang"],
  itsEntry: ["this round's entry", "Eintrag des Rundgangs"],
  itsHash: ["its hash", "sein Hash"],
});
