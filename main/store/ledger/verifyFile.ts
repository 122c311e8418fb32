import type { Db } from "../db.ts";
import { wordsOf } from "../wordsOf.ts";
import { DamageList } from "./DamageList.ts";
import { chainReports, inOrder, type LedgerReport } from "./LedgerReport.ts";
import { matchWaveforms } from "./matchWaveforms.ts";
import { signedHeads, verifySignedHeads } from "./signedHeads.ts";
import { verifyRecords } from "./verifyRecords.ts";
import { verifyStructure } from "./verifyStructure.ts";
import { addSums, type TallySums } from "./WaveformTally.ts";
import { type Walked, type Watch, type Work, walkSlices } from "./walkSlices.ts";

export type VerifyOptions = {
  /** Also makes every projection anew from the ledger and compares. */
  readonly rebuild?: boolean;
  readonly watch?: Watch;
  /** Starts further threads on the same slices; none by default. */
  readonly helpers?: (work: Work) => Promise<Walked & { damage: Pick<DamageList, "kept" | "count"> }>[];
};

/**
 * Walks everything a data file holds: SQLite's pages, every chain, every waveform, every row beside the chain, the
 * signed heads. Never throws for damage, however bad: what cannot be read is named.
 */
export async function verifyFile(db: Db, options: VerifyOptions = {}): Promise<LedgerReport> {
  // One snapshot for the whole walk: others may file meanwhile, and what is counted must be of one moment.
  quietly(() => db.exec("BEGIN"));
  try {
    return await walkAll(db, options);
  } finally {
    quietly(() => db.exec("COMMIT"));
  }
}

async function walkAll(db: Db, options: VerifyOptions): Promise<LedgerReport> {
  const watch = options.watch ?? { progress: () => {}, goOn: () => {} };
  const damage = new DamageList();
  const work: Work = { next: new SharedArrayBuffer(4), upTo: last(db, "entry"), waveformsUpTo: last(db, "waveform") };
  const helping = options.helpers?.(work) ?? [];
  for (const part of helping) part.catch(() => {}); // awaited below, unless the walk is told to end before
  const tryTo = (what: "structure" | "entry" | "signedHead", look: () => void) => {
    try {
      look();
    } catch (cause) {
      watch.goOn(); // was it told to end? then out of here
      damage.add({ what, fault: "unreadable", detail: wordsOf(cause) });
    }
  };

  const walked: Walked[] = [];
  tryTo("structure", () => verifyStructure(db, damage));
  tryTo("structure", () => verifyRecords(db, damage, watch.goOn));
  tryTo("signedHead", () => verifySignedHeads(db, damage));
  tryTo("entry", () => walked.push(walkSlices(db, work, damage, watch)));
  for (const part of await Promise.all(helping)) {
    walked.push(part);
    damage.join(part.damage);
  }
  let leftOut = 0;
  tryTo("entry", () => {
    if (!same(addSums(walked.map((w) => w.named)), addSums(walked.map((w) => w.kept)))) {
      leftOut = matchWaveforms(db, damage, watch.goOn);
    }
  });
  if (options.rebuild) {
    // Loads what every kind of entry may hold, which the walk alone does not wait for.
    const { compareProjections } = await import("../projections/compareProjections.ts");
    tryTo("entry", () => compareProjections(db, damage, watch));
  }
  return report(db, walked, leftOut, damage);
}

/** The last place in a table; where even that cannot be read, the walk will say what is damaged. */
const last = (db: Db, table: "entry" | "waveform"): number =>
  quietly(() => db.prepare<[], number | null>(`SELECT max(n) FROM ${table}`).pluck().get() ?? 0) ??
  Number.MAX_SAFE_INTEGER;

function quietly<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch {
    return undefined;
  }
}

const same = (a: TallySums, b: TallySums) => a.count === b.count && a.first === b.first && a.second === b.second;

function report(db: Db, walked: readonly Walked[], waveformsLeftOut: number, damage: DamageList): LedgerReport {
  const heads = quietly(() => signedHeads(db)) ?? [];
  return {
    entries: walked.reduce((sum, w) => sum + w.entries, 0),
    waveforms: addSums(walked.map((w) => w.kept)).count,
    waveformsLeftOut,
    signedHeads: heads.length,
    keys: [...new Set(heads.map((head) => head.publicKey))],
    chains: quietly(() => chainReports(db, damage.kept)) ?? [],
    damaged: inOrder(damage.kept),
    damagedCount: damage.count,
  };
}
