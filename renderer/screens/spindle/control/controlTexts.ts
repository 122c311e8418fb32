import { inBoth } from "../../../words/inBoth.ts";

/** What the control charts say. */
export const controlTexts = inBoth({
  title: ["Control charts", "Regelkarten"],
  tooFew: [
    (n: number) =>
      `The first eight checks since the last service set the level; charts begin with the ninth. So far there are ${n}.`,
    (n: number) =>
      `Die ersten acht Prüfungen seit der letzten Wartung legen das Niveau fest; Karten beginnen mit der neunten. Bisher sind es ${n}.`,
  ],
  noScatter: [
    "The first eight checks are all equal: there is no scatter to draw limits from.",
    "Die ersten acht Prüfungen sind alle gleich: Es gibt keine Streuung für Grenzen.",
  ],
  chart: ["Chart", "Karte"],
  calm: ["Sum, few false alarms", "Summe, selten Fehlalarm"],
  cusum: ["Sum (CUSUM)", "Summe (CUSUM)"],
  ewma: ["Average (EWMA)", "Mittel (EWMA)"],
  individuals: ["Single values and ranges", "Einzelwerte und Spannen"],
  quiet: ["No signal on this chart.", "Kein Signal auf dieser Karte."],
  signal: [
    (day: string, value: string, why: string) => `Signal at the check of ${day} (${value}): ${why}.`,
    (day: string, value: string, why: string) => `Signal bei der Prüfung vom ${day} (${value}): ${why}.`,
  ],
  more: [
    (n: number) => (n === 1 ? "One later check signals too." : `${n} later checks signal too.`),
    (n: number) => (n === 1 ? "Eine spätere Prüfung auch." : `${n} spätere Prüfungen auch.`),
  ],
  askFirst: [
    "A signal says that the level has changed, not why: look at gauge and adapter, and measure again.",
    "Ein Signal sagt, dass das Niveau anders ist, nicht warum: Messgerät und Adapter ansehen und noch einmal messen.",
  ],
  runLength: [
    (n: string) =>
      `With limits known for sure, an unchanged spindle gives a false alarm once in ${n} checks on average (average run length).`,
    (n: string) =>
      `Mit sicher bekannten Grenzen gibt eine unveränderte Spindel im Mittel einmal in ${n} Prüfungen einen Fehlalarm (mittlere Lauflänge).`,
  ],
  runLengthUnknown: [
    "How often this choice of rules gives false alarms is not worked out; each rule added gives more of them.",
    "Wie oft diese Regeln Fehlalarm geben, ist nicht berechnet; jede weitere Regel gibt mehr davon.",
  ],
  noRule: ["No rule is chosen: this chart cannot signal.", "Keine Regel gewählt: Diese Karte kann kein Signal geben."],
  withEight: [
    (share: string) =>
      `Here the limits come from eight checks only: simulated like that, ${share} of unchanged spindles give one within the next forty checks.`,
    (share: string) =>
      `Hier stammen die Grenzen aus nur acht Prüfungen: So simuliert, geben ${share} der unveränderten Spindeln in den nächsten vierzig Prüfungen einen.`,
  ],
  overMillion: ["more than a million", "mehr als einer Million"],
  rules: ["Rules that signal", "Regeln, die ein Signal geben"],
  preset: ["Set of rules", "Satz von Regeln"],
  presetOne: ["beyond three sigma only", "nur jenseits von drei Sigma"],
  presetZone: ["the four zone rules", "die vier Zonenregeln"],
  presetAll: ["all eight of the list", "alle acht der Liste"],
  presetOwn: ["own choice", "eigene Wahl"],
  beyondThree: ["one value beyond three sigma", "ein Wert jenseits von drei Sigma"],
  nineOneSide: ["nine in a row on one side", "neun in Folge auf einer Seite"],
  eightOneSide: ["eight in a row on one side", "acht in Folge auf einer Seite"],
  sixRising: ["six in a row steadily rising or falling", "sechs in Folge stetig steigend oder fallend"],
  fourteenAlternating: ["fourteen in a row up and down in turn", "vierzehn in Folge abwechselnd auf und ab"],
  twoOfThreeBeyondTwo: [
    "two of three beyond two sigma, same side",
    "zwei von drei jenseits von zwei Sigma, selbe Seite",
  ],
  fourOfFiveBeyondOne: [
    "four of five beyond one sigma, same side",
    "vier von fünf jenseits von einem Sigma, selbe Seite",
  ],
  fifteenWithinOne: ["fifteen in a row within one sigma", "fünfzehn in Folge innerhalb von einem Sigma"],
  eightBeyondOne: ["eight in a row beyond one sigma", "acht in Folge jenseits von einem Sigma"],
  rangeAbove: ["a jump between two checks above its limit", "ein Sprung zwischen zwei Prüfungen über der Grenze"],
  averageOff: ["the weighted average is beyond its limit", "das gewichtete Mittel liegt jenseits der Grenze"],
  sumOff: [
    "what adds up off the level is beyond its limit",
    "was sich neben dem Niveau aufsummiert, liegt jenseits der Grenze",
  ],
  high: ["on the high side", "nach oben"],
  low: ["on the low side", "nach unten"],
  center: ["level", "Niveau"],
  limit: ["limit", "Grenze"],
  upper: ["upper", "obere"],
  lower: ["lower", "untere"],
  sumLow: ["Sum downwards", "Summe nach unten"],
  sumHigh: ["Sum upwards", "Summe nach oben"],
  plotForce: [(unit: string) => `Force, ${unit}`, (unit: string) => `Kraft, ${unit}`],
  plotRange: [
    (unit: string) => `Distance to the check before, ${unit}`,
    (unit: string) => `Abstand zur Prüfung davor, ${unit}`,
  ],
  plotAverage: [(unit: string) => `Weighted average, ${unit}`, (unit: string) => `Gewichtetes Mittel, ${unit}`],
  plotAbout: [
    (what: string, n: number, signals: number) =>
      `${what}: ${n} checks, ${signals} of them signal; the table below holds the figures`,
    (what: string, n: number, signals: number) =>
      `${what}: ${n} Prüfungen, davon ${signals} mit Signal; die Tabelle darunter enthält die Zahlen`,
  ],
  how: [
    "Arrow keys or the pointer tell a check's figures; Enter opens it.",
    "Pfeiltasten oder Zeiger nennen die Zahlen einer Prüfung; die Eingabetaste öffnet sie.",
  ],
  signals: [(why: string) => `signals: ${why}`, (why: string) => `Signal: ${why}`],
  plotNote: [
    "On darker ground: the eight checks that set the level. Ringed: checks that signal.",
    "Auf dunklerem Grund: die acht Prüfungen, die das Niveau festlegen. Mit Ring: Prüfungen mit Signal.",
  ],
  figures: ["The figures", "Die Zahlen"],
  colCheck: ["check", "Prüfung"],
  colSignal: ["signal", "Signal"],
});
