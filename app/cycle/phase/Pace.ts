/** Spans of time in readings. Where the rate is unknown, counts that suit slow and fast gauges alike. */
export type Pace = {
  /** As long as a level must last to be believed: 60 ms, two readings at least. */
  readonly stay: number;
  /** Readings of one level block: 50 ms, three at least. */
  readonly block: number;
  /** Readings that show a level to be quiet: 0.3 s, eight at least. */
  readonly quiet: number;
  /** Between two looks at the rest: 0.5 s. */
  readonly look: number;
  /** The rest the zero band follows: 4 s. */
  readonly follow: number;
  /** Rest after which a cycle is handed out: 1 s. */
  readonly release: number;
  /** Force under the least for so long, or a fall without a quiet level, is no clamping but a moved zero: 5 s. */
  readonly patience: number;
  /** Rest that is kept: 30 s. */
  readonly keep: number;
};

export function paceAt(rateHz: number | undefined): Pace {
  if (rateHz === undefined) {
    return { stay: 3, block: 5, quiet: 10, look: 16, follow: 256, release: 24, patience: 2000, keep: 4096 };
  }
  const readings = (seconds: number, least: number) => Math.max(least, Math.ceil(seconds * rateHz));
  return {
    stay: readings(0.06, 2),
    block: readings(0.05, 3),
    quiet: readings(0.3, 8),
    look: readings(0.5, 4),
    follow: readings(4, 8),
    release: readings(1, 4),
    patience: readings(5, 30),
    keep: Math.min(1 << 16, readings(30, 64)),
  };
}
