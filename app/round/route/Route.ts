/** A spindle to be visited, as the route needs it. */
export type RouteStop = {
  readonly spindleId: string;
  readonly machine: string;
  readonly area: string;
  /** Position on the way through the works; undefined: not stated. */
  readonly order: number | undefined;
  /** What is screwed on for it: an adapter, or a taper when no adapter is known. */
  readonly tool: string;
};

export type Route = {
  /** Positions in the list of stops, in the order to walk. */
  readonly sequence: readonly number[];
  /** `exact`: no order has fewer changes, and of those none is shorter. `good`: found by improving, not proved. */
  readonly found: "exact" | "good";
  readonly adapterChanges: number;
  /** Length of the walk in places passed; going to another area counts as `AREA_WALK` places more. */
  readonly walk: number;
};
