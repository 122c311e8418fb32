/** What a budget is made of. Shares are relative to the force; `assumed` marks a default nobody has confirmed. */
export type BudgetInput = {
  /** Corrected force at the taper: the mean of the series, or the one value there is. Newtons. */
  readonly forceN: number;
  /** Newtons at the taper per newton of net indication, from `correctForce`; absent: 1. */
  readonly sensitivity?: number | undefined;
  /** The clampings that were averaged and the standard deviation of their corrected forces; none of it for a single one. */
  readonly repeats: { readonly n: number; readonly sN?: number | undefined };
  /** Standard deviation between clampings of earlier checks of this spindle: stands in for a single clamping's own. */
  readonly earlierScatter?: { readonly sN: number; readonly degreesOfFreedom: number } | undefined;
  /** Standard uncertainty of the one settled force from its own hold, newtons of indication. */
  readonly holdN?: number | undefined;
  /** One step of the indication, newtons. */
  readonly resolutionN?: number | undefined;
  readonly zero?:
    | {
        /** Standard uncertainty of the zero from its own quiet readings, newtons of indication. */
        readonly noiseN?: number | undefined;
        /**
         * Standard deviation of one of them: where it is of the size of the rounding or more, their mean has averaged the
         * rounding out. Absent: `noiseN` stands in for it, on the safe side.
         */
        readonly readingN?: number | undefined;
        /** Half the change of zero that no rule could share out: half-width of a rectangle, newtons of indication. */
        readonly halfChangeN?: number | undefined;
      }
    | undefined;
  /** Standard uncertainty of the gauge's curve at this force, relative. */
  readonly gaugeProof?: Share | undefined;
  /** Standard uncertainty of the adapter's scale, relative. */
  readonly adapter?: Share | undefined;
  /** Share of the force per kelvin, and kelvins between proof and check; not corrected for, so a half-width. */
  readonly temperature?:
    | { readonly perKelvin: number; readonly differenceK: number; readonly assumed?: boolean }
    | undefined;
  /** Greatest change of the gauge to be expected in a year, as a share, and the years since its proof: a half-width. */
  readonly drift?: { readonly perYear: number; readonly years: number; readonly assumed?: boolean } | undefined;
  /** Greatest error from side load and a crooked seat, as a share: a half-width. Absent: the default of `assumptions`. */
  readonly misalignment?: { readonly halfWidth: number; readonly assumed?: boolean } | undefined;
};

type Share = {
  readonly relative: number;
  readonly degreesOfFreedom?: number | undefined;
  readonly assumed?: boolean;
};
