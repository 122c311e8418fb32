import { inBoth } from "./inBoth.ts";

/** Words for the codes that records carry. */
export const checkReasonTexts = inBoth({
  routine: ["routine", "Routine"],
  baseline: ["baseline", "Ausgangswert"],
  beforeService: ["before service", "vor der Wartung"],
  afterService: ["after service", "nach der Wartung"],
  afterCrash: ["after a crash", "nach einem Crash"],
  complaint: ["complaint", "Beanstandung"],
  other: ["other", "anderer"],
});

export const flagTexts = inBoth({
  overload: ["overload", "Überlast"],
  unstable: ["slipped in the hold", "beim Halten gerutscht"],
  spike: ["spike left out", "Störspitze weggelassen"],
  notReleased: ["not fully released", "nicht ganz gelöst"],
  peakHold: ["held maximum only", "nur Haltewert der Spitze"],
  short: ["short hold", "kurz gehalten"],
  coarse: ["peak seen coarsely", "Spitze nur grob erfasst"],
  cut: ["link lost", "Verbindung verloren"],
});

export const serviceTexts = inBoth({
  lubricated: ["cleaned and lubricated", "gereinigt und geschmiert"],
  gripper: ["gripper renewed", "Spannzange erneuert"],
  springs: ["springs renewed", "Federn erneuert"],
  unitExchanged: ["clamping unit exchanged", "Spanneinheit getauscht"],
  setting: ["setting changed", "Einstellung geändert"],
  taperGround: ["taper ground", "Kegel geschliffen"],
  crash: ["crash", "Crash"],
  other: ["other work", "andere Arbeit"],
});

export const sourceTexts = inBoth({
  repeatability: ["repeatability", "Wiederholbarkeit"],
  holdNoise: ["noise in the hold", "Rauschen beim Halten"],
  resolution: ["resolution", "Auflösung"],
  zero: ["zero", "Nullpunkt"],
  gaugeProof: ["gauge's proof", "Prüfung des Messgeräts"],
  adapter: ["adapter", "Adapter"],
  temperature: ["temperature", "Temperatur"],
  drift: ["drift since the proof", "Drift seit der Prüfung"],
  misalignment: ["misalignment", "Schiefstellung"],
});

export const rejectTexts = inBoth({
  tooLong: ["too long: wrong baud rate?", "zu lang: falsche Baudrate?"],
  notAscii: ["not plain ASCII", "kein reines ASCII"],
  parity: ["parity wrong", "Parität falsch"],
  frame: ["cut short or garbled", "abgeschnitten oder gestört"],
  fields: ["other fields than expected", "andere Felder als erwartet"],
  number: ["no plain number", "keine schlichte Zahl"],
  unit: ["unknown unit", "unbekannte Einheit"],
  checksum: ["checksum wrong", "Prüfsumme falsch"],
  torque: ["torque, no force", "Drehmoment, keine Kraft"],
});

export const ruleTexts = inBoth({
  simple: ["simple: the value decides", "einfach: der Wert entscheidet"],
  guarded: ["guarded: U must lie on the good side", "mit Schutzband: U muss auf der guten Seite liegen"],
  iso14253: ["ISO 14253-1: proven or undecided", "ISO 14253-1: bewiesen oder offen"],
  ilacG8: ["ILAC-G8: four zones", "ILAC-G8: vier Zonen"],
  probability: ["probability of conformity", "Wahrscheinlichkeit der Konformität"],
});

/** What each rule does, in one plain sentence. */
export const ruleSentences = inBoth({
  simple: [
    "The value itself decides, however uncertain it is; where the interval straddles a limit, that is said beside it.",
    "Der Wert selbst entscheidet, wie unsicher er auch ist; reicht das Intervall über eine Grenze, wird es dazugesagt.",
  ],
  guarded: [
    "A value passes only when it lies inside the limit by at least r × U; everything else does not pass.",
    "Ein Wert besteht nur, wenn er um mindestens r × U innerhalb der Grenze liegt; alles andere besteht nicht.",
  ],
  iso14253: [
    "Good and not good must both be proven beyond the uncertainty; in between it cannot be told.",
    "Gut und nicht gut müssen beide über die Unsicherheit hinaus bewiesen sein; dazwischen ist es nicht zu sagen.",
  ],
  ilacG8: [
    "Four zones: pass and fail beyond the guard band, conditional pass and conditional fail within it, which cannot be told.",
    "Vier Zonen: bestanden und nicht bestanden jenseits des Schutzbands, bedingt innerhalb; dort ist es nicht zu sagen.",
  ],
  probability: [
    "The probability that the true force lies within the limits must reach the threshold, or that it does not; in between it cannot be told.",
    "Die Wahrscheinlichkeit, dass die wahre Kraft innerhalb der Grenzen liegt, muss die Schwelle erreichen, oder die, dass nicht; dazwischen ist es nicht zu sagen.",
  ],
});

export const roleTexts = inBoth({
  technician: ["technician", "Technik"],
  planner: ["planner", "Planung"],
  lab: ["calibration lab", "Kalibrierlabor"],
  keeper: ["keeper of the records", "Datenverantwortung"],
});
