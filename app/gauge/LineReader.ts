import { type ForceUnit, forceUnits } from "../quantity/forceUnits.ts";
import { parseForceUnit } from "../quantity/parseForceUnit.ts";
import { checksumOf } from "./checksums.ts";
import { compileFields, op, type Step } from "./compileFields.ts";
import type { LinePattern, PatternField, WordMeaning } from "./linePattern.ts";
import { NumberReader } from "./NumberReader.ts";
import type { ReadingState, RejectReason } from "./ReadingSink.ts";
import { scaledForce } from "./scaledForce.ts";
import { scanClock, scanLetters } from "./scanText.ts";
import {
  clockSeconds,
  findWord,
  matches,
  readCheck,
  skipBlanks,
  takeBlanks,
  takeDigits,
  takeIgnored,
} from "./takeField.ts";

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
  state: ReadingState = "live";
  stampS = Number.NaN;
  /** The last status word of consequence in this line. */
  notice: WordMeaning = "other";

  readonly #steps: readonly Step[];
  readonly #number = new NumberReader();
  readonly #checked: boolean;
  readonly #starts: Int32Array; // where each field of the line began, for the checksum's span
  readonly #bareIndex: number; // -1: every line names its unit
  readonly #massMeansForce: boolean;
  readonly #units: UnitName[] = []; // those met so far
  #unitName = unitName(new Uint8Array(0), 0); // the one in use
  #unitIndex: number;
  #force: Step | undefined;
  #aside = false;
  #digits = 0;

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
    this.#massMeansForce = pattern.massMeansForce;
  }

  /** Reads `line[from]` to before `line[to]`. */
  read(line: Uint8Array, from: number, to: number): LineOutcome {
    const at = this.readFields(line, from, to);
    if (at < 0) return reasons[-at]!;
    return at === to ? this.judge() : "frame";
  }

  /** Reads the fields from `from` on, whatever stands behind them; answers the position there, or below 0. */
  readFields(line: Uint8Array, from: number, to: number): number {
    this.state = "live";
    this.notice = "other";
    this.stampS = Number.NaN;
    this.#aside = false;
    this.#force = undefined;
    if (this.#bareIndex >= 0) this.#unitIndex = this.#bareIndex;
    const steps = this.#steps;
    let at = from;
    for (let i = 0; i < steps.length; i += 1) {
      const step = steps[i]!;
      if (this.#checked) this.#starts[i] = at;
      if (step.op === op.byte) {
        if (at < to && line[at] === step.byte) at += 1;
        else if (!this.#mayEnd(at, to)) return at < to ? -FIELDS : -FRAME;
        continue;
      }
      // The three most frequent kinds stand here, not behind a further call.
      if (step.op === op.force) at = this.#takeForce(step, line, at, to);
      else if (step.op === op.unit) at = this.#takeUnit(step, line, at, to);
      else at = this.#take(step, line, at, to, i);
      if (at < 0) return at;
    }
    return at;
  }

  /** What the fields just read amount to. */
  judge(): LineOutcome {
    const force = this.#force;
    if (force !== undefined) {
      const fits = (force.form.decimalsOf[this.#unitIndex]! >> this.places) & 1;
      if (fits === 0 && !(this.places > 0 && this.#digits === force.form.digits)) return "number";
    } else if (this.state !== "overload") this.#aside = true;
    this.unit = forceUnits[this.#unitIndex]!;
    return this.#aside ? "aside" : "reading";
  }

  /** The force of the line just read, newtons. Decimal units are scaled in one rounding. */
  get forceN(): number {
    if (this.#force === undefined || this.state === "overload") return 0;
    return scaledForce(this.mantissa, this.decimals, this.#unitIndex);
  }

  /** False where a word stood in the number's place. */
  get hasForce(): boolean {
    return this.#force !== undefined;
  }

  /** The figure as it was written, in `unit`. */
  get value(): number {
    return scaledForce(this.mantissa, this.decimals, 0);
  }

  /** One step of the last digit, newtons. */
  get resolutionN(): number {
    return scaledForce(1, this.decimals, this.#unitIndex);
  }

  #take(step: Step, line: Uint8Array, at: number, to: number, i: number): number {
    switch (step.op) {
      case op.blanks:
        return this.#mayEnd(at, to) ? at : orFields(takeBlanks(step, line, at, to));
      case op.force:
        return this.#takeForce(step, line, at, to);
      case op.unit:
        return this.#takeUnit(step, line, at, to);
      case op.status:
        return this.#takeStatus(step, line, at, to);
      case op.text:
        return matches(step.bytes, line, at, to) ? at + step.bytes.length : this.#mayEnd(at, to) ? at : -FIELDS;
      case op.digits:
        return orFields(takeDigits(step, line, at, to));
      case op.time:
        return this.#takeTime(step, line, at, to);
      case op.clock: {
        const next = scanClock(line, at, to, step.form.mark);
        if (next < 0) return -FIELDS;
        if (!step.coarse) this.stampS = clockSeconds(line, at, next);
        return next;
      }
      case op.checksum:
        return this.#takeChecksum(step, line, at, to, i);
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

  /** Words in the number's place stand anywhere in its padding. */
  #takeInstead(step: Step, line: Uint8Array, at: number, to: number): number {
    let p = skipBlanks(line, at, to);
    const word = findWord(step.words, line, p, to);
    if (word === undefined) return -NUMBER;
    this.#mean(word.means);
    p += word.bytes.length;
    // A row of dashes is as long as the display is wide.
    while (p < to && line[p] === word.bytes[0] && word.bytes[1] === word.bytes[0] && !isLetter(word.bytes[0]!)) p += 1;
    while (p < to && line[p] === BLANK && p - at < step.form.width) p += 1;
    return p;
  }

  #takeUnit(step: Step, line: Uint8Array, at: number, to: number): number {
    const unit = this.#unitName;
    const next = at + unit.length;
    if (
      next <= to &&
      line[at] === unit.first &&
      (unit.length === 1 || line[at + 1] === unit.second) &&
      (unit.length < 3 || matches(unit.bytes, line, at, to)) &&
      (next === to || !isLetter(line[next]!))
    ) {
      this.#unitIndex = unit.index;
      return next;
    }
    return this.#otherUnit(step, line, at, to);
  }

  #otherUnit(step: Step, line: Uint8Array, at: number, to: number): number {
    const units = this.#units;
    for (let k = 0; k < units.length; k += 1) {
      const name = units[k]!;
      const next = at + name.bytes.length;
      if (!matches(name.bytes, line, at, to) || (next < to && isLetter(line[next]!))) continue;
      this.#unitName = name; // the unit in use is found at once next time
      this.#unitIndex = name.index;
      return next;
    }
    return this.#meetUnit(step, line, at, to);
  }

  /** A unit's text not met before, or none. Off the fast way: it may make strings. */
  #meetUnit(step: Step, line: Uint8Array, at: number, to: number): number {
    const next = scanLetters(line, at, to);
    if (next < 0) return step.optional || (this.state === "overload" && this.#force === undefined) ? at : -UNIT;
    const text = String.fromCharCode(...line.subarray(at, Math.min(next, at + 16)));
    const meaning = parseForceUnit(text);
    if (meaning.kind === "torque") return -TORQUE;
    if (meaning.kind === "unknown" || (meaning.kind === "mass" && !this.#massMeansForce)) return -UNIT;
    const index = forceUnits.indexOf(meaning.unit);
    if (!step.units.includes(index)) return -UNIT;
    this.#unitName = unitName(line.slice(at, next), index);
    this.#units.unshift(this.#unitName);
    if (this.#units.length > 8) this.#units.pop();
    this.#unitIndex = index;
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

  #takeTime(step: Step, line: Uint8Array, at: number, to: number): number {
    const next = this.#number.read(line, skipBlanks(line, at, to), to, step.form);
    if (next < 0 || this.#number.mantissa < 0) return -FIELDS;
    if (!step.coarse) this.stampS = this.#number.mantissa / (10 ** this.#number.decimals * step.perSecond);
    return next;
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

/** A unit's text; its first two bytes stand apart, since most units have no more. */
type UnitName = {
  readonly bytes: Uint8Array;
  readonly length: number;
  readonly first: number;
  readonly second: number;
  readonly index: number;
};

const unitName = (bytes: Uint8Array, index: number): UnitName => ({
  bytes,
  length: bytes.length,
  first: bytes[0] ?? -1,
  second: bytes[1] ?? -1,
  index,
});

const isLetter = (byte: number) => ((byte | 0x20) - 0x61) >>> 0 < 26;

const orFields = (next: number) => (next < 0 ? -FIELDS : next);

const BLANK = 0x20;

/** Why a field did not match, as the negative of its place here: positions and reasons share one number. */
const reasons: readonly RejectReason[] = ["frame", "frame", "fields", "number", "unit", "checksum", "torque"];
const FRAME = 1;
const FIELDS = 2;
const NUMBER = 3;
const UNIT = 4;
const CHECKSUM = 5;
const TORQUE = 6;
