import { inBoth } from "../../words/inBoth.ts";

/** What a service did, how a spindle compares with its like, and how its checks scatter inside. */
export const effectTexts = inBoth({
  beforeAfter: [
    (before: string, after: string) => `${before} before, ${after} after`,
    (before: string, after: string) => `${before} davor, ${after} danach`,
  ],
  rose: [(change: string) => `rose by ${change}`, (change: string) => `stieg um ${change}`],
  fell: [(change: string) => `fell by ${change}`, (change: string) => `fiel um ${change}`],
  unchanged: ["unchanged within its scatter", "unverändert innerhalb der Streuung"],
  cannotTell: ["whether it changed cannot be told", "ob sie sich änderte, ist nicht zu sagen"],
  interval: [
    (low: string, high: string) => ` (change ${low} to ${high}, 95 %)`,
    (low: string, high: string) => ` (Änderung ${low} bis ${high}, 95 %)`,
  ],
  scatter: [
    (ratio: string) => `; scatter within checks ${ratio} times what it was`,
    (ratio: string) => `; Streuung innerhalb der Prüfungen das ${ratio}-Fache`,
  ],
  otherTools: ["; measured with another gauge or adapter", "; mit anderem Messgerät oder Adapter gemessen"],
  afterNext: [
    "What it did is reported after the next check.",
    "Was sie bewirkte, wird nach der nächsten Prüfung berichtet.",
  ],
  notCompared: [
    "Not compared: it starts no new level, or no check stands on both sides of it.",
    "Nicht verglichen: Damit beginnt kein neues Niveau, oder es gibt nicht auf beiden Seiten eine Prüfung.",
  ],

  likeTitle: ["Beside its like", "Neben ihresgleichen"],
  likeLevel: [
    (n: number, kind: string, own: string, usual: string) =>
      `Of ${n} spindles with ${kind}, the usual level is ${usual} of nominal; this one is at ${own}.`,
    (n: number, kind: string, own: string, usual: string) =>
      `Bei ${n} Spindeln mit ${kind} sind ${usual} der Sollkraft üblich; diese liegt bei ${own}.`,
  ],
  likeSpeed: [
    (own: string, usual: string) => `It changes by ${own} a year, ${usual} is usual.`,
    (own: string, usual: string) => `Sie ändert sich um ${own} im Jahr, üblich sind ${usual}.`,
  ],
  likeOut: ["It stands out from its like.", "Sie fällt unter ihresgleichen auf."],
  likeIn: ["It does not stand out.", "Sie fällt nicht auf."],

  scatterTitle: ["Scatter within checks", "Streuung innerhalb der Prüfungen"],
  scatterRises: [
    (n: number, p: string, ratio: string) =>
      `It grows over ${n} checks (p ${p})${ratio}: a gripper running dry does that first.`,
    (n: number, p: string, ratio: string) =>
      `Sie wächst über ${n} Prüfungen (p ${p})${ratio}: Das tut zuerst eine Spannzange, die trocken läuft.`,
  ],
  scatterFalls: [
    (n: number, p: string, ratio: string) => `It falls over ${n} checks (p ${p})${ratio}.`,
    (n: number, p: string, ratio: string) => `Sie sinkt über ${n} Prüfungen (p ${p})${ratio}.`,
  ],
  scatterNone: [
    (n: number, p: string) => `No trend in ${n} checks (p ${p}).`,
    (n: number, p: string) => `Kein Verlauf in ${n} Prüfungen (p ${p}).`,
  ],
  scatterCannotTell: [
    (n: number) => `${n} checks since the last service or step cannot show a trend yet.`,
    (n: number) => `${n} Prüfungen seit der letzten Wartung oder dem letzten Sprung können noch keinen Verlauf zeigen.`,
  ],
  scatterRatio: [
    (ratio: string) => `, now ${ratio} times what it was`,
    (ratio: string) => `, jetzt das ${ratio}-Fache`,
  ],
  scatterAbove: [
    "The last check scatters more than those before allow.",
    "Die letzte Prüfung streut mehr, als die früheren zulassen.",
  ],
  scatterPlot: [
    (n: number, first: string, last: string) =>
      `Scatter from clamping to clamping as a share of the force, ${n} checks: ${first} at first, ${last} at last`,
    (n: number, first: string, last: string) =>
      `Streuung von Spannvorgang zu Spannvorgang als Anteil der Kraft, ${n} Prüfungen: zuerst ${first}, zuletzt ${last}`,
  ],
});
