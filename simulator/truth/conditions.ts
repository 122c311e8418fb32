/** What a stream shows besides plain clampings. One condition a stream, so that the table tells them apart. */
export type Condition = {
  readonly name: string;
  readonly rise?: "snap" | "hand" | "steps";
  readonly rateHz?: readonly [number, number];
  /** Hold from arrival to release, seconds. */
  readonly holdS?: readonly [number, number];
  /** Force, as a share of the capacity. */
  readonly share?: readonly [number, number];
  readonly noise?: readonly [number, number];
  readonly memory?: number;
  /** Resolution in standard deviations of the noise. */
  readonly coarseSteps?: readonly [number, number];
  readonly offset?: number;
  readonly driftPerMinute?: number;
  readonly backToBack?: boolean;
  readonly residual?: boolean;
  readonly slip?: boolean;
  readonly knocks?: boolean;
  readonly spikes?: boolean;
  readonly held?: boolean;
  readonly overload?: boolean;
  readonly clipped?: boolean;
  readonly lost?: number;
  readonly begins?: "inHold";
  readonly ends?: "inHold";
  readonly cycles?: readonly [number, number];
  readonly tellCapacity?: boolean;
};

/** Noise as a share of the capacity. */
export const usualNoise = [0.00005, 0.001] as const;

export const conditions: readonly Condition[] = [
  { name: "snap", rise: "snap" },
  { name: "tightened by hand", rise: "hand" },
  { name: "rise in two steps", rise: "steps" },
  { name: "back to back", backToBack: true },
  { name: "not released", residual: true },
  { name: "slip in the hold", slip: true, holdS: [1.5, 12] },
  { name: "short hold", holdS: [0.5, 1.2] },
  { name: "minutes of hold", holdS: [40, 150], rateHz: [2, 200], cycles: [2, 4] },
  { name: "long hold, fast", holdS: [30, 70], rateHz: [5000, 10000], cycles: [1, 2] },
  { name: "weak force", share: [0.05, 0.08] },
  { name: "full force", share: [0.85, 1] },
  { name: "2 to 8 Hz", rateHz: [2, 8] },
  { name: "8 to 40 Hz", rateHz: [8, 40] },
  { name: "2 to 10 kHz", rateHz: [2000, 10000], cycles: [3, 6] },
  { name: "offset", offset: 0.1 },
  { name: "drift", driftPerMinute: 0.005 },
  { name: "knocks", knocks: true },
  { name: "knocks, capacity unknown", knocks: true, tellCapacity: false },
  { name: "spikes", spikes: true },
  { name: "held maximum", held: true, rateHz: [4, 100], noise: [0.00002, 0.0002], share: [0.05, 0.75] },
  { name: "overload lines", overload: true, share: [0.5, 1] },
  { name: "clipped at capacity", clipped: true, tellCapacity: true, share: [0.7, 1.15] },
  { name: "ends in a hold", ends: "inHold" },
  { name: "begins in a hold", begins: "inHold" },
  { name: "lines lost", lost: 0.03 },
  { name: "coarse steps", coarseSteps: [0.3, 8] },
  { name: "noise far under a step", coarseSteps: [8, 60] },
  { name: "noise that remembers", memory: 0.7 },
  { name: "quiet gauge", noise: [0.000002, 0.00002] },
  { name: "noisy gauge", noise: [0.001, 0.002] },
  { name: "capacity unknown", tellCapacity: false },
];
