import type { Remark } from "../ledger/check.ts";
import type { ForceUnit } from "../quantity/forceUnits.ts";
import type { Language } from "./Language.ts";
import { sourceTexts } from "./recordTexts.ts";
import type { Speech } from "./Speech.ts";

type Said = Record<Language, (about: string) => string>;

/**
 * What weakens a verdict or is warned of before a series, as words without capital and full stop. A code that has
 * none here, as a newer program may write, is shown as it stands with what it is about.
 */
export function remarkWords(remark: Pick<Remark, "code" | "about">, speech: Speech, unit: ForceUnit): string {
  const about = aboutText(remark, speech, unit);
  const said = Object.hasOwn(words, remark.code) ? words[remark.code] : undefined;
  if (said === undefined) return about === "" ? remark.code : `${remark.code}: ${about}`;
  return said[speech.language](about === "" ? "" : ` (${about})`);
}

const forces: readonly string[] = ["overCapacity", "lowInRange"];

/** What it is about, in the reader's form: a force in newtons, a plain date, else a name as it stands. */
function aboutText({ code, about = "" }: Pick<Remark, "code" | "about">, speech: Speech, unit: ForceUnit): string {
  if (forces.includes(code) && Number.isFinite(Number(about)) && about !== "") return speech.force(Number(about), unit);
  if (code === "assumedShare" && Object.hasOwn(sourceTexts.en, about))
    return sourceTexts[speech.language][about as keyof typeof sourceTexts.en];
  if (/^\d{4}-\d\d-\d\d$/.test(about)) return speech.plainDate(about);
  return about;
}

const words: Readonly<Record<string, Said>> = {
  gaugeChanged: { en: () => "another gauge than last time", de: () => "ein anderes Messgerät als zuletzt" },
  adapterChanged: { en: () => "another adapter than last time", de: () => "ein anderer Adapter als zuletzt" },
  operatorChanged: { en: () => "another operator than last time", de: () => "ein anderer Prüfer als zuletzt" },
  gaugeUnproved: {
    en: (about) => `the gauge${about} has never been proved`,
    de: (about) => `das Messgerät${about} wurde nie geprüft`,
  },
  gaugeFoundOff: {
    en: (about) => `the gauge${about} was found off at its last proof`,
    de: (about) => `das Messgerät${about} zeigte bei der letzten Prüfung falsch an`,
  },
  proofPastDue: {
    en: (about) => `the gauge's proof is past due${about}`,
    de: (about) => `die Prüfung des Messgeräts ist überfällig${about}`,
  },
  adapterUncalibrated: {
    en: (about) => `the adapter${about} has not been calibrated`,
    de: (about) => `der Adapter${about} ist nicht kalibriert`,
  },
  adapterPastDue: {
    en: (about) => `the adapter's calibration is past due${about}`,
    de: (about) => `die Kalibrierung des Adapters ist überfällig${about}`,
  },
  outsideProof: {
    en: (about) => `the force lies outside what the gauge${about} was proved for`,
    de: (about) => `die Kraft liegt außerhalb dessen, wofür das Messgerät${about} geprüft ist`,
  },
  assumedShare: {
    en: (about) => `most of the uncertainty is a default nobody has confirmed${about}`,
    de: (about) => `das meiste der Unsicherheit ist eine Annahme, die niemand bestätigt hat${about}`,
  },
  typedValue: { en: () => "typed in, not measured here", de: () => "eingetippt, nicht hier gemessen" },
  dockedValue: {
    en: () => "read out of a gauge's memory, no stream behind it",
    de: () => "aus dem Speicher eines Messgeräts gelesen, ohne Messverlauf",
  },
  peakOnly: { en: () => "a held peak, no settled force", de: () => "nur eine gehaltene Spitze, keine Haltekraft" },
  oneClamping: { en: () => "one clamping only", de: () => "nur ein Spannvorgang" },
  largeScatter: {
    en: () => "wide scatter between the clampings",
    de: () => "große Streuung zwischen den Spannvorgängen",
  },
  outliers: { en: (about) => `unlike the others${about}`, de: (about) => `anders als die übrigen${about}` },
  unstable: { en: () => "it slipped in the hold", de: () => "beim Halten gerutscht" },
  overload: { en: () => "the gauge went into overload", de: () => "das Messgerät ging in Überlast" },
  cut: { en: () => "the link was lost in a clamping", de: () => "die Verbindung riss in einem Spannvorgang ab" },
  notReleased: { en: () => "not fully released in between", de: () => "dazwischen nicht ganz gelöst" },
  short: { en: () => "a short hold", de: () => "kurz gehalten" },
  noZeroAfter: { en: () => "no zero was seen at the end", de: () => "am Ende kein Nullpunkt gesehen" },
  taperMismatch: {
    en: (about) => `the adapter's taper does not fit this spindle${about}`,
    de: (about) => `der Kegel des Adapters passt nicht zu dieser Spindel${about}`,
  },
  taperUnsure: {
    en: (about) => `whether the adapter's taper fits this spindle cannot be told${about}`,
    de: (about) => `ob der Kegel des Adapters zu dieser Spindel passt, ist nicht zu sagen${about}`,
  },
  overCapacity: {
    en: (about) => `this spindle's force goes beyond the gauge's capacity${about}`,
    de: (about) => `die Kraft dieser Spindel übersteigt die Nennlast des Messgeräts${about}`,
  },
  lowInRange: {
    en: (about) => `the expected force is under a tenth of the gauge's capacity${about}`,
    de: (about) => `die erwartete Kraft liegt unter einem Zehntel der Nennlast${about}`,
  },
  coarseResolution: {
    en: (about) => `the gauge's steps are coarse for these limits; between nominal and minimum there are only${about}`,
    de: (about) =>
      `die Stufen des Messgeräts sind grob für diese Grenzen; zwischen Soll- und Mindestkraft liegen nur${about}`,
  },
};
