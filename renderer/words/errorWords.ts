import type { ErrorCode, Failure } from "../../app/contract/result.ts";
import { plainErrors } from "./errors/plainErrors.ts";
import { proofErrors } from "./errors/proofErrors.ts";
import { roundErrors } from "./errors/roundErrors.ts";
import type { Speech } from "./Speech.ts";

/**
 * A failure in the reader's language. The core's own words are English; in German its key has words of their own, and a
 * failure without a key those of its code.
 */
export function errorWords({ code, key, figures = {}, message }: Failure, speech: Speech): string {
  if (speech.language === "en") return message;
  const words = key === undefined ? undefined : germanErrors[key];
  if (words === undefined) return germanCodes[code];
  return words.replace(/\{(\w+)\}/g, (_, name: string) =>
    figures[name] === undefined ? "…" : speech.number(figures[name]),
  );
}

/** By key; a test asks for each key that the core can answer. Names in braces stand for the failure's figures. */
export const germanErrors: Readonly<Record<string, string>> = { ...plainErrors, ...roundErrors, ...proofErrors };

/** What is left where a failure bears no key. */
export const germanCodes: Readonly<Record<ErrorCode, string>> = {
  badRequest: "Die Seite hat das Programm falsch gerufen. Nichts wurde geändert; bitte die Seite neu laden.",
  invalid: "Diese Eingabe kann so nicht stimmen. Nichts wurde abgelegt.",
  notFound: "Das gibt es in dieser Datei nicht.",
  conflict: "Jemand oder etwas anderes war schneller. Nichts wurde geändert; bitte ansehen, was jetzt gezeigt wird.",
  refused: "Das tut das Programm jetzt nicht. Nichts wurde geändert.",
  link: "Mit Anschluss, Kabel oder Messgerät stimmt etwas nicht.",
  diskFull: "Die Platte ist voll. Nichts davon wurde abgelegt.",
  readOnly: "Im Augenblick kann nichts geschrieben werden.",
  damaged: "Gelesene Daten sind beschädigt. Nichts wurde geändert.",
  internal: "Im Programm ist ein Fehler aufgetreten; er steht im Protokoll. Nichts davon wurde abgelegt.",
};
