/** What stays the same about a stored reading when a gauge sends it again; its number does not. */
export type StoredReading = {
  /** Figure and unit as written. */
  readonly figure: string;
  /** Date and time as written; undefined: it has none. */
  readonly stamp: string | undefined;
  readonly location: string | undefined;
  readonly kind: string | undefined;
};

export type FreshRecords = {
  /** Positions of readings that were not docked before. */
  readonly fresh: readonly number[];
  /** How many were. */
  readonly known: number;
  /** Without stamps the two memories overlap too little, or not in one piece: the user is asked. */
  readonly doubtful: boolean;
};

/** So many equal figures in a row, without stamps, are no chance. */
const LEAST_OVERLAP = 3;
/** Of a memory that overlaps with gaps (lines lost last time), this share must be the same. */
const MOST_OF_IT = 0.8;

/**
 * Which readings of a memory are new. With stamps a reading is known by what it says, as often as it was docked before.
 * Without, the memory is laid along what was docked so far: it may have grown at its end, lost its oldest, or hold
 * readings that were lost on the line the last time.
 * @param docked  all readings docked from this gauge so far, oldest first
 * @param memory  what it sent now, oldest first
 */
export function freshRecords(docked: readonly StoredReading[], memory: readonly StoredReading[]): FreshRecords {
  if (memory.every(({ stamp }) => stamp !== undefined)) return byContent(docked, memory);
  const [before, now] = [docked.map(keyOf), memory.map(keyOf)];
  const overlap = overlapOf(before, now);
  if (overlap >= LEAST_OVERLAP || now.length === 0)
    return { fresh: now.map((_, i) => i).slice(overlap), known: overlap, doubtful: false };
  const common = commonSequence(before.slice(-now.length), now);
  const share = common.length / Math.max(1, Math.min(before.length, now.length));
  if (common.length >= LEAST_OVERLAP && share >= MOST_OF_IT) {
    const known = new Set(common);
    return { fresh: [...now.keys()].filter((i) => !known.has(i)), known: known.size, doubtful: true };
  }
  return { fresh: now.map((_, i) => i).slice(overlap), known: overlap, doubtful: overlap > 0 };
}

const keyOf = ({ figure, stamp, location, kind }: StoredReading) => JSON.stringify([figure, stamp, location, kind]);

function byContent(docked: readonly StoredReading[], memory: readonly StoredReading[]): FreshRecords {
  const left = new Map<string, number>();
  for (const reading of docked) left.set(keyOf(reading), (left.get(keyOf(reading)) ?? 0) + 1);
  const fresh = [...memory.keys()].filter((i) => {
    const key = keyOf(memory[i]!);
    const count = left.get(key) ?? 0;
    if (count > 0) left.set(key, count - 1);
    return count === 0;
  });
  return { fresh, known: memory.length - fresh.length, doubtful: false };
}

/** The most of `before`'s end that `now` begins with, by the failure function of Knuth, Morris and Pratt. */
function overlapOf(before: readonly string[], now: readonly string[]): number {
  const fail = new Int32Array(now.length + 1);
  for (let i = 1, k = 0; i < now.length; i += 1) {
    while (k > 0 && now[i] !== now[k]) k = fail[k]!;
    if (now[i] === now[k]) k += 1;
    fail[i + 1] = k;
  }
  let k = 0;
  for (const key of before) {
    while (k > 0 && (k === now.length || key !== now[k])) k = fail[k]!;
    if (key === now[k]) k += 1;
  }
  return k;
}

/** Positions in `now` of the longest sequence that both have. */
function commonSequence(before: readonly string[], now: readonly string[]): number[] {
  const width = now.length + 1;
  const length = new Uint16Array((before.length + 1) * width);
  for (let i = before.length - 1; i >= 0; i -= 1) {
    for (let j = now.length - 1; j >= 0; j -= 1) {
      length[i * width + j] =
        before[i] === now[j]
          ? length[(i + 1) * width + j + 1]! + 1
          : Math.max(length[(i + 1) * width + j]!, length[i * width + j + 1]!);
    }
  }
  const found: number[] = [];
  for (let i = 0, j = 0; i < before.length && j < now.length; ) {
    if (before[i] === now[j]) {
      found.push(j);
      i += 1;
      j += 1;
    } else if (length[(i + 1) * width + j]! >= length[i * width + j + 1]!) i += 1;
    else j += 1;
  }
  return found;
}
