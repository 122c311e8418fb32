import { inBoth } from "../../../words/inBoth.ts";

/** The statistics of a spindle's page, explained with its own figures where it has them. */
export const statisticsTexts = inBoth({
  title: ["The statistics, with your figures", "Die Statistik mit Ihren Zahlen"],
  with: [(name: string) => `The figures are those of ${name}.`, (name: string) => `Die Zahlen sind die von ${name}.`],
  without: [
    "Open a spindle and press F1 there: its own figures then stand in these sentences.",
    "Eine Spindel öffnen und dort F1 drücken: Dann stehen ihre eigenen Zahlen in diesen Sätzen.",
  ],
  toSpindle: [(name: string) => `Back to ${name}`, (name: string) => `Zurück zu ${name}`],
  slopeTitle: ["Slope: Theil-Sen", "Gefälle: Theil-Sen"],
  slope: [
    "A line through every pair of checks has a slope; the middle one of all these is taken. One odd check cannot pull it away, as it would pull a least-squares line.",
    "Durch je zwei Prüfungen geht eine Linie; von all ihren Steigungen zählt die mittlere. Eine einzelne schiefe Prüfung zieht sie nicht mit, wie sie es bei kleinsten Quadraten täte.",
  ],
  slopeHere: [
    (n: string, slope: string, low: string, high: string) =>
      `Here: ${n} checks since the history last began anew; ${slope} a year, and with 95 % confidence between ${low} and ${high}.`,
    (n: string, slope: string, low: string, high: string) =>
      `Hier: ${n} Prüfungen, seit der Verlauf zuletzt neu begann; ${slope} im Jahr, mit 95 % Vertrauen zwischen ${low} und ${high}.`,
  ],
  kendallTitle: ["Is it a trend at all? Mann-Kendall", "Ist es überhaupt ein Verlauf? Mann-Kendall"],
  kendall: [
    "Each check is compared with each later one: how many pairs fall, how many rise? p is the chance to see so lopsided a count on a spindle that does not change. It asks nothing of the shape of the scatter. Where neighbouring checks resemble each other, p is corrected for it.",
    "Jede Prüfung wird mit jeder späteren verglichen: Wie viele Paare fallen, wie viele steigen? p ist der Zufall, bei einer unveränderten Spindel so schief zu zählen. Über die Form der Streuung wird nichts vorausgesetzt. Ähneln sich Nachbarn, wird p dafür berichtigt.",
  ],
  kendallHere: [
    (s: string, p: string) => `Here: S = ${s} (falling pairs count as minus), p ${p}.`,
    (s: string, p: string) => `Hier: S = ${s} (fallende Paare zählen minus), p ${p}.`,
  ],
  forecastTitle: ["When is a limit reached? The interval", "Wann ist eine Grenze erreicht? Das Intervall"],
  forecast: [
    "A date alone would be a false promise. Everything that is unsure about the line (its slope, its height, the scatter, what all checks share) makes a band; where the band meets the limit first and last are the ends of the interval. It holds if the spindle goes on as before: a broken spring asks no forecast.",
    "Ein Datum allein wäre ein falsches Versprechen. Alles Unsichere an der Linie (Gefälle, Höhe, Streuung, was alle Prüfungen teilen) macht ein Band; wo es die Grenze zuerst und zuletzt trifft, sind die Enden des Intervalls. Es gilt, wenn die Spindel weitermacht wie bisher: Eine brechende Feder fragt keine Vorhersage.",
  ],
  forecastHere: [
    (limit: string, low: string, high: string) => `Here: ${limit} between ${low} and ${high}, with 90 % confidence.`,
    (limit: string, low: string, high: string) => `Hier: ${limit} zwischen ${low} und ${high}, mit 90 % Vertrauen.`,
  ],
  forecastOpen: [
    (limit: string, low: string) =>
      `Here: ${limit} not before ${low}, with 90 % confidence; a last date cannot be told.`,
    (limit: string, low: string) =>
      `Hier: ${limit} nicht vor ${low}, mit 90 % Vertrauen; ein spätestes Datum ist nicht zu sagen.`,
  ],
  "forecast.already": [
    (limit: string) => `Here: ${limit} is reached already.`,
    (limit: string) => `Hier: ${limit} ist schon erreicht.`,
  ],
  "forecast.notWithinTenYears": [
    (limit: string) => `Here: ${limit} not within ten years.`,
    (limit: string) => `Hier: ${limit} nicht in zehn Jahren.`,
  ],
  "forecast.cannotTell": [
    (limit: string) => `Here: when ${limit} is reached cannot be told from these checks.`,
    (limit: string) => `Hier: Wann ${limit} erreicht ist, lässt sich aus diesen Prüfungen nicht sagen.`,
  ],
  warning: ["the warning limit", "die Warngrenze"],
  minimum: ["the minimum", "die Mindestkraft"],
  guardTitle: ["Guard band", "Schutzband"],
  guard: [
    "A value just above the minimum may in truth lie below it. Under a rule with a guard band it counts as good only when it clears the limit by the guard band, a multiple of its uncertainty; between, the answer is: cannot tell.",
    "Ein Wert knapp über der Mindestkraft kann in Wahrheit darunter liegen. Unter einer Regel mit Schutzband gilt er erst als gut, wenn er die Grenze um das Schutzband übersteigt, ein Vielfaches seiner Unsicherheit; dazwischen lautet die Antwort: unklar.",
  ],
  guardHere: [
    (value: string, minimum: string) => `Here: the last check found ${value}; the minimum is ${minimum}.`,
    (value: string, minimum: string) => `Hier: Die letzte Prüfung fand ${value}; die Mindestkraft ist ${minimum}.`,
  ],
  chanceTitle: ["Probability", "Wahrscheinlichkeit"],
  chance: [
    "The list ranks the spindles by the chance that the next check finds them below their minimum: the line carried on to the day of the next round, with its band and the scatter. It is a chance under this model, no guarantee: below 5 % it is not shown, and it never stands in for a check.",
    "Die Liste reiht die Spindeln nach der Wahrscheinlichkeit, dass die nächste Prüfung sie unter ihrer Mindestkraft findet: die Linie bis zum nächsten Rundgang, mit Band und Streuung. Es ist eine Wahrscheinlichkeit unter diesem Modell, keine Gewähr: Unter 5 % wird sie nicht gezeigt, und sie ersetzt keine Prüfung.",
  ],
});
