import type { Swapped } from "../../app/contract/backupViews.ts";
import type { Output, Parsed } from "../../app/contract/methods.ts";
import type { ProgramView } from "../../app/contract/programViews.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Bench } from "../bench/Bench.ts";
import type { Series } from "../bench/Series.ts";
import type { SettingSearch } from "../bench/SettingSearch.ts";
import type { Undo } from "../bench/Undo.ts";
import type { FleetInFile } from "../fleet/FleetInFile.ts";
import type { PushHub } from "../host/PushHub.ts";
import type { BackupChoiceFile } from "../jobs/BackupChoiceFile.ts";
import type { DailyBackup } from "../jobs/DailyBackup.ts";
import type { Jobs } from "../jobs/Jobs.ts";
import type { PortListing } from "../link/ports.ts";
import type { Log } from "../log.ts";
import type { People } from "../people/People.ts";
import type { RoundLead } from "../rounds/RoundLead.ts";
import type { PcSettingsFile } from "../store/pcSettings.ts";
import type { Store } from "../store/Store.ts";

/** What the handlers stand on: built once by `services.ts`, one for each open data file. */
export type Context = {
  readonly store: Store;
  readonly hub: PushHub;
  readonly bench: Bench;
  readonly series: Series;
  readonly undo: Undo;
  readonly lead: RoundLead;
  readonly accept: (input: Parsed<"series.accept">) => Promise<Output<"series.accept">>;
  readonly people: People;
  readonly jobs: Jobs;
  readonly fleet: FleetInFile;
  readonly backup: DailyBackup;
  readonly backupChoice: BackupChoiceFile;
  readonly search: SettingSearch;
  readonly settings: PcSettingsFile;
  readonly log: Log;
  readonly now: () => number;
  readonly version: string;
  readonly host: "electron" | "loopback";
  /** The works as described, or the plain defaults of a new file. */
  readonly works: () => Works;
  readonly ports: () => Promise<PortListing>;
  /** Closes this data file and opens the demo's, or the user's own again. */
  readonly openOther: (demo: boolean) => Promise<ProgramView>;
  readonly keptFile: string | undefined;
  /** Puts a restored file in the place of this one and opens it. */
  readonly swap: (restored: string, operatorId: string | undefined) => Promise<Swapped>;
};
