import { UsageError } from "./Command.ts";

/** @throws UsageError  a language that nothing is written in */
export function languageOf(text: string | undefined): "en" | "de" {
  if (text === undefined || text === "en") return "en";
  if (text === "de") return "de";
  throw new UsageError(`--language must be en or de, got ${text}`);
}
