import { forceUnits } from "../quantity/forceUnits.ts";
import { parseForceUnit } from "../quantity/parseForceUnit.ts";
import { type Name, nameOf, type Step } from "./compileFields.ts";
import { TORQUE, UNIT } from "./refusals.ts";
import { scanLetters } from "./scanText.ts";
import { isNamed } from "./takeField.ts";

type UnitName = Name & { readonly index: number };

/** Units met are known by their bytes; gauges have few, and what they have beyond this is looked up anew. */
const mostNames = 8;

/** Reads the unit of a line. The one in use is compared first, so that a line in the same unit makes no string. */
export class UnitReader {
  /** The unit of the last line, by its place in `forceUnits`. */
  index: number;
  readonly #massMeansForce: boolean;
  readonly #met: UnitName[] = [];
  #inUse: UnitName = { ...nameOf(new Uint8Array(0)), index: 0 };

  constructor(index: number, massMeansForce: boolean) {
    this.index = index;
    this.#massMeansForce = massMeansForce;
  }

  /**
   * @param mayMiss  a line that has no number may leave its unit out
   * @returns  the position behind the unit, or the reason below 0
   */
  take(step: Step, line: Uint8Array, at: number, to: number, mayMiss: boolean): number {
    const unit = this.#inUse;
    if (!isNamed(unit, line, at, to)) return this.#other(step, line, at, to, mayMiss);
    this.index = unit.index;
    return at + unit.length;
  }

  #other(step: Step, line: Uint8Array, at: number, to: number, mayMiss: boolean): number {
    for (const name of this.#met) {
      if (!isNamed(name, line, at, to)) continue;
      this.#inUse = name;
      this.index = name.index;
      return at + name.length;
    }
    const next = scanLetters(line, at, to);
    if (next < 0) return step.optional || mayMiss ? at : -UNIT;
    return this.#meet(step, line, at, next);
  }

  /** A text not met before. Off the fast way: it makes a string. */
  #meet(step: Step, line: Uint8Array, at: number, next: number): number {
    const meaning = parseForceUnit(String.fromCharCode(...line.subarray(at, Math.min(next, at + 16))));
    if (meaning.kind === "torque") return -TORQUE;
    if (meaning.kind === "unknown" || (meaning.kind === "mass" && !this.#massMeansForce)) return -UNIT;
    const index = forceUnits.indexOf(meaning.unit);
    if (!step.units.includes(index)) return -UNIT;
    this.#inUse = { ...nameOf(line.slice(at, next)), index };
    this.#met.unshift(this.#inUse);
    if (this.#met.length > mostNames) this.#met.pop();
    this.index = index;
    return next;
  }
}
