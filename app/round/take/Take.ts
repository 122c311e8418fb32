/** One reading as it came out of a memory, a file or off the sheet. */
export type Take = {
  /** Newtons; undefined: it carried no force (overload, unreadable, a unit of torque). */
  readonly valueN: number | undefined;
  /** Its instant by the PC's clock, corrected; undefined: no stamp, or one that cannot be trusted. */
  readonly atMs: number | undefined;
  /** The location or channel the gauge kept with it, as text. */
  readonly location: string | undefined;
  /** `held`: the gauge's maximum; `live`: its reading at the moment of storing. */
  readonly kind: "held" | "live" | undefined;
  readonly refused: "torque" | "overload" | "unreadable" | undefined;
};

/** Takes of one visit to one spindle. */
export type TakeGroup = {
  /** Positions in the list of takes, in order. */
  readonly takes: readonly number[];
  readonly meanN: number;
  readonly atMs: number | undefined;
  readonly location: string | undefined;
};
