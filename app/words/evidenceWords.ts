import type { Evidence, Hint } from "../trend/hints.ts";
import type { TrendNote } from "../trend/trendNotes.ts";
import { inBoth } from "./inBoth.ts";
import type { Language } from "./Language.ts";
import type { Speech } from "./Speech.ts";

/** What a hint points at. */
export const hintTexts = inBoth({
  tiringSprings: ["Tiring springs", "Ermüdende Federn"],
  brokenSpring: ["A broken spring", "Eine gebrochene Feder"],
  dryGripper: ["A dry or dirty gripper", "Eine trockene oder schmutzige Spannzange"],
  wornGripper: ["A worn gripper or wedge", "Verschleiß an Spannzange oder Keil"],
  wrongSetting: ["A setting that is off", "Eine falsche Einstellung"],
  taperChip: ["A chip on the taper at one check", "Ein Span am Kegel bei einer Prüfung"],
  backPressure: ["Pressure left in the release line", "Restdruck in der Löseleitung"],
  gaugeOff: ["The gauge or adapter, not the spindle", "Messgerät oder Adapter, nicht die Spindel"],
  strong: ["fits well", "passt gut"],
  some: ["fits in part", "passt zum Teil"],
  weak: ["cannot be ruled out", "nicht auszuschließen"],
  for: ["For it:", "Dafür:"],
  against: ["Against it:", "Dagegen:"],
  caution: [
    "Hints come from figures alone and prove nothing. Springs in a clamping unit store energy: opening one is work for trained people, by the builder's manual and local rules.",
    "Hinweise kommen allein aus Zahlen und beweisen nichts. Federn einer Spanneinheit speichern Energie: Sie zu öffnen ist Arbeit für Geschulte, nach dem Handbuch des Herstellers und den örtlichen Regeln.",
  ],
});

type Facts = {
  readonly share: string;
  readonly day: string;
  readonly n: number;
  readonly ratio: string;
  readonly odds: string;
};
type Said = Record<Language, (facts: Facts) => string>;

/** One piece of evidence, without capital and full stop. */
export function evidenceWords(evidence: Evidence, speech: Speech): string {
  const { share, atMs, n, ratio, p } = evidence;
  const under = p !== undefined && p < 0.001;
  return said[evidence.code][speech.language]({
    share: speech.percent(Math.abs(share ?? 0), 1),
    day: speech.date(atMs ?? 0),
    n: n ?? 0,
    ratio: speech.number(ratio ?? 1, 1),
    odds: p === undefined ? "" : ` (p ${under ? "<" : "="} ${speech.number(under ? 0.001 : p, 3)})`,
  });
}

/** What speaks for a hint, and against it, as one line each. */
export function hintEvidence(hint: Hint, speech: Speech): { readonly pro: string; readonly con: string | undefined } {
  const line = (list: readonly Evidence[]) => list.map((one) => evidenceWords(one, speech)).join("; ");
  return { pro: line(hint.for), con: hint.against.length === 0 ? undefined : line(hint.against) };
}

const said: Record<Evidence["code"], Said> = {
  steadyFall: {
    en: ({ share, odds }) => `the force falls by ${share} a year${odds}`,
    de: ({ share, odds }) => `die Kraft fällt um ${share} im Jahr${odds}`,
  },
  noStep: { en: () => "no step was found", de: () => "kein Sprung gefunden" },
  stepBeside: {
    en: ({ day }) => `there was also a step about ${day}`,
    de: ({ day }) => `um den ${day} gab es auch einen Sprung`,
  },
  scatterSteady: {
    en: () => "the scatter between clampings stays",
    de: () => "die Streuung zwischen den Spannvorgängen bleibt",
  },
  scatterGrows: {
    en: ({ ratio, odds }) => `the scatter between clampings grows, ${ratio} times by now${odds}`,
    de: ({ ratio, odds }) => `die Streuung zwischen den Spannvorgängen wächst, jetzt das ${ratio}-Fache${odds}`,
  },
  scatterAboveLimit: {
    en: () => "the last check scatters more than those before allow",
    de: () => "die letzte Prüfung streut mehr, als die früheren zulassen",
  },
  creepGrows: {
    en: ({ ratio }) => `the force creeps in the hold, ${ratio} times as much as at first`,
    de: ({ ratio }) => `die Kraft kriecht beim Halten, das ${ratio}-Fache vom Anfang`,
  },
  creepSteady: {
    en: () => "the creep in the hold has not grown",
    de: () => "das Kriechen beim Halten ist nicht gewachsen",
  },
  levelLower: { en: () => "the force is lower than it was", de: () => "die Kraft ist niedriger, als sie war" },
  fewChecks: { en: ({ n }) => `only ${n} checks so far`, de: ({ n }) => `bisher nur ${n} Prüfungen` },
  stepDown: {
    en: ({ share, day }) => `the force stepped down by ${share} about ${day}, with no service then`,
    de: ({ share, day }) => `die Kraft sprang um den ${day} um ${share} nach unten, ohne Wartung dabei`,
  },
  sizeFitsSprings: {
    en: () => "one or a few discs of a long stack cost about as much",
    de: () => "eine oder wenige Federn eines langen Pakets kosten etwa so viel",
  },
  secondStep: { en: ({ n }) => `it stepped down ${n} times`, de: ({ n }) => `sie sprang ${n}-mal nach unten` },
  slopeExplains: {
    en: () => "a slope explains the values nearly as well",
    de: () => "ein Gefälle erklärt die Werte fast ebenso gut",
  },
  fellFromBaseline: {
    en: () => "the last checks lie clearly under the first ones",
    de: () => "die letzten Prüfungen liegen klar unter den ersten",
  },
  cameBack: {
    en: ({ day }) => `the force came back about ${day}`,
    de: ({ day }) => `die Kraft kam um den ${day} zurück`,
  },
  roseAfterCleaning: {
    en: ({ share, day }) => `it rose by ${share} after cleaning or lubricating on ${day}`,
    de: ({ share, day }) => `sie stieg nach Reinigen oder Schmieren am ${day} um ${share}`,
  },
  cleaningDidNotHelp: {
    en: ({ day }) => `cleaning or lubricating on ${day} did not raise it`,
    de: ({ day }) => `Reinigen oder Schmieren am ${day} hob sie nicht`,
  },
  fellAtService: {
    en: ({ share, day }) => `it fell by ${share} at the service of ${day}`,
    de: ({ share, day }) => `sie fiel bei der Wartung am ${day} um ${share}`,
  },
  roseAtSetting: {
    en: ({ share, day }) => `it rose by ${share} when the setting was worked on (${day})`,
    de: ({ share, day }) => `sie stieg um ${share}, als an der Einstellung gearbeitet wurde (${day})`,
  },
  aboveNominal: {
    en: ({ share }) => `it now lies ${share} above nominal`,
    de: ({ share }) => `sie liegt jetzt ${share} über der Sollkraft`,
  },
  riseIsItsPurpose: {
    en: () => "a rise is what that service is for",
    de: () => "ein Anstieg ist der Zweck dieser Wartung",
  },
  oneOffThenBack: {
    en: ({ share, day }) => `the check of ${day} was off by ${share}, the next one was back`,
    de: ({ share, day }) => `die Prüfung vom ${day} wich um ${share} ab, die nächste war zurück`,
  },
  doesNotReturn: {
    en: ({ n }) => `force was left after the release in ${n} of the last checks`,
    de: ({ n }) => `bei ${n} der letzten Prüfungen blieb nach dem Lösen Kraft stehen`,
  },
  onlyOnce: { en: () => "it happened once only", de: () => "es kam nur einmal vor" },
  gaugeChangedThen: { en: () => "the gauge was changed just then", de: () => "genau da wechselte das Messgerät" },
  adapterChangedThen: { en: () => "the adapter was changed just then", de: () => "genau da wechselte der Adapter" },
  movedWithOthers: {
    en: ({ n, share, day }) =>
      `${n} spindles measured with the same gauge or adapter moved together by ${share} since ${day}`,
    de: ({ n, share, day }) =>
      `${n} Spindeln mit demselben Messgerät oder Adapter bewegten sich seit dem ${day} gemeinsam um ${share}`,
  },
  othersSteady: {
    en: () => "the other spindles measured with it did not move",
    de: () => "die anderen damit gemessenen Spindeln blieben",
  },
};

/** What a reader of a trend has to know beside its numbers. */
export function noteWords(note: TrendNote, speech: Speech): string {
  const en = speech.language === "en";
  switch (note.code) {
    case "noChecks":
      return en ? "No check has been filed yet." : "Noch keine Prüfung abgelegt.";
    case "onlyOneDate":
      return en
        ? "All checks are of one date: nothing can be said of a trend."
        : "Alle Prüfungen sind vom selben Tag: Über einen Verlauf lässt sich nichts sagen.";
    case "allEqual":
      return en
        ? "All values are equal: nothing moves, as far as the gauge's digits show."
        : "Alle Werte sind gleich: Soweit die Stellen des Messgeräts reichen, bewegt sich nichts.";
    case "cannotReject":
      return en
        ? "So few checks can never prove a trend, whatever their values."
        : "So wenige Prüfungen können nie einen Verlauf beweisen, gleich welche Werte sie haben.";
    case "tooFew":
      return en
        ? `${note.n} since the last service or step; a forecast needs ${note.needed} checks.`
        : `${note.n} seit der letzten Wartung oder dem letzten Sprung; eine Vorhersage braucht ${note.needed} Prüfungen.`;
    case "longGap": {
      const [from, to] = [speech.date(note.fromMs), speech.date(note.toMs)];
      return en
        ? `No check from ${from} to ${to}: what the force did meanwhile is not known.`
        : `Keine Prüfung vom ${from} bis ${to}: Was die Kraft inzwischen tat, ist nicht bekannt.`;
    }
    case "limitsChanged": {
      const day = speech.date(note.atMs);
      return en
        ? `The limits changed with the check of ${day}; the forecast uses today's.`
        : `Die Grenzen änderten sich mit der Prüfung vom ${day}; die Vorhersage nutzt die heutigen.`;
    }
    case "memoryFound":
      return en
        ? `Neighbouring checks resemble one another; ${note.told ? "test, band and forecast allow for it." : "under twenty checks a trend cannot be told from that."}`
        : `Benachbarte Prüfungen ähneln einander; ${note.told ? "Test, Band und Vorhersage berücksichtigen es." : "unter zwanzig Prüfungen lässt sich ein Verlauf davon nicht unterscheiden."}`;
    case "farAhead": {
      const spans = speech.number(note.spans, 1);
      const which = note.which === "warning" ? (en ? "warning limit" : "Warngrenze") : en ? "minimum" : "Mindestkraft";
      return en
        ? `The ${which} lies ${spans} times the observed span ahead: the line may not hold that long.`
        : `Die ${which} liegt das ${spans}-Fache der beobachteten Zeit voraus: So lange muss die Linie nicht halten.`;
    }
    case "withoutCounter":
      return en
        ? `${note.n} without a counter reading cannot be shown on this axis.`
        : `${note.n} ohne Zählerstand lassen sich auf dieser Achse nicht zeigen.`;
    case "stray":
      return en
        ? "One check stands off alone, the next one is back; it is left out of band and steps."
        : "Eine Prüfung steht allein daneben, die nächste ist zurück; sie bleibt bei Band und Sprüngen außen vor.";
    case "stepOrSlope": {
      const day = speech.date(note.atMs);
      return en
        ? `A step about ${day} explains the values, but a slope does nearly as well.`
        : `Ein Sprung um den ${day} erklärt die Werte, ein Gefälle aber fast ebenso gut.`;
    }
  }
}
