import type { ByteReader } from "./ByteReader.ts";
import type { ByteWriter } from "./ByteWriter.ts";
import { fromWhole, wholeNumbers } from "./decimalForm.ts";

const WHOLE = 1; // differences of whole numbers and the form that makes figures of them
const FLOAT32 = 2;
const FLOAT64 = 3;

/**
 * Packs numbers so that unpacking gives the identical ones, NaN included: as whole numbers where they come from a
 * few digits, else as floats, their bytes sorted by place so that deflate finds what repeats. Stretches of NaN are
 * named first and left out of the rest.
 */
export function packNumbers(values: Float64Array, to: ByteWriter): void {
  const runs = runsOfNaN(values);
  to.varint(runs.length / 2);
  for (const length of runs) to.varint(length);
  packFinite(runs.length === 0 ? values : values.filter((value) => !Number.isNaN(value)), to);
}

/** @throws RangeError  the bytes are no such column */
export function unpackNumbers(from: ByteReader, count: number): Float64Array {
  const runs = Array.from({ length: Math.min(from.varint(), count) * 2 }, () => from.varint());
  const absent = runs.reduce((sum, length, i) => (i % 2 === 1 ? sum + length : sum), 0);
  if (absent > count) throw new RangeError("a waveform has more gaps than readings");
  const finite = unpackFinite(from, count - absent);
  if (absent === 0) return finite;
  const values = new Float64Array(count).fill(Number.NaN);
  let at = 0;
  let taken = 0;
  for (let i = 0; i <= runs.length; i += 2) {
    const kept = Math.min(runs[i] ?? count, finite.length - taken);
    values.set(finite.subarray(taken, taken + kept), at);
    taken += kept;
    at += kept + (runs[i + 1] ?? 0);
  }
  return values;
}

/** Lengths of what lies before a stretch of NaN and of the stretch, in turns. */
function runsOfNaN(values: Float64Array): number[] {
  const runs: number[] = [];
  let from = 0; // where the present stretch began
  let absent = false;
  for (let i = 0; i <= values.length; i += 1) {
    const is = i < values.length && Number.isNaN(values[i]);
    if (is === absent) continue;
    runs.push(i - from);
    from = i;
    absent = is;
  }
  return runs;
}

function packFinite(values: Float64Array, to: ByteWriter): void {
  const whole = wholeNumbers(values);
  if (whole !== undefined) {
    to.byte(WHOLE);
    to.signed(whole.form.decimals);
    to.float64(whole.form.factor);
    let before = 0;
    for (const k of whole.k) {
      to.signed(k - before);
      before = k;
    }
    return;
  }
  const short = Float32Array.from(values);
  const fits = values.every((value, i) => Object.is(short[i], value));
  to.byte(fits ? FLOAT32 : FLOAT64);
  to.raw(fits ? byPlace(new Uint8Array(short.buffer), 4) : byPlace(new Uint8Array(values.slice().buffer), 8));
}

function unpackFinite(from: ByteReader, count: number): Float64Array {
  const how = from.byte();
  if (how === FLOAT32) return Float64Array.from(new Float32Array(byItem(from.raw(count * 4), 4).buffer));
  if (how === FLOAT64) return new Float64Array(byItem(from.raw(count * 8), 8).buffer);
  if (how !== WHOLE) throw new RangeError("a waveform is packed in an unknown way");
  const form = { decimals: from.signed(), factor: from.float64() };
  const values = new Float64Array(count);
  let k = 0;
  for (let i = 0; i < count; i += 1) {
    k += from.signed();
    values[i] = fromWhole(k, form);
  }
  return values;
}

/** All first bytes, then all second bytes, and so on. Every platform Node runs on is little-endian. */
function byPlace(bytes: Uint8Array, size: number): Uint8Array {
  const count = bytes.length / size;
  const sorted = new Uint8Array(bytes.length);
  for (let i = 0; i < count; i += 1) for (let b = 0; b < size; b += 1) sorted[b * count + i] = bytes[i * size + b]!;
  return sorted;
}

function byItem(sorted: Uint8Array, size: number): Uint8Array {
  const count = sorted.length / size;
  const bytes = new Uint8Array(sorted.length);
  for (let i = 0; i < count; i += 1) for (let b = 0; b < size; b += 1) bytes[i * size + b] = sorted[b * count + i]!;
  return bytes;
}
