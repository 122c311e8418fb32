import { z } from "zod";
import { type Generations, generations } from "../../app/contract/backupViews.ts";
import { usualGenerations } from "../store/copies/expired.ts";
import type { PcSettingsFile } from "../store/pcSettings.ts";
import type { BackupChoice } from "./DailyBackup.ts";

const kept = z.object({ folder: z.string().max(1_000).optional(), keep: generations.optional() });

/** Where the daily backup goes, among the settings of this PC; read once, since it is asked every minute. */
export class BackupChoiceFile {
  readonly #settings: PcSettingsFile;
  #choice: BackupChoice;

  constructor(settings: PcSettingsFile) {
    this.#settings = settings;
    const read = kept.safeParse(settings.read().backup);
    const found = read.success ? read.data : {};
    this.#choice = { folder: found.folder, keep: found.keep ?? usualGenerations };
  }

  get current(): BackupChoice {
    return this.#choice;
  }

  /** `keep` absent: as before. */
  save({ folder, keep = this.#choice.keep }: { folder: string | undefined; keep?: Generations | undefined }): void {
    this.#choice = { folder, keep };
    this.#settings.change({ backup: this.#choice });
  }
}
