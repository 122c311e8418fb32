import { inBoth } from "../../words/inBoth.ts";

/** Everything Measure says. */
export const measureTexts = inBoth({
  title: ["Measure", "Messen"],

  // The tag
  spindle: ["spindle", "Spindel"],
  adapter: ["adapter", "Adapter"],
  gauge: ["gauge", "Messgerät"],
  operator: ["operator", "Prüfer"],
  check: ["this check", "diese Prüfung"],
  chooseSpindle: ["Choose the spindle", "Spindel wählen"],
  chooseAdapter: ["Choose the adapter", "Adapter wählen"],
  chooseGauge: ["Choose the gauge", "Messgerät wählen"],
  chooseOperator: ["Who measures?", "Wer misst?"],
  notChosen: ["not chosen", "offen"],
  noAdapter: ["Without an adapter", "Ohne Adapter"],
  noOperator: ["Nobody named", "Niemand genannt"],
  scaleAssumed: ["not calibrated", "nicht kalibriert"],
  due: [(date: string) => `due ${date}`, (date: string) => `fällig ${date}`],
  pastDue: [(date: string) => `past due since ${date}`, (date: string) => `überfällig seit ${date}`],
  foundOff: ["found off at its proof", "zeigte bei der Prüfung falsch an"],
  notProved: ["never proved", "nie geprüft"],
  otherTaper: ["other taper", "anderer Kegel"],
  warm: ["spindle warm", "Spindel warm"],
  cold: ["spindle cold", "Spindel kalt"],
  warmOrCold: ["warm or cold?", "warm oder kalt?"],
  noneYetSpindle: ["No spindle is known yet.", "Noch ist keine Spindel bekannt."],
  noneYetAdapter: ["No adapter is known yet.", "Noch ist kein Adapter bekannt."],
  noneYetGauge: ["No gauge is known yet.", "Noch ist kein Messgerät bekannt."],
  noneYetOperator: ["No operator is named yet.", "Noch ist niemand genannt."],
  addSpindle: ["Add a spindle", "Spindel anlegen"],
  addAdapter: ["Add an adapter", "Adapter anlegen"],
  addGauge: ["Add a gauge", "Messgerät anlegen"],
  addOperator: ["Add an operator", "Prüfer anlegen"],

  // About the check
  aboutTitle: ["About this check", "Zu dieser Prüfung"],
  why: ["Why it is measured", "Warum gemessen wird"],
  warmLabel: ["The spindle is", "Die Spindel ist"],
  warmShort: ["warm", "warm"],
  coldShort: ["cold", "kalt"],
  unknownShort: ["not said", "offen"],
  counter: ["Tool changes so far", "Werkzeugwechsel bisher"],
  counterHint: ["As the machine shows it; may stay empty.", "Wie die Maschine es zeigt; darf leer bleiben."],
  temperature: ["Temperature", "Temperatur"],
  showBudgetShort: ["How sure?", "Wie sicher?"],
  showBudget: ["Where the uncertainty comes from", "Woher die Unsicherheit kommt"],
  workOrder: ["Work order", "Auftrag"],
  wholeNumber: ["A whole number, please.", "Bitte eine ganze Zahl."],
  temperatureRange: ["Between −40 and 120 °C, please.", "Bitte zwischen −40 und 120 °C."],

  // The live figure
  none: ["no gauge", "kein Messgerät"],
  atRest: ["at rest", "in Ruhe"],
  rising: ["rising", "steigt"],
  holding: ["holding", "hält"],
  falling: ["falling", "fällt"],
  overload: ["overload", "Überlast"],
  silent: ["silent", "stumm"],
  held: ["held maximum", "gehaltene Spitze"],
  saidClamping: [
    (n: number, force: string) => `Clamping ${n}: ${force}.`,
    (n: number, force: string) => `Spannvorgang ${n}: ${force}.`,
  ],
  force: ["Force", "Kraft"],
  holdingFor: [(s: string) => `holding ${s} s`, (s: string) => `hält ${s} s`],
  zeroIs: [(figure: string) => `zero ${figure}`, (figure: string) => `Null ${figure}`],
  noZero: ["not zeroed", "nicht genullt"],
  greatest: [(figure: string) => `greatest ${figure}`, (figure: string) => `größte ${figure}`],
  zeroAct: ["Zero", "Nullen"],
  zeroed: ["Zeroed.", "Genullt."],
  column: ["Force against the limits", "Kraft gegen die Grenzen"],

  // Steps and cautions
  nextSpindle: ["Which spindle? Scan its label or choose it.", "Welche Spindel? Etikett scannen oder wählen."],
  nextGauge: ["Connect a gauge, or type a value in.", "Messgerät verbinden oder einen Wert eintippen."],
  nextWhichGauge: [
    "Which gauge is it? Choose it: its proof belongs to the figure.",
    "Welches Messgerät ist es? Wählen: Seine Prüfung gehört zum Wert.",
  ],
  nextZero: [
    "Zero the gauge in the hand, unloaded, as it will be held.",
    "Das Messgerät in der Hand nullen, unbelastet, in seiner späteren Lage.",
  ],
  nextClamp: ["Clamp and release three to five times.", "Drei- bis fünfmal spannen und lösen."],
  beforeClamp: ["Before you clamp:", "Vor dem Spannen:"],
  cautionLock: [
    "lock out the machine as its manual says; tool change by hand mode only;",
    "Maschine sichern, wie ihr Handbuch es sagt; Werkzeugwechsel nur im Handbetrieb;",
  ],
  cautionHands: [
    "hands and sleeves out of the spindle mouth: it closes in a fraction of a second;",
    "Hände und Ärmel weg von der Spindelöffnung: Sie schließt im Bruchteil einer Sekunde;",
  ],
  cautionTurn: [
    "never start, orient or change tools with the gauge in the spindle;",
    "nie anlaufen lassen, ausrichten oder wechseln, solange das Messgerät in der Spindel sitzt;",
  ],
  cautionCapacity: [
    (force: string) => `never beyond the gauge's ${force};`,
    (force: string) => `nie über die ${force} des Messgeräts;`,
  ],
  cautionRules: [
    "the builder's manual and local rules come first.",
    "Handbuch des Herstellers und örtliche Regeln gehen vor.",
  ],
  cautionTitle: ["Caution:", "Vorsicht:"],
  beforeRelease: ["Before release:", "Vor dem Lösen:"],
  releaseHold: [
    "hold the gauge as you hold a tool, it may drop; hands clear of the spindle mouth.",
    "das Messgerät halten wie ein Werkzeug, es kann fallen; Hände weg von der Spindelöffnung.",
  ],
  weakened: ["Weakened by:", "Geschwächt durch:"],
  weakenedMore: [(n: number) => `${n} more (see How sure?)`, (n: number) => `${n} weitere (siehe Wie sicher?)`],
  formingSoon: [
    "The verdict forms with the first good clamping.",
    "Das Urteil entsteht mit dem ersten guten Spannvorgang.",
  ],

  // Cycles and series
  cycles: ["Clampings", "Spannvorgänge"],
  peak: [(figure: string) => `peak ${figure}`, (figure: string) => `Spitze ${figure}`],
  peakAtLeast: [(figure: string) => `peak ≥ ${figure}`, (figure: string) => `Spitze ≥ ${figure}`],
  corrected: [
    (mean: string, factor: string) => `${mean} × ${factor}, gauge and adapter corrected`,
    (mean: string, factor: string) => `${mean} × ${factor}, Messgerät und Adapter korrigiert`,
  ],
  correctedAdapter: [
    (mean: string, factor: string) => `${mean} × ${factor}, adapter corrected, gauge not chosen`,
    (mean: string, factor: string) => `${mean} × ${factor}, Adapter korrigiert, Messgerät offen`,
  ],
  correctedGauge: [
    (mean: string, factor: string) => `${mean} × ${factor}, gauge corrected`,
    (mean: string, factor: string) => `${mean} × ${factor}, Messgerät korrigiert`,
  ],
  noise: [(figure: string) => `noise ${figure}`, (figure: string) => `Rauschen ${figure}`],
  peakOnly: ["held peak", "gehaltene Spitze"],
  outlier: ["unlike the others", "anders als die übrigen"],
  leaveOut: [(n: number) => `Drop ${n}`, (n: number) => `${n} weglassen`],
  takeIn: [(n: number) => `Take ${n} in again`, (n: number) => `${n} wieder aufnehmen`],
  leftOutToast: [
    (n: number) => `Clamping ${n} is dropped: it does not count.`,
    (n: number) => `Spannvorgang ${n} ist weggelassen: Er zählt nicht.`,
  ],
  whyLeftOut: ["Why", "Warum"],
  noReason: ["no reason given", "kein Grund genannt"],
  reasonSeat: ["badly seated", "schlecht gesessen"],
  reasonDirt: ["dirt or chip", "Schmutz oder Span"],
  reasonKnock: ["knocked or pulled", "gestoßen oder gezogen"],
  reasonZero: ["zero was wrong", "Nullpunkt falsch"],
  takenAgain: ["taken again", "wiederholt"],
  seriesOf: [(n: number) => `series of ${n}`, (n: number) => `Reihe aus ${n}`],
  typedValue: ["typed in", "eingetippt"],
  noSeries: ["no clamping yet", "noch kein Spannvorgang"],
  range: [(share: string) => `range ${share}`, (share: string) => `Spanne ${share}`],
  uncertainty: [
    (figure: string, k: string) => `U ${figure} (k = ${k})`,
    (figure: string, k: string) => `U ${figure} (k = ${k})`,
  ],
  scatterLarge: [
    "Wide scatter: friction, dirt or a bad seat. Clean, and take it again before believing it.",
    "Große Streuung: Reibung, Schmutz oder schlechter Sitz. Reinigen und wiederholen, bevor man ihr glaubt.",
  ],
  firstOff: [
    (share: string) => `The first clamping stands off by ${share}, as is common while the taper seats.`,
    (share: string) => `Der erste Spannvorgang weicht um ${share} ab, wie üblich, bis der Kegel sitzt.`,
  ],
  recovered: [
    "These clampings were found again after the program had stopped.",
    "Diese Spannvorgänge wurden nach einem Halt des Programms wiedergefunden.",
  ],

  // Acts
  file: [
    (value: string, spindle: string) => `File ${value} to ${spindle}`,
    (value: string, spindle: string) => `${value} bei ${spindle} ablegen`,
  ],
  fileNothing: ["File the check", "Prüfung ablegen"],
  spaceKey: ["space", "Leertaste"],
  filing: ["Filing …", "Wird abgelegt …"],
  takeAgain: [(n: number) => `Take ${n} again`, (n: number) => `${n} wiederholen`],
  typeIn: ["Type a value in", "Wert eintippen"],
  clearAll: ["Start over", "Neu beginnen"],
  cleared: ["The series was let go; nothing was filed.", "Die Reihe ist verworfen; nichts wurde abgelegt."],
  filed: [
    (value: string, spindle: string) => `${value} filed to ${spindle}`,
    (value: string, spindle: string) => `${value} bei ${spindle} abgelegt`,
  ],
  filedUnknown: ["The last check can still be taken back.", "Die letzte Prüfung lässt sich noch zurücknehmen."],
  takeBack: ["Take it back", "Zurücknehmen"],
  takenBack: ["Taken back: the check does not count.", "Zurückgenommen: Die Prüfung zählt nicht."],
  "cannot.nothingMeasured": [
    "Clamp first: there is nothing to file yet.",
    "Zuerst spannen: Es gibt noch nichts abzulegen.",
  ],
  "cannot.noSpindle": ["Choose the spindle first.", "Zuerst die Spindel wählen."],
  "cannot.noGauge": ["Choose the gauge first.", "Zuerst das Messgerät wählen."],
  "cannot.blocked": [
    "It cannot be filed like this: see the warning.",
    "So lässt es sich nicht ablegen: siehe Warnung.",
  ],
  "cannot.reasonWanted": [
    "A reason is wanted first: see the warning.",
    "Zuerst wird ein Grund gebraucht: siehe Warnung.",
  ],
  "cannot.readOnly": ["Nothing can be written just now.", "Im Augenblick kann nichts geschrieben werden."],
  clockTitle: ["Is the clock right?", "Stimmt die Uhr?"],
  clockYes: ["File it nevertheless", "Trotzdem ablegen"],

  // Warnings
  goOn: ["Go on, with a reason", "Mit Grund fortfahren"],
  goOnTitle: ["Go on in spite of this?", "Trotzdem fortfahren?"],
  goneOn: [(reason: string) => `gone on: ${reason}`, (reason: string) => `fortgefahren: ${reason}`],
  blocks: ["Not like this:", "So nicht:"],
  asks: ["Think first:", "Erst überlegen:"],
  tells: ["Note:", "Hinweis:"],

  // Typing a value
  typeTitle: ["A value read off a display", "Ein abgelesener Wert"],
  typeLabel: ["Force with its unit", "Kraft mit Einheit"],
  typeHint: ["For example 17.92 kN", "Zum Beispiel 17,92 kN"],
  typeUse: ["Use this value", "Diesen Wert nehmen"],
  typeMeans: [(value: string) => `That is ${value}.`, (value: string) => `Das sind ${value}.`],
  typeForget: ["Take the typed value away", "Eingetippten Wert wegnehmen"],

  // Simulated gauge
  simulated: ["Simulated gauge", "Simuliertes Messgerät"],
  simulatedGone: [
    "The simulated gauge's plug is out. What was measured is kept; plug it in again, and the series goes on.",
    "Der Stecker des simulierten Messgeräts ist gezogen. Gemessenes bleibt; wieder einstecken, und die Reihe geht weiter.",
  ],
  clamp: ["Clamp", "Spannen"],
  release: ["Release", "Lösen"],
  dry: ["Dry gripper", "Trocken"],
  grease: ["Grease it", "Schmieren"],
  breakSpring: ["Break a spring", "Feder brechen"],
  newSprings: ["New springs", "Neue Federn"],
  spike: ["Spike", "Störspitze"],
  overloadAct: ["Overload", "Überlast"],
  knock: ["Knock it", "Anstoßen"],
  unplug: ["Pull the plug", "Stecker ziehen"],
  plug: ["Plug in", "Einstecken"],
  moreFaults: ["Faults", "Störungen"],

  // Scanning and keys
  scanned: [(name: string) => `Scanned: ${name}`, (name: string) => `Gescannt: ${name}`],
  scanUnknown: [
    (label: string) => `Nothing here is called “${label}”. Check the label, or add it.`,
    (label: string) => `Hier heißt nichts „${label}“. Etikett prüfen oder anlegen.`,
  ],
  wall: ["Whole screen", "Vollbild"],
});
