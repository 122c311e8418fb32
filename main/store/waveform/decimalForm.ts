import { forceUnits, newtonsPerUnit } from "../../../app/quantity/forceUnits.ts";

/** `(k / 10 ** decimals) * factor`, rounded as a line's figure is when it is read; factor 1 for decimal units. */
export type DecimalForm = { readonly decimals: number; readonly factor: number };

/** A figure from its whole number. The one place that fixes how a packed waveform becomes newtons again. */
export function fromWhole(k: number, { decimals, factor }: DecimalForm): number {
  const value = decimals >= 0 ? k / powers[decimals]! : k * powers[-decimals]!;
  return factor === 1 ? value : value * factor;
}

/**
 * The whole numbers behind the figures, if there is a form that gives back every one of them to the bit.
 * Gauges send a few digits; newtons made of them by a unit's factor still come from whole numbers.
 */
export function wholeNumbers(values: Float64Array): { form: DecimalForm; k: Int32Array } | undefined {
  for (const factor of factors) {
    for (let decimals = -6; decimals <= 9; decimals += 1) {
      const k = exactly(values, { decimals, factor });
      if (k !== undefined) return { form: { decimals, factor }, k };
    }
  }
  return undefined;
}

function exactly(values: Float64Array, form: DecimalForm): Int32Array | undefined {
  const scale = (form.decimals >= 0 ? powers[form.decimals]! : 1 / powers[-form.decimals]!) / form.factor;
  const k = new Int32Array(values.length);
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i]!;
    const whole = Math.round(value * scale) + 0; // never -0
    if (Math.abs(whole) > LIMIT || !Object.is(fromWhole(whole, form), value)) return undefined;
    k[i] = whole;
  }
  return k;
}

const LIMIT = 2 ** 30; // differences still fit the packing
const powers = Array.from({ length: 10 }, (_, n) => 10 ** n);

/** Decimal units differ by a shift of the decimals; the others have factors of their own. */
const factors = [1, ...new Set(forceUnits.map((unit) => newtonsPerUnit[unit]))].filter(
  (factor, i) => i === 0 || !Number.isInteger(Math.log10(factor)),
);
