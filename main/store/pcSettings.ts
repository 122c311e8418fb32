import { mkdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { writeAtomically } from "./writeAtomically.ts";

/** Settings of this PC (port, theme, language): beside the data file, never in it. */
export const pcSettingsFile = (dataFile: string): string => join(dirname(dataFile), "settings.json");

/**
 * The settings as plain JSON, for the caller's schema; an empty object when there are none or they cannot be read:
 * a lost theme must not keep anybody from measuring.
 */
export function readPcSettings(path: string): Readonly<Record<string, unknown>> {
  try {
    const found: unknown = JSON.parse(readFileSync(path, "utf8"));
    return typeof found === "object" && found !== null && !Array.isArray(found)
      ? (found as Record<string, unknown>) // what is in it, the caller's schema decides
      : {};
  } catch {
    return {};
  }
}

/** Replaces the whole file in one step, mode 0600. */
export function writePcSettings(path: string, settings: Readonly<Record<string, unknown>>): void {
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  writeAtomically(path, `${JSON.stringify(settings, null, 2)}\n`);
}
