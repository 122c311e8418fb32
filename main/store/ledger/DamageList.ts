import type { EntryFault } from "../../../app/ledger/ChainWalk.ts";

/** One thing that is wrong in a data file. */
export type Damage = {
  /** `structure`: SQLite's own; `entry`: the ledger; `record`: a table that is made from it or stands beside it. */
  readonly what: "structure" | "entry" | "waveform" | "record" | "signedHead";
  readonly origin?: string | undefined;
  readonly seq?: number | undefined;
  /** Place in this file, in order of arrival. */
  readonly place?: number | undefined;
  readonly fault: EntryFault | "lost" | "differs" | "unsigned";
  /** In words, for the operator and the log. */
  readonly detail: string;
};

const KEPT = 1000;

/** Collects damage; keeps the first thousand and counts all. */
export class DamageList {
  readonly kept: Damage[] = [];
  count = 0;

  add(damage: Damage): void {
    this.count += 1;
    if (this.kept.length < KEPT) this.kept.push(damage);
  }

  /** Takes over what another walk found. */
  join(other: { readonly kept: readonly Damage[]; readonly count: number }): void {
    this.kept.push(...other.kept.slice(0, KEPT - this.kept.length));
    this.count += other.count;
  }
}
