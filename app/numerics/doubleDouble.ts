/**
 * A number of about 31 digits as the unevaluated sum of two doubles, `lo` no more than half a unit in the
 * last place of `hi`. Polynomial fits are solved in it: on ill-conditioned loads plain doubles lose half
 * of the digits, and a fit has so few operations that the thirtyfold cost is not felt.
 * @see T. J. Dekker, Numerische Mathematik 18 (1971) 224; D. E. Knuth, TAOCP vol. 2, 4.2.2
 */
export type DoubleDouble = { readonly hi: number; readonly lo: number };

/** A double as it stands. */
export function ddOf(value: number): DoubleDouble {
  return { hi: value, lo: 0 };
}

/** a + b. */
export function ddAdd(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const s = a.hi + b.hi;
  const part = s - a.hi;
  const error = a.hi - (s - part) + (b.hi - part); // what the rounding of s left out, exactly
  return renormalised(s, error + (a.lo + b.lo));
}

/** a - b. */
export function ddSubtract(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  return ddAdd(a, { hi: -b.hi, lo: -b.lo });
}

/** a x b. */
export function ddMultiply(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const p = a.hi * b.hi;
  const a1 = upperHalf(a.hi);
  const a2 = a.hi - a1;
  const b1 = upperHalf(b.hi);
  const b2 = b.hi - b1;
  const error = a1 * b1 - p + a1 * b2 + a2 * b1 + a2 * b2;
  return renormalised(p, error + (a.hi * b.lo + a.lo * b.hi));
}

/** a / b; b is not zero. */
export function ddDivide(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const first = ddOf(a.hi / b.hi);
  const rest = ddSubtract(a, ddMultiply(first, b));
  const second = ddOf(rest.hi / b.hi);
  const rest2 = ddSubtract(rest, ddMultiply(second, b));
  return ddAdd(ddAdd(first, second), ddOf(rest2.hi / b.hi));
}

const SPLITTER = 2 ** 27 + 1;

function upperHalf(a: number): number {
  const c = SPLITTER * a;
  return c - (c - a);
}

function renormalised(hi: number, lo: number): DoubleDouble {
  const s = hi + lo;
  return { hi: s, lo: lo - (s - hi) };
}
