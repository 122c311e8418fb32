import { inBoth } from "../../words/inBoth.ts";

/** Everything docking says. */
export const dockTexts = inBoth({
  format: ["How it is read", "Leseart"],
  formatFound: ["found out by itself", "selbst herausfinden"],
  formatsKept: [(n: number) => `Kept ways of reading: ${n}`, (n: number) => `Aufgehobene Lesearten: ${n}`],
  formatName: [(name: string) => `Name of “${name}”`, (name: string) => `Name von „${name}“`],
  rename: ["Rename", "Umbenennen"],
  renameNamed: [(name: string) => `Rename “${name}”`, (name: string) => `„${name}“ umbenennen`],
  retire: ["Take out of use", "Außer Gebrauch nehmen"],
  retireNamed: [(name: string) => `Take “${name}” out of use`, (name: string) => `„${name}“ außer Gebrauch nehmen`],
  useAgain: ["Put in use again", "Wieder in Gebrauch nehmen"],
  useAgainNamed: [
    (name: string) => `Put “${name}” in use again`,
    (name: string) => `„${name}“ wieder in Gebrauch nehmen`,
  ],
  retired: ["not in use", "nicht in Gebrauch"],
  readAs: ["How it was read, column by column", "Wie gelesen wurde, Spalte für Spalte"],
  readAsWhy: [
    "Set right what was taken for something else. Kept under a name, the same can be chosen the next time without a question.",
    "Richtigstellen, was verwechselt wurde. Unter einem Namen aufgehoben, lässt es sich beim nächsten Mal ohne Rückfrage wählen.",
  ],
  keepName: ["Name, such as the gauge's", "Name, etwa der des Messgeräts"],
  keep: ["Keep this way of reading", "Leseart aufheben"],
  kept: [(name: string) => `Kept as “${name}”.`, (name: string) => `Aufgehoben als „${name}“.`],
  demoTitle: ["In the demo", "In der Demo"],
  demoWhy: [
    "The simulated gauge has been out on a round: eight spindles, and the slips of a long day. Its clock is wrong as well.",
    "Das simulierte Messgerät war auf einem Rundgang: acht Spindeln und die Versehen eines langen Tages. Auch seine Uhr geht falsch.",
  ],
  demoDock: ["Dock the simulated gauge", "Simuliertes Messgerät auslesen"],
  demoAnew: ["Send it on another round", "Noch einmal losschicken"],
  title: ["Dock", "Auslesen"],
  why: [
    "What came back from the round: the gauge's memory, a file of it, or the values written on the sheet. Nothing is filed before you accept.",
    "Was der Rundgang gebracht hat: der Speicher des Messgeräts, eine Datei davon oder die auf das Blatt geschriebenen Werte. Abgelegt wird erst mit der Annahme.",
  ],
  round: ["Round", "Rundgang"],
  noRound: ["without a round", "ohne Rundgang"],
  gauge: ["Gauge", "Messgerät"],
  noGauge: ["not chosen", "nicht gewählt"],
  from: ["Where from", "Woher"],
  file: ["a file", "eine Datei"],
  port: ["the gauge's port", "der Anschluss des Messgeräts"],
  sheet: ["the sheet", "das Blatt"],
  chooseFile: ["File with readings", "Datei mit Messwerten"],
  fileHint: [
    "Text or CSV, as the gauge or its program wrote it.",
    "Text oder CSV, wie das Messgerät oder sein Programm sie schrieb.",
  ],
  request: ["What asks for the memory", "Womit der Speicher abgefragt wird"],
  requestHint: [
    "Empty: press the send key at the gauge while this waits.",
    "Leer: am Messgerät die Sendetaste drücken, während hier gewartet wird.",
  ],
  fetchFrom: [(label: string) => `Read from ${label}`, (label: string) => `Von ${label} lesen`],
  noPort: [
    "Connect the gauge on Measure first; its port is used here.",
    "Das Messgerät zuerst unter Messen verbinden; sein Anschluss wird hier benutzt.",
  ],
  reading: ["Reading …", "Wird gelesen …"],
  stopReading: ["Stop", "Anhalten"],
  value: [(n: number) => `Value ${n}`, (n: number) => `Wert ${n}`],
  useSheet: ["Look at these values", "Diese Werte ansehen"],
  needRound: ["Choose the round whose sheet it is.", "Bitte den Rundgang wählen, dessen Blatt es ist."],
  emptyTitle: ["Nothing docked yet", "Noch nichts ausgelesen"],
  emptyWhy: [
    "Choose the round, then the memory, a file or the sheet. Each reading is proposed for its spindle; you look, answer what is asked, and accept once.",
    "Rundgang wählen, dann Speicher, Datei oder Blatt. Jeder Messwert wird für seine Spindel vorgeschlagen; ansehen, Fragen beantworten, einmal annehmen.",
  ],

  notUnderstood: [
    "Nothing in it looks like readings. Say below which column holds the force.",
    "Nichts darin sieht nach Messwerten aus. Unten sagen, welche Spalte die Kraft enthält.",
  ],
  columns: ["What the columns hold", "Was die Spalten enthalten"],
  column: [
    (n: number, sample: string) => `Column ${n}: ${sample}`,
    (n: number, sample: string) => `Spalte ${n}: ${sample}`,
  ],
  "field.number": ["number", "Nummer"],
  "field.force": ["force", "Kraft"],
  "field.unit": ["unit", "Einheit"],
  "field.time": ["time", "Uhrzeit"],
  "field.location": ["location", "Ort"],
  "field.ignored": ["not used", "nicht benutzt"],
  "field.date": ["date", "Datum"],
  "field.stamp": ["date and time", "Datum und Uhrzeit"],
  "field.kind": ["maximum or live", "Spitze oder Anzeige"],
  "ask.dateOrder": ["Which comes first in its dates?", "Was steht in den Daten zuerst?"],
  dmy: ["day, month, year", "Tag, Monat, Jahr"],
  mdy: ["month, day, year", "Monat, Tag, Jahr"],
  "ask.unit": [
    "The figures come without a unit of force. Which one does the gauge show?",
    "Die Zahlen kommen ohne Krafteinheit. Welche zeigt das Messgerät?",
  ],
  "ask.mass": [
    (unit: string) => `The unit is one of mass. Does this gauge mean the force ${unit}?`,
    (unit: string) => `Die Einheit ist eine der Masse. Meint dieses Messgerät die Kraft ${unit}?`,
  ],
  yes: ["Yes", "Ja"],

  readCount: [
    (n: number, known: number) => `${n} new readings; ${known} were docked before and are left out.`,
    (n: number, known: number) => `${n} neue Messwerte; ${known} sind schon abgelegt und bleiben weg.`,
  ],
  nothingNew: [
    "All of this memory was docked before. Nothing is added.",
    "Dieser Speicher ist schon ganz abgelegt. Es kommt nichts dazu.",
  ],
  nothingThere: ["The memory is empty.", "Der Speicher ist leer."],
  incomplete: [
    (got: number, of: string) =>
      `Not all of it came: ${got} readings, ${of} announced. What came can be filed; docking again later adds the rest.`,
    (got: number, of: string) =>
      `Es kam nicht alles an: ${got} Messwerte, ${of} angekündigt. Angekommenes lässt sich ablegen; späteres Auslesen ergänzt den Rest.`,
  ],
  badDates: [
    (n: number, first: string) =>
      n === 1
        ? `One reading bears a date or time that does not exist (${first}). Filed, it gets the time of this docking.`
        : `${n} readings bear a date or time that does not exist (the first: ${first}). Filed, they get the time of this docking.`,
    (n: number, first: string) =>
      n === 1
        ? `Ein Messwert trägt ein Datum oder eine Zeit, die es nicht gibt (${first}). Abgelegt bekommt er die Zeit dieses Auslesens.`
        : `${n} Messwerte tragen ein Datum oder eine Zeit, die es nicht gibt (der erste: ${first}). Abgelegt bekommen sie die Zeit dieses Auslesens.`,
  ],
  badDate: [(stamp: string) => `${stamp} does not exist`, (stamp: string) => `${stamp} gibt es nicht`],
  unknownCount: ["an unknown number", "unbekannt viele"],
  doubtful: [
    (n: number) =>
      n === 1
        ? "One reading equals the last one docked and is taken as docked before. Without a date that is not sure: look before accepting."
        : `${n} readings equal those docked last and are taken as docked before. Without dates that is not sure: look before accepting.`,
    (n: number) =>
      n === 1
        ? "Ein Messwert gleicht dem zuletzt abgelegten und gilt als schon abgelegt. Ohne Datum ist das nicht sicher: vor der Annahme ansehen."
        : `${n} Messwerte gleichen den zuletzt abgelegten und gelten als schon abgelegt. Ohne Datum ist das nicht sicher: vor der Annahme ansehen.`,
  ],
  allNew: ["No, all of them are new", "Nein, alle sind neu"],
  clockAhead: [
    (off: string) => `The gauge's clock is ${off} ahead; times are corrected by that.`,
    (off: string) => `Die Uhr des Messgeräts geht ${off} vor; die Zeiten sind darum berichtigt.`,
  ],
  clockBehind: [
    (off: string) => `The gauge's clock is ${off} behind; times are corrected by that.`,
    (off: string) => `Die Uhr des Messgeräts geht ${off} nach; die Zeiten sind darum berichtigt.`,
  ],
  clockAssumed: [
    "The gauge did not say what its clock shows: its newest reading is taken as just made.",
    "Das Messgerät hat seine Uhrzeit nicht genannt: Der neueste Messwert gilt als eben genommen.",
  ],
  gains: [(perDay: string) => `It gains ${perDay} s a day.`, (perDay: string) => `Sie geht ${perDay} s am Tag vor.`],
  loses: [(perDay: string) => `It loses ${perDay} s a day.`, (perDay: string) => `Sie geht ${perDay} s am Tag nach.`],
  setSince: ["It was set since the last docking.", "Sie wurde seit dem letzten Auslesen gestellt."],

  spindle: ["Spindle", "Spindel"],
  expected: ["Expected", "Erwartet"],
  proposed: ["Readings", "Messwerte"],
  mean: ["Mean", "Mittel"],
  missing: ["no reading", "kein Messwert"],
  sure: ["sure", "sicher"],
  likely: ["likely", "wahrscheinlich"],
  unclear: ["open", "offen"],
  moveTo: ["Belongs to", "Gehört zu"],
  nowhere: ["Left out", "Weggelassen"],
  leftTitle: [(n: number) => `Left out: ${n}`, (n: number) => `Weggelassen: ${n}`],
  leftNone: ["No reading is left out.", "Kein Messwert ist weggelassen."],
  dragHint: [
    "Drag readings to another spindle, or choose it in the list beside them.",
    "Messwerte auf eine andere Spindel ziehen oder sie in der Liste daneben wählen.",
  ],
  warningAsk: [
    (about: string) => `A reason is wanted for ${about}.`,
    (about: string) => `Ein Grund wird gebraucht für ${about}.`,
  ],
  warningBlock: [
    (about: string) => `${about} cannot be filed like this: their readings are to be left out.`,
    (about: string) => `${about}: so nicht abzulegen, ihre Messwerte sind wegzulassen.`,
  ],
  clockDoubt: ["The clock of this PC is right", "Die Uhr dieses Rechners geht richtig"],
  accept: [
    (checks: number, left: number) => `File ${checks} checks, ${left} readings left out`,
    (checks: number, left: number) => `${checks} Prüfungen ablegen, ${left} Messwerte weglassen`,
  ],
  answerFirst: [(n: number) => `Answer ${n} more first.`, (n: number) => `Zuerst noch ${n} beantworten.`],
  twoUnits: [
    "Readings of one spindle are converted differently: leave some out or move them.",
    "Messwerte einer Spindel sind verschieden umgerechnet: einige weglassen oder verschieben.",
  ],
  filed: [(n: number) => `${n} checks filed`, (n: number) => `${n} Prüfungen abgelegt`],
  filedAgain: [
    "This docking was filed before; nothing was added.",
    "Dieses Auslesen war schon abgelegt; es kam nichts dazu.",
  ],
  toSpindles: ["To the spindles", "Zu den Spindeln"],
  another: ["Dock another", "Noch eines auslesen"],
});
