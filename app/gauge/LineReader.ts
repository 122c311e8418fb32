import { type ForceUnit, forceUnits } from "../quantity/forceUnits.ts";
import { checksumOf } from "./checksums.ts";
import { compileFields, type Step } from "./compileFields.ts";
import type { LinePattern, PatternField, WordMeaning } from "./linePattern.ts";
import { NumberReader } from "./NumberReader.ts";
import type { ReadingState, RejectReason } from "./ReadingSink.ts";
import { CHECKSUM, FIELDS, FRAME, NUMBER, reasons } from "./refusals.ts";
import { StampReader } from "./StampReader.ts";
import { scaleOf } from "./scaleOf.ts";
import {
  BLANKS_STEP,
  BYTE_STEP,
  CHECKSUM_STEP,
  CLOCK_STEP,
  DIGITS_STEP,
  FORCE_STEP,
  STATUS_STEP,
  TEXT_STEP,
  TIME_STEP,
  UNIT_STEP,
} from "./stepKinds.ts";
import { findInstead, findWord, matches, readCheck, takeBlanks, takeDigits, takeIgnored } from "./takeField.ts";
import { UnitReader } from "./UnitReader.ts";

/** What a line turned out to be. */
export type LineOutcome = "reading" | "aside" | RejectReason;

/**
 * Reads one line by a pattern, field after field, without making a string or an object: its members hold what
 * was found. Nothing is searched for: a field either stands where the pattern says or the line is rejected.
 */
export class LineReader {
  /** The figure as written is `mantissa / 10 ** decimals` of `unit`. */
  mantissa = 0;
  decimals = 0;
  /** Digits behind the mark as they stood in the line. */
  places = 0;
  unit: ForceUnit;
  /** Newtons; 0 for an overload. */
  forceN = 0;
  /** One step of the last digit, newtons. */
  resolutionN = 0;
  /** Another number for every unit and count of decimals. */
  scale = -1e6;
  state: ReadingState = "live";
  /** The last status word of consequence in this line. */
  notice: WordMeaning = "other";

  readonly #steps: readonly Step[];
  readonly #number = new NumberReader();
  readonly #stamp = new StampReader();
  readonly #checked: boolean;
  readonly #starts: Int32Array; // where each field of the line began, for the checksum's span
  readonly #bareIndex: number; // -1: every line names its unit
  readonly #units: UnitReader;
  #unitIndex: number;
  #force: Step | undefined;
  #aside = false;
  #digits = 0;
  #times = 1;
  #by = 1;
  #factor = 1;

  /**
   * @param fields  one form of the pattern's lines
   * @param pattern  what holds for all of them: the unit of bare numbers, whether mass means force
   */
  constructor(fields: readonly PatternField[], pattern: LinePattern) {
    this.#steps = compileFields(fields);
    this.#checked = fields.some((f) => f.field === "checksum");
    this.#starts = new Int32Array(this.#steps.length + 1);
    this.unit = pattern.unit ?? "N";
    this.#bareIndex = pattern.unit === undefined ? -1 : forceUnits.indexOf(pattern.unit);
    this.#unitIndex = forceUnits.indexOf(this.unit);
    this.#units = new UnitReader(this.#unitIndex, pattern.massMeansForce);
  }

  /** Reads `line[from]` to before `line[to]`. */
  read(line: Uint8Array, from: number, to: number): LineOutcome {
    const at = this.readFields(line, from, to);
    if (at < 0) return reasons[-at]!;
    if (at !== to) return "frame";
    const verdict = this.judge();
    return verdict === READING ? "reading" : verdict === ASIDE ? "aside" : reasons[-verdict]!;
  }

  /** Reads the fields from `from` on, whatever stands behind them; answers the position there, or below 0. */
  readFields(line: Uint8Array, from: number, to: number): number {
    this.state = "live";
    this.notice = "other";
    this.#stamp.seconds = Number.NaN;
    this.#aside = false;
    this.#force = undefined;
    if (this.#bareIndex >= 0) this.#unitIndex = this.#bareIndex;
    const steps = this.#steps;
    let at = from;
    for (let i = 0; i < steps.length; i += 1) {
      const step = steps[i]!;
      if (this.#checked) this.#starts[i] = at;
      switch (step.op) {
        case BYTE_STEP:
          if (at < to && line[at] === step.byte) at += 1;
          else if (!this.#mayEnd(at, to)) return at < to ? -FIELDS : -FRAME;
          continue;
        case FORCE_STEP:
          at = this.#takeForce(step, line, at, to);
          break;
        case UNIT_STEP:
          at = this.#takeUnit(step, line, at, to);
          break;
        case STATUS_STEP:
          at = this.#takeStatus(step, line, at, to);
          break;
        case TIME_STEP:
          at = this.#stamp.take(step, line, at, to);
          break;
        case CHECKSUM_STEP:
          at = this.#takeChecksum(step, line, at, to, i);
          break;
        default:
          at = this.#takeOther(step, line, at, to);
      }
      if (at < 0) return at;
    }
    return at;
  }

  /** What the fields just read amount to: 0 a reading, 1 no reading on purpose, below 0 a refusal. */
  judge(): number {
    const force = this.#force;
    if (force === undefined) {
      this.forceN = 0;
      return this.state === "overload" ? READING : ASIDE;
    }
    const fits = (force.form.decimalsOf[this.#unitIndex]! >> this.places) & 1;
    if (fits === 0 && !(this.places > 0 && this.#digits === force.form.digits)) return -NUMBER;
    const scale = this.#unitIndex * 64 + this.decimals;
    if (scale !== this.scale) this.#rescale(scale);
    // Overload has no figure, whatever the line shows.
    this.forceN = this.state === "overload" ? 0 : ((this.mantissa * this.#times) / this.#by) * this.#factor;
    return this.#aside ? ASIDE : READING;
  }

  /** Unit or decimals have changed: what the mantissa is multiplied with is looked up anew. */
  #rescale(scale: number): void {
    const { times, by, factor } = scaleOf(this.decimals, this.#unitIndex);
    this.scale = scale;
    this.#times = times;
    this.#by = by;
    this.#factor = factor;
    this.unit = forceUnits[this.#unitIndex]!;
    this.resolutionN = (times / by) * factor;
  }

  /** The gauge's own time, NaN where the line has none. */
  get stampS(): number {
    return this.#stamp.seconds;
  }

  /** False where a word stood in the number's place. */
  get hasForce(): boolean {
    return this.#force !== undefined;
  }

  /** The figure as it was written, in `unit`. */
  get value(): number {
    const { times, by } = scaleOf(this.decimals, 0);
    return (this.mantissa * times) / by;
  }

  /** The rarer kinds of fields. */
  #takeOther(step: Step, line: Uint8Array, at: number, to: number): number {
    switch (step.op) {
      case BLANKS_STEP:
        return this.#mayEnd(at, to) ? at : orFields(takeBlanks(step, line, at, to));
      case TEXT_STEP:
        return matches(step.bytes, line, at, to) ? at + step.bytes.length : this.#mayEnd(at, to) ? at : -FIELDS;
      case DIGITS_STEP:
        return orFields(takeDigits(step, line, at, to));
      case CLOCK_STEP:
        return this.#stamp.takeClock(step, line, at, to);
      default:
        return orFields(takeIgnored(step, this.#number, line, at, to));
    }
  }

  #takeForce(step: Step, line: Uint8Array, at: number, to: number): number {
    const number = this.#number;
    const next = number.read(line, at, to, step.form);
    if (next < 0) return this.#takeInstead(step, line, at, to);
    this.mantissa = number.mantissa;
    this.decimals = number.decimals;
    this.places = number.places;
    this.#digits = number.digits;
    this.#force = step;
    if (step.held && this.state === "live") this.state = "held";
    return next;
  }

  #takeInstead(step: Step, line: Uint8Array, at: number, to: number): number {
    const found = findInstead(step, line, at, to);
    if (found === undefined) return -NUMBER;
    this.#mean(found.means);
    return found.next;
  }

  #takeUnit(step: Step, line: Uint8Array, at: number, to: number): number {
    const next = this.#units.take(step, line, at, to, this.state === "overload" && this.#force === undefined);
    if (next > at) this.#unitIndex = this.#units.index;
    return next;
  }

  #takeStatus(step: Step, line: Uint8Array, at: number, to: number): number {
    const word = findWord(step.words, line, at, to);
    if (word === undefined) return step.optional ? at : this.#mayEnd(at, to) ? at : -FIELDS;
    this.#mean(word.means);
    return at + word.bytes.length;
  }

  #mean(means: WordMeaning): void {
    if (means === "overload" || (means === "held" && this.state === "live")) this.state = means;
    else if (means === "aside") this.#aside = true;
    else if (means !== "other" && means !== "live" && means !== "held") this.notice = means;
  }

  #takeChecksum(step: Step, line: Uint8Array, at: number, to: number, i: number): number {
    if (to - at < step.least) return -FRAME;
    this.#starts[i] = at;
    const value = readCheck(step, line, at);
    if (value < 0) return -CHECKSUM;
    let wanted = checksumOf(step.method, line, this.#starts[step.first]!, this.#starts[step.last + 1]!);
    if (step.complement) wanted = (10 - wanted) % 10;
    return wanted === value ? at + step.least : -CHECKSUM;
  }

  /** After a word in the number's place the rest of the line may be left out. */
  #mayEnd(at: number, to: number): boolean {
    return at >= to && this.state === "overload" && this.#force === undefined;
  }
}

const orFields = (next: number) => (next < 0 ? -FIELDS : next);

const READING = 0;
const ASIDE = 1;
