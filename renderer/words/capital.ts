import type { Speech } from "./Speech.ts";

/** With a capital first letter, for a word that begins a sentence. */
export function capital(text: string, { locale }: Pick<Speech, "locale">): string {
  return text.slice(0, 1).toLocaleUpperCase(locale) + text.slice(1);
}
