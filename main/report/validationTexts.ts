import { inBoth } from "../../app/words/inBoth.ts";

/** Everything a validation's report says; what a case is called stays as its source has it. */
export const validationTexts = inBoth({
  title: [
    (version: string) => `Validation of Holdfast ${version}`,
    (version: string) => `Validierung von Holdfast ${version}`,
  ],
  subject: [
    "Published checks run on an installed program",
    "Veröffentlichte Prüfwerte an einem installierten Programm",
  ],
  under: [
    "The published checks run on this installation (ISO/IEC 17025:2017, 7.11.2)",
    "Die veröffentlichten Prüfwerte, auf dieser Installation gerechnet (ISO/IEC 17025:2017, 7.11.2)",
  ],
  foot: [
    (version: string, at: string, core: string) => `Holdfast ${version}, run ${at}\nmeasuring core SHA-256 ${core}`,
    (version: string, at: string, core: string) => `Holdfast ${version}, gelaufen ${at}\nMesskern SHA-256 ${core}`,
  ],
  notAtHand: ["not at hand", "nicht zur Hand"],
  passed: [(n: number) => `All ${n} cases passed`, (n: number) => `Alle ${n} Fälle bestanden`],
  failed: [
    (failed: number, n: number) => `${failed} of ${n} cases FAILED`,
    (failed: number, n: number) => `${failed} von ${n} Fällen NICHT BESTANDEN`,
  ],
  doNotUse: [
    "Do not use this installation for results that count until the cause is known.",
    "Diese Installation nicht für Ergebnisse nutzen, die zählen, bis die Ursache bekannt ist.",
  ],
  program: ["program", "Programm"],
  core: ["measuring core", "Messkern"],
  noSources: ["its sources are not beside the program", "seine Quellen liegen nicht beim Programm"],
  runtime: ["runs on", "läuft auf"],
  at: ["run at", "gelaufen"],
  shows: [
    "It shows that this installation computes what the sources print. It says nothing of the gauge, the adapter or the way of measuring, and is no accredited certificate.",
    "Er zeigt, dass diese Installation rechnet, was die Quellen drucken. Er sagt nichts über Messgerät, Adapter und Messweise und ist kein akkreditiertes Zertifikat. Die Fälle heißen, wie ihre Quelle sie nennt.",
  ],
  notRun: [
    (files: string) => `Without a case here, tested where the program is built: ${files}.`,
    (files: string) => `Ohne Fall hier, geprüft, wo das Programm gebaut wird: ${files}.`,
  ],
  what: ["what", "was"],
  expected: ["expected", "erwartet"],
  got: ["got", "erhalten"],
  within: ["within", "innerhalb"],
  pass: ["pass", "ja"],
  FAIL: ["FAIL", "NEIN"],
});
