import type { Check } from "../../../app/ledger/check.ts";
import type { EarlierCheck, FormFacts } from "../../bench/FormFacts.ts";
import { type Db, prepared } from "../../store/db.ts";
import { localDate } from "../../store/localDate.ts";
import { readCheck } from "../../store/records/checks.ts";

type Filed = { readonly checkId: string; readonly atMs: number; readonly offsetMinutes: number };
type Earlier = { readonly checkId: string; readonly check: Check | undefined };

/**
 * What an old check could be compared with on its day: the one before it, and the first one since the last service that
 * asked for a new baseline. Goes forward in time along one spindle's history, imported checks and those that stand here.
 */
export class Past {
  readonly #db: Db;
  readonly #filed: readonly Filed[];
  readonly #services: readonly string[];
  #nextFiled = 0;
  #nextService = 0;
  #baseline: Earlier | undefined;
  #previous: Earlier | undefined;

  /** @param spindleId  undefined: it has just been made */
  constructor(db: Db, spindleId: string | undefined) {
    this.#db = db;
    this.#filed = spindleId === undefined ? [] : prepared<Filed>(db, FILED).all(spindleId);
    this.#services = spindleId === undefined ? [] : prepared<string>(db, SERVICES).pluck().all(spindleId);
  }

  /** Goes on to a check's time. Not backwards. */
  before(atMs: number, date: string): Pick<FormFacts, "baseline" | "previous"> {
    for (; (this.#filed[this.#nextFiled]?.atMs ?? Infinity) <= atMs; this.#nextFiled += 1) {
      const { checkId, atMs: filedMs, offsetMinutes } = this.#filed[this.#nextFiled]!;
      this.#enter({ checkId, check: undefined }, localDate(filedMs, offsetMinutes));
    }
    this.#passServices(date);
    // The check that becomes the baseline is compared with nothing.
    if (this.#baseline === undefined) return { baseline: undefined, previous: undefined };
    return { baseline: this.#whole(this.#baseline), previous: this.#whole(this.#previous) };
  }

  /** The check stands from now on; one with a value. */
  enter(check: Check, date: string): void {
    this.#enter({ checkId: check.checkId, check }, date);
  }

  #enter(check: Earlier, date: string): void {
    this.#passServices(date);
    this.#baseline ??= check;
    this.#previous = check;
  }

  #passServices(date: string): void {
    for (; (this.#services[this.#nextService] ?? "9999") <= date; this.#nextService += 1) this.#baseline = undefined;
  }

  #whole(earlier: Earlier | undefined): EarlierCheck | undefined {
    const check = earlier?.check ?? (earlier && readCheck(this.#db, earlier.checkId)?.check);
    return check && { checkId: check.checkId, check };
  }
}

const FILED = `SELECT check_id AS checkId, measured_at_ms AS atMs, offset_minutes AS offsetMinutes FROM check_row
  WHERE spindle_id = ? AND state = 'valid' AND value_n IS NOT NULL ORDER BY measured_at_ms, n`;
const SERVICES = "SELECT at FROM service_event WHERE spindle_id = ? AND new_baseline = 1 ORDER BY at, n";
