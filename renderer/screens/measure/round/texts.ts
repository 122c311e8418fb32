import { inBoth } from "../../../words/inBoth.ts";

/** What a round in hand says on Measure. */
export const roundLeadTexts = inBoth({
  round: ["Round in hand", "Laufender Rundgang"],
  progress: [
    (done: number, of: number) => `${done} of ${of} measured`,
    (done: number, of: number) => `${done} von ${of} gemessen`,
  ],
  putOff: [(n: number) => `${n} put off`, (n: number) => `${n} verschoben`],
  leftOut: [(n: number) => `${n} left out`, (n: number) => `${n} ausgelassen`],
  stop: [(place: number) => `Stop ${place}`, (place: number) => `Station ${place}`],
  expected: [(force: string) => `about ${force} expected`, (force: string) => `etwa ${force} erwartet`],
  back: [(why: string) => `put off before: ${why}`, (why: string) => `schon verschoben: ${why}`],
  was: [(why: string) => `left out before: ${why}`, (why: string) => `schon ausgelassen: ${why}`],
  already: ["measured on this round already", "auf diesem Rundgang schon gemessen"],
  notOfRound: ["No stop of this round", "Keine Station dieses Rundgangs"],
  backToRound: [(name: string) => `Back to ${name}`, (name: string) => `Zurück zu ${name}`],
  next: [(name: string) => `then ${name}`, (name: string) => `danach ${name}`],
  nextChange: [(name: string) => `then ${name}, other adapter`, (name: string) => `danach ${name}, anderer Adapter`],
  last: ["the last stop", "die letzte Station"],
  later: ["Come back later", "Später wiederkommen"],
  leaveOut: ["Leave out", "Auslassen"],
  stops: ["All stops", "Alle Stationen"],
  putAway: ["Put the round away", "Rundgang weglegen"],
  awayToast: [
    "The round is put away; it stays open under Rounds.",
    "Der Rundgang liegt wieder unter Rundgänge und bleibt offen.",
  ],

  laterTitle: [(name: string) => `Come back to ${name} later`, (name: string) => `Später zu ${name} zurück`],
  leaveOutTitle: [
    (name: string) => `Leave ${name} out of this round`,
    (name: string) => `${name} in diesem Rundgang auslassen`,
  ],
  whyKept: ["The reason stays with the round.", "Der Grund bleibt beim Rundgang stehen."],
  running: ["machine is running", "Maschine läuft"],
  repair: ["machine is under repair", "Maschine wird repariert"],
  adapterMissing: ["adapter is missing", "Adapter fehlt"],
  notLet: ["not to be locked out now", "jetzt nicht zu sichern"],

  takeAdapter: [(to: string) => `Put ${to} on the gauge`, (to: string) => `${to} ans Messgerät schrauben`],
  changeAdapter: [
    (from: string, to: string) => `Change the adapter: ${from} off, ${to} on`,
    (from: string, to: string) => `Adapter wechseln: ${from} ab, ${to} an`,
  ],
  noAdapterFits: [
    (taper: string) => `No adapter in use fits ${taper}: choose one, or leave this stop out.`,
    (taper: string) => `Kein Adapter in Gebrauch passt zu ${taper}: einen wählen oder die Station auslassen.`,
  ],
  changeTitle: ["Before the first clamping:", "Vor dem ersten Spannen:"],
  changeCare: [
    "gauge out of the spindle and unloaded; wipe taper, thread and adapter, look the adapter over for damage and for the right taper, screw it on tight, then zero anew. A wrong or loose adapter can jam or throw the gauge.",
    "Messgerät aus der Spindel und unbelastet; Kegel, Gewinde und Adapter abwischen, Adapter auf Schäden und den richtigen Kegel ansehen, fest anschrauben, danach neu nullen. Ein falscher oder loser Adapter kann klemmen oder das Messgerät herausschleudern.",
  ],

  movedTitle: [
    (n: number) => (n === 1 ? "Whose clamping is this?" : `Whose ${n} clampings are these?`),
    (n: number) => (n === 1 ? "Wem gehört dieser Spannvorgang?" : `Wem gehören diese ${n} Spannvorgänge?`),
  ],
  movedWhy: [
    (n: number, from: string, to: string) =>
      `${n === 1 ? "One value stands" : `${n} values stand`} measured for ${from} and not filed yet, and you go to ${to}.`,
    (n: number, from: string, to: string) =>
      `Für ${from} ${n === 1 ? "steht ein Wert" : `stehen ${n} Werte`} da, noch nicht abgelegt, und es geht zu ${to}.`,
  ],
  theyAre: [(to: string) => `Measured at ${to}`, (to: string) => `Bei ${to} gemessen`],
  discard: [(to: string) => `Discard, and go to ${to}`, (to: string) => `Verwerfen und zu ${to}`],

  resultTitle: [
    (done: number, of: number) =>
      done === of ? `The round is done: all ${of} measured` : `The round is done: ${done} of ${of} measured`,
    (done: number, of: number) =>
      done === of
        ? `Der Rundgang ist fertig: alle ${of} gemessen`
        : `Der Rundgang ist fertig: ${done} von ${of} gemessen`,
  ],
  resultLeft: ["Left out", "Ausgelassen"],
  retired: ["taken out of use meanwhile", "inzwischen außer Gebrauch"],
  measureAfterAll: ["Measure it after all", "Doch noch messen"],
  endResult: ["Close the round", "Rundgang abschließen"],
  toSpindles: ["See the spindles", "Spindeln ansehen"],
  chooseStop: ["Go to a stop of the round", "Zu einer Station des Rundgangs"],
  stateDone: ["measured", "gemessen"],
  stateLater: ["put off", "verschoben"],
  stateLeftOut: ["left out", "ausgelassen"],
});
