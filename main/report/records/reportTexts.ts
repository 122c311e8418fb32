import { inBoth } from "../../../app/words/inBoth.ts";

/** Words that every report of the records has. */
export const reportTexts = inBoth({
  notAccredited: [
    "A record of one's own measurements, not an accredited certificate.",
    "Aufzeichnung eigener Messungen, kein akkreditiertes Zertifikat.",
  ],
  invented: ["Invented data of the demo.", "Erfundene Daten der Demo."],
  made: [(when: string) => `made ${when}`, (when: string) => `erstellt ${when}`],
  core: [(hash: string) => `measuring core SHA-256 ${hash}`, (hash: string) => `Messkern SHA-256 ${hash}`],
  noCore: ["measuring core not at hand", "Messkern nicht zur Hand"],
  page: [(n: number, of: number) => `page ${n} of ${of}`, (n: number, of: number) => `Seite ${n} von ${of}`],

  // Limits
  minimum: ["minimum", "Mindestkraft"],
  warning: ["warning", "Warngrenze"],
  nominal: ["nominal", "Sollkraft"],
  maximum: ["maximum", "Höchstkraft"],
  noLimits: ["none stated", "keine genannt"],
  fallen: [(share: string) => `fallen by ${share}`, (share: string) => `gefallen um ${share}`],
  risen: [(share: string) => `risen by ${share}`, (share: string) => `gestiegen um ${share}`],

  // Forecast
  already: ["reached already, or passed", "schon erreicht oder überschritten"],
  notWithinTenYears: ["not within ten years as things go", "nicht in zehn Jahren, wenn es so weitergeht"],
  cannotTell: ["cannot be told from these checks", "aus diesen Prüfungen nicht zu sagen"],
  reached: [
    (at: string, share: string, from: string, to: string) => `about ${at} (${share}:${from}${to})`,
    (at: string, share: string, from: string, to: string) => `etwa ${at} (${share}:${from}${to})`,
  ],
  fromDay: [(day: string) => ` from ${day}`, (day: string) => ` von ${day}`],
  toDay: [(day: string) => ` to ${day}`, (day: string) => ` bis ${day}`],
  noEnd: [", with no end to be named", ", ein Ende ist nicht zu nennen"],

  // Corrections
  byWhom: [(who: string) => `, by ${who}`, (who: string) => `, von ${who}`],
  operator: [(end: string) => `operator …${end}`, (end: string) => `Person …${end}`],
  isReplacement: [
    (check: string, why: string, who: string) =>
      `It was filed as a correction, in the place of check ${check}: ${why}${who}.`,
    (check: string, why: string, who: string) =>
      `Sie wurde als Berichtigung abgelegt, an der Stelle der Prüfung ${check}: ${why}${who}.`,
  ],
  madeVoid: ["made void", "für ungültig erklärt"],
  replacedBy: [(check: string) => `replaced by check ${check}`, (check: string) => `durch Prüfung ${check} ersetzt`],
  doesNotCount: [
    (when: string, what: string, why: string, entry: string) =>
      `This check does not count any more. On ${when} it was ${what}: ${why} (${entry}).`,
    (when: string, what: string, why: string, entry: string) =>
      `Diese Prüfung zählt nicht mehr. Am ${when} wurde sie ${what}: ${why} (${entry}).`,
  ],
  entryOf: [
    (seq: number, origin: string) => `entry ${seq} of chain ${origin}`,
    (seq: number, origin: string) => `Eintrag ${seq} der Kette ${origin}`,
  ],
  remeasure: [
    (why: string) => `It is marked to be measured again: ${why}.`,
    (why: string) => `Sie ist zum Nachmessen vorgemerkt: ${why}.`,
  ],

  // How to prove it
  proveTitle: ["How to prove this report", "Wie dieser Bericht zu beweisen ist"],
  proveWhy: [
    "Each entry of the records carries the hash of the one before. A data file or archive that holds these heads, with nothing damaged by holdfast verify, holds the records this report was made from. The chain finds accidents and naive edits; whoever holds both the file and its key can write both anew.",
    "Jeder Eintrag der Aufzeichnungen trägt den Hash des Eintrags davor. Eine Datendatei oder ein Archiv mit diesen Enden, in denen holdfast verify nichts Beschädigtes findet, enthält die Aufzeichnungen, aus denen dieser Bericht entstand. Die Kette findet Unfälle und einfache Änderungen; wer Datei und Schlüssel hat, kann beides neu schreiben.",
  ],
  chain: ["chain (origin)", "Kette (Ursprung)"],
  entries: ["entries", "Einträge"],
  head: ["head (SHA-256) and signature", "Ende (SHA-256) und Unterschrift"],
  notSigned: ["not signed", "nicht unterschrieben"],
  signed: [
    (at: string, key: string) => `signed ${at} by key ${key}`,
    (at: string, key: string) => `unterschrieben ${at} mit Schlüssel ${key}`,
  ],
  codeAlt: [
    (text: string) => `Code with the same in plain text: ${text}`,
    (text: string) => `Code mit demselben als Klartext: ${text}`,
  ],
  its: ["its entry", "ihr Eintrag"],
  itsHash: ["its hash", "ihr Hash"],
});
