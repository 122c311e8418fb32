import { inBoth } from "../../words/inBoth.ts";

/** Everything docking says. */
export const dockTexts = inBoth({
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
  unknownCount: ["an unknown number", "unbekannt viele"],
  doubtful: [
    "Without dates it is not sure which readings were docked before. Look at them before accepting.",
    "Ohne Datum ist nicht sicher, welche Messwerte schon abgelegt sind. Vor der Annahme ansehen.",
  ],
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
  drift: [(perDay: string) => `It gains ${perDay} s a day.`, (perDay: string) => `Sie gewinnt ${perDay} s am Tag.`],
  setSince: ["It was set since the last docking.", "Sie wurde seit dem letzten Auslesen gestellt."],

  questions: [(open: number) => `Questions, ${open} open`, (open: number) => `Fragen, ${open} offen`],
  "q.torque": [
    "carry a unit of torque. A torque is no force.",
    "tragen eine Drehmomenteinheit. Ein Drehmoment ist keine Kraft.",
  ],
  "q.overload": ["were overload: there is no figure.", "waren Überlast: Es gibt keine Zahl."],
  "q.unreadable": ["hold no force that can be read.", "enthalten keine lesbare Kraft."],
  "q.noClamping": ["look as if nothing was clamped.", "sehen aus, als sei nichts gespannt gewesen."],
  "q.dateOutside": ["are dated outside this round.", "sind nicht vom Tag dieses Rundgangs."],
  "q.valueTwice": [
    "are the same figure within seconds: one clamping stored twice?",
    "sind dieselbe Zahl binnen Sekunden: ein Spannen zweimal gespeichert?",
  ],
  "q.unitFactor": [
    (factor: string) => `fit their spindles only when multiplied by ${factor}: the gauge stood on another unit?`,
    (factor: string) => `passen nur, wenn man sie mit ${factor} malnimmt: War eine andere Einheit eingestellt?`,
  ],
  "q.swapped": [
    "fit better the other way round: two spindles swapped?",
    "passen andersherum besser: zwei Spindeln vertauscht?",
  ],
  "q.fitsAnother": [
    "are far from what this spindle showed, and fit a neighbour.",
    "liegen weit von dem, was diese Spindel zeigte, und passen zu einer Nachbarin.",
  ],
  "q.maximumKept": [
    "repeat the figure of the spindle before: the maximum not cleared?",
    "wiederholen die Zahl der Spindel davor: Spitze nicht gelöscht?",
  ],
  "q.alike": [
    "belong to spindles that their forces cannot tell apart; they are shown in the order of the round.",
    "gehören zu Spindeln, die ihre Kräfte nicht unterscheiden; gezeigt in der Folge des Rundgangs.",
  ],
  "q.unsure": ["could as well belong elsewhere.", "könnten auch anderswohin gehören."],
  "q.belongsNowhere": ["fit no spindle.", "passen zu keiner Spindel."],
  "q.unknownLocation": [
    "carry a location that no spindle of the round has.",
    "tragen einen Ort, den keine Spindel des Rundgangs hat.",
  ],
  "q.wrongLocation": [
    "carry another location than the spindle their force fits.",
    "tragen einen anderen Ort als die Spindel, zu der ihre Kraft passt.",
  ],
  "q.clockPutBack": [
    "come after the gauge's clock was put back; earlier times are not used, only the order.",
    "kommen, nachdem die Uhr zurückgestellt wurde; frühere Zeiten zählen nicht, nur die Folge.",
  ],
  readings: [(list: string) => `Readings ${list}`, (list: string) => `Messwerte ${list}`],
  "p.leaveOut": ["Leave out", "Weglassen"],
  "p.countOnce": ["Count once", "Einmal zählen"],
  "p.scale": ["Convert them", "Umrechnen"],
  "p.swap": ["Swapped, as shown", "Vertauscht, wie gezeigt"],
  "p.fileAsShown": ["Right as shown", "Richtig wie gezeigt"],
  "p.orderOnly": ["Use the order only", "Nur die Folge benutzen"],
  "p.measureAgain": ["Leave out, measure again", "Weglassen, neu messen"],
  asStored: ["No, as stored", "Nein, wie gespeichert"],
  leaveOut: ["Leave out", "Weglassen"],
  answered: ["answered", "beantwortet"],

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
