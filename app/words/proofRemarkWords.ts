import type { ProofRemark } from "../proof/data/ProofRemark.ts";
import { inBoth } from "./inBoth.ts";
import type { Speech } from "./Speech.ts";

/** Why a class or a figure is absent, and what a reader should know of the data; by the core's codes. */
export const remarkTexts = inBoth({
  needsPositions: [
    (about: string) => `The method needs rising series at three mounting positions; found: ${about}.`,
    (about: string) => `Das Verfahren braucht steigende Reihen in drei Einbaulagen; gefunden: ${about}.`,
  ],
  needsRepeat: [
    "The method needs two rising series at the same mounting position.",
    "Das Verfahren braucht zwei steigende Reihen in derselben Einbaulage.",
  ],
  needsZeroReturn: [
    "The method needs the zero before and after a series.",
    "Das Verfahren braucht die Null vor und nach einer Reihe.",
  ],
  needsReversibilityOrCreep: [
    "The method needs falling loads in two series, or the creep readings at 30 s and 300 s.",
    "Das Verfahren braucht fallende Lasten in zwei Reihen oder die Kriechwerte nach 30 s und 300 s.",
  ],
  needsReadings: [
    (about: string) => `The method needs more readings: ${about}.`,
    (about: string) => `Das Verfahren braucht mehr Messwerte: ${about}.`,
  ],
  needsForces: [
    (about: string) => `The method needs more different forces: ${about}.`,
    (about: string) => `Das Verfahren braucht mehr verschiedene Kräfte: ${about}.`,
  ],
  needsRuns: [
    "The method needs at least two runs: with one reading a step the repeatability is unknown.",
    "Das Verfahren braucht mindestens zwei Läufe: Mit einem Wert je Stufe ist die Wiederholbarkeit unbekannt.",
  ],
  needsSteps: [
    "No load was read in all the series the method compares.",
    "Keine Last wurde in allen Reihen gelesen, die das Verfahren vergleicht.",
  ],
  outsideClasses: [
    (about: string) => `The readings miss the limits of every class: ${about}.`,
    (about: string) => `Die Messwerte verfehlen die Grenzen jeder Klasse: ${about}.`,
  ],
  rangeTooShort: [
    (about: string) => `The loads do not reach down far enough: ${about}.`,
    (about: string) => `Die Lasten reichen nicht weit genug hinunter: ${about}.`,
  ],
  noClassInMethod: ["This method gives no class.", "Dieses Verfahren gibt keine Klasse."],
  fewSteps: [
    (about: string) => `Fewer steps than the method asks for: ${about}.`,
    (about: string) => `Weniger Stufen, als das Verfahren verlangt: ${about}.`,
  ],
  stepNotInAllSeries: [
    (about: string) => `Left out, since not every series has it: ${about}.`,
    (about: string) => `Ausgelassen, da nicht jede Reihe sie hat: ${about}.`,
  ],
  loadTwice: [
    (about: string) => `The same load stands twice in one series and was averaged: ${about}.`,
    (about: string) => `Dieselbe Last steht in einer Reihe doppelt und wurde gemittelt: ${about}.`,
  ],
  loadOutOfOrder: [
    (about: string) => `A rising series falls: ${about}.`,
    (about: string) => `Eine steigende Reihe fällt: ${about}.`,
  ],
  resolutionUnknown: [
    "The gauge's resolution was not given: its limits were not tested and its share is not in the uncertainty.",
    "Die Auflösung des Messgeräts wurde nicht genannt: Ihre Grenzen wurden nicht geprüft, ihr Anteil fehlt in der Unsicherheit.",
  ],
  referenceUncertaintyUnknown: [
    "The reference's uncertainty was not given: it is not in the uncertainty stated here.",
    "Die Unsicherheit der Referenz wurde nicht genannt: Sie fehlt in der hier genannten Unsicherheit.",
  ],
  runsUnknown: [
    "The readings name no runs: they are taken as independent of one another.",
    "Die Messwerte nennen keine Läufe: Sie gelten als voneinander unabhängig.",
  ],
  lackOfFit: [
    (about: string) => `The curve misses repeated loads by more than they scatter: ${about}.`,
    (about: string) => `Die Kurve verfehlt wiederholte Lasten um mehr, als sie streuen: ${about}.`,
  ],
  tableFromMemory: [
    (about: string) => `Limits from memory: check against your edition of the standard (${about}).`,
    (about: string) => `Grenzen aus dem Gedächtnis: mit Ihrer Ausgabe der Norm vergleichen (${about}).`,
  ],
  tableEntered: [
    (about: string) => `Limits as this laboratory has entered them by its edition: ${about}.`,
    (about: string) => `Grenzen, wie dieses Labor sie nach seiner Ausgabe eingetragen hat: ${about}.`,
  ],
  zeroMissing: [
    "No zero was read before the loads: the indications are taken as net.",
    "Vor den Lasten wurde keine Null gelesen: Die Anzeigen gelten als netto.",
  ],
  creepLarge: [
    (about: string) =>
      `Creep beyond that of the coarsest load cells (${about}): let the gauge rest, look at its mounting.`,
    (about: string) => `Kriechen über dem der gröbsten Wägezellen (${about}): Messgerät ruhen lassen, Einbau ansehen.`,
  ],
  zeroChangeLarge: [
    (about: string) =>
      `The zero changes by more than that of the coarsest load cells (${about}): warm up, preload, look at the mounting.`,
    (about: string) =>
      `Die Null ändert sich stärker als bei den gröbsten Wägezellen (${about}): warmlaufen, vorbelasten, Einbau ansehen.`,
  ],
});

/** The remark as a sentence in the reader's language; a code of a newer program is shown as it stands. */
export function proofRemarkWords(
  { code, about = "" }: { readonly code: string; readonly about?: string | undefined },
  speech: Speech,
): string {
  const words = remarkTexts[speech.language];
  if (!Object.hasOwn(words, code)) return about === "" ? code : `${code}: ${about}`;
  const said = words[code as ProofRemark["code"]]; // just found there
  return typeof said === "string" ? said : said(speech.language === "de" && !names.has(code) ? inGerman(about) : about);
}

/** What these speak of is a name somebody gave. */
const names: ReadonlySet<string> = new Set(["tableFromMemory", "tableEntered"]);

/** The few words the core puts between figures. */
const inGerman = (about: string) =>
  about
    .replace(/^none named$/, "keine genannt")
    .replace(/^at /, "bei ")
    .replace(/^class A would begin at/, "Klasse A begänne bei")
    .replace(
      /^the lowest load must be at most (.*) of the greatest$/,
      "die kleinste Last darf höchstens $1 der größten sein",
    )
    .replace(/^run (\S+), (\S+) after (\S+)$/, "Lauf $1, $2 nach $3")
    .replace(/^run /, "Lauf ")
    .replaceAll(" steps", " Stufen")
    .replaceAll(" of ", " von ")
    .replaceAll(" over ", " über ")
    .replace(/(\d)\.(\d)/g, "$1,$2");
