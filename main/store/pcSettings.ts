import { mkdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { writeAtomically } from "./writeAtomically.ts";

type Settings = Readonly<Record<string, unknown>>;

/** Settings of this PC (port, theme, language): a JSON file beside the data file, never in it. Mode 0600. */
export class PcSettingsFile {
  readonly path: string;

  constructor(path: string) {
    this.path = path;
  }

  /** The file of the PC that uses this data file. */
  static beside(dataFile: string): PcSettingsFile {
    return new PcSettingsFile(join(dirname(dataFile), "settings.json"));
  }

  /**
   * Plain JSON, for the caller's schema; an empty object when there is none or it cannot be read: a lost theme must
   * not keep anybody from measuring.
   */
  read(): Settings {
    try {
      const found: unknown = JSON.parse(readFileSync(this.path, "utf8"));
      return typeof found === "object" && found !== null && !Array.isArray(found)
        ? (found as Settings) // what is in it, the caller's schema decides
        : {};
    } catch {
      return {};
    }
  }

  /** Replaces the members named, keeps the others; the file changes in one step. */
  change(part: Settings): void {
    mkdirSync(dirname(this.path), { recursive: true, mode: 0o700 });
    writeAtomically(this.path, `${JSON.stringify({ ...this.read(), ...part }, null, 2)}\n`);
  }
}
