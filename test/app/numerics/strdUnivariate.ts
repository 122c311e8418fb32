import published from "../../published/nist-strd-univariate.json" with { type: "json" };

type DataSet = {
  readonly name: string;
  readonly data: readonly number[];
  readonly mean: number;
  readonly sd: number;
  readonly r1: number;
  /** Decimal data around a million cannot be held exactly in doubles. */
  readonly inexact: boolean;
};

type Raw = {
  data?: number[];
  data_rule?: { first: number; then_repeat_500_times: number[] };
  mean: number;
  sd_n_minus_1: number;
  lag1_autocorrelation: number;
};

/** NIST StRD, univariate summary statistics: certified values, source in the file. */
export const strdUnivariate: readonly DataSet[] = Object.entries(published.datasets as Record<string, Raw>).map(
  ([name, raw]) => ({
    name,
    data: Object.freeze(
      raw.data ?? [
        raw.data_rule!.first,
        ...Array.from({ length: 500 }, () => raw.data_rule!.then_repeat_500_times).flat(),
      ],
    ),
    mean: raw.mean,
    sd: raw.sd_n_minus_1,
    r1: raw.lag1_autocorrelation,
    inexact: name === "NumAcc3" || name === "NumAcc4",
  }),
);
