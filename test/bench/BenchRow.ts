/** One number of the bench. `measured` and `limit` share `unit`; what better means stands in `met`. */
export type BenchRow = {
  readonly name: string;
  readonly measured: number;
  readonly limit: number;
  readonly unit: string;
  readonly met: boolean;
  readonly note?: string;
};
