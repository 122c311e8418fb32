/** Where a simulated gauge's bytes leave the program. */
export type Output = {
  /** What stands in the first line the program prints. */
  readonly address: Readonly<Record<string, string | number>>;
  /** True while somebody takes the bytes; without a taker they are lost, as on a real cable. */
  readonly taken: boolean;
  /** Hands bytes over. Answers false when the taker is behind: who may wait then waits for `drained`. */
  send(bytes: Uint8Array): boolean;
  drained(): Promise<void>;
  /** Pulls the plug: the other side sees the link go. */
  unplug(): Promise<void>;
  plug(): Promise<void>;
  close(): Promise<void>;
};

/** What the PC sends to the gauge. */
export type Received = (bytes: Uint8Array) => void;
