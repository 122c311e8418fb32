import type { NumberForm } from "./numberForm.ts";

/**
 * Reads one decimal number out of a line by its form, without making a string. The figure is
 * `mantissa / 10 ** decimals`: both are exact, so one division gives the double nearest to what was written,
 * the same that JavaScript's own parser gives.
 */
export class NumberReader {
  /** All digits as one whole number, with sign; at most fifteen of them, so it is exact. */
  mantissa = 0;
  /** Digits behind the mark, less the exponent. */
  decimals = 0;
  /** Digits behind the mark as written, and all digits. */
  places = 0;
  digits = 0;

  /**
   * @returns  the position behind the number and its padding, or -1: it is not written as the form says
   */
  read(line: Uint8Array, at: number, end: number, form: NumberForm): number {
    return form.plain ? this.#readPlain(line, at, end, form) : this.#readAny(line, at, end, form);
  }

  /** Padding, sign, digits, mark, digits: what most gauges send, and most of the time that decoding takes. */
  #readPlain(line: Uint8Array, at: number, end: number, form: NumberForm): number {
    let p = at;
    if (form.width >= 0) while (p < end && line[p] === BLANK) p += 1;
    const sign = p < end ? line[p]! : 0;
    if (sign === MINUS || sign === PLUS) p += 1;
    else if (form.signMust) return -1;
    const from = p;
    let mantissa = 0;
    while (p < end) {
      const digit = line[p]! - ZERO;
      if (digit < 0 || digit > 9) break;
      mantissa = mantissa * 10 + digit;
      p += 1;
    }
    const whole = p - from;
    let places = 0;
    if (p < end && line[p] === form.mark) {
      p += 1;
      const mark = p;
      while (p < end) {
        const digit = line[p]! - ZERO;
        if (digit < 0 || digit > 9) break;
        mantissa = mantissa * 10 + digit;
        p += 1;
      }
      places = p - mark;
      if (places === 0 || places > 9) return -1; // "12." is a number cut short
    }
    if (whole === 0 || whole + places > 15 || (form.wholeDigits >= 0 && whole !== form.wholeDigits)) return -1;
    if (form.width >= 0 && p - at !== form.width && !(form.mayGrow && p - at > form.width)) return -1;
    this.places = places;
    this.decimals = places;
    this.digits = whole + places;
    this.mantissa = sign === MINUS ? 0 - mantissa : mantissa; // never -0
    return p;
  }

  #readAny(line: Uint8Array, at: number, end: number, form: NumberForm): number {
    let p = at;
    const padded = form.width >= 0;
    if (padded && !form.left) while (p < end && line[p] === BLANK) p += 1;
    let negative = false;
    const sign = p < end ? line[p]! : 0;
    if (sign === MINUS || sign === PLUS) {
      if (form.signAfter) return -1;
      negative = sign === MINUS;
      p += 1;
      if (form.signGap) while (p < end && line[p] === BLANK) p += 1;
    } else if (form.signMust) return -1;
    else if (form.signColumn) {
      if (sign !== BLANK && !(padded && p > at)) return -1;
      if (sign === BLANK) p += 1;
    }
    // Digits before the mark. The loop is written out, not shared with the one below: it is most of the work.
    const wholeFrom = p;
    let mantissa = 0;
    while (p < end) {
      const digit = line[p]! - ZERO;
      if (digit < 0 || digit > 9) break;
      mantissa = mantissa * 10 + digit;
      p += 1;
    }
    let whole = p - wholeFrom;
    if (whole === 0 && !(form.mayOmitZero && p < end && line[p] === form.mark)) return -1;
    if (form.thousands >= 0 && p < end && line[p] === form.thousands && whole <= 3) {
      while (
        p + 3 < end &&
        line[p] === form.thousands &&
        isDigit(line[p + 1]!) &&
        isDigit(line[p + 2]!) &&
        isDigit(line[p + 3]!)
      ) {
        mantissa = mantissa * 1000 + (line[p + 1]! - ZERO) * 100 + (line[p + 2]! - ZERO) * 10 + (line[p + 3]! - ZERO);
        whole += 3;
        p += 4;
      }
    } else if (form.thousands >= 0 && whole > 3) return -1;
    let places = 0;
    const marked = p < end && line[p] === form.mark;
    if (!marked && form.giveBack > 0) {
      whole -= form.giveBack;
      mantissa = Math.floor(mantissa / 10 ** form.giveBack);
      p -= form.giveBack;
      if (whole <= 0) return -1;
    }
    if (form.wholeDigits >= 0 && whole !== form.wholeDigits) return -1;
    if (marked) {
      p += 1;
      const from = p;
      while (p < end) {
        const digit = line[p]! - ZERO;
        if (digit < 0 || digit > 9) break;
        mantissa = mantissa * 10 + digit;
        p += 1;
      }
      if (form.giveBack > 0) {
        mantissa = Math.floor(mantissa / 10 ** form.giveBack);
        p -= form.giveBack;
      }
      places = p - from;
      if (places <= 0 || places > 9) return -1; // "12." is a number cut short
    }
    if (whole + places > 15 || whole + places === 0) return -1;
    this.places = places;
    this.digits = whole + places;
    this.decimals = places;
    if (form.exponent) {
      p = this.#exponent(line, p, end);
      if (p < 0) return -1;
    }
    if (form.signAfter && p < end) {
      const after = line[p]!;
      if (after === MINUS || after === PLUS || after === BLANK) p += 1;
      negative = after === MINUS;
    }
    if (padded) {
      if (form.left) while (p < end && p - at < form.width && line[p] === BLANK) p += 1;
      if (p - at !== form.width && !(form.mayGrow && p - at > form.width)) return -1;
    }
    this.mantissa = negative ? 0 - mantissa : mantissa; // never -0
    return p;
  }

  /** A pattern that allows the exponent wants it: a line cut before it would else read as a smaller number. */
  #exponent(line: Uint8Array, at: number, end: number): number {
    let p = at;
    if (p >= end || (line[p]! | 0x20) !== LOWER_E) return -1;
    p += 1;
    const sign = p < end ? line[p]! : 0;
    if (sign === PLUS || sign === MINUS) p += 1;
    const from = p;
    let exponent = 0;
    while (p < end && isDigit(line[p]!)) {
      exponent = exponent * 10 + (line[p]! - ZERO);
      p += 1;
    }
    if (p === from || p - from > 3) return -1;
    this.decimals -= sign === MINUS ? -exponent : exponent;
    return this.decimals > 22 || this.decimals < -22 ? -1 : p; // beyond that a power of ten is not exact
  }
}

const isDigit = (byte: number) => byte >= ZERO && byte <= NINE;

const BLANK = 0x20;
const PLUS = 0x2b;
const MINUS = 0x2d;
const ZERO = 0x30;
const NINE = 0x39;
const LOWER_E = 0x65;
