import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { Proof } from "../../app/ledger/proof.ts";
import { type AdapterFactor, type AdapterPair, adapterFactor } from "../../app/proof/after/adapterFactor.ts";
import { netReadings } from "../../app/proof/data/netReadings.ts";
import type { ProofReading } from "../../app/proof/data/ProofReading.ts";
import type { ProofRefused } from "../../app/proof/method/ProofOptions.ts";
import type { Db } from "../store/db.ts";
import { readAdapter } from "../store/records/adapters.ts";
import { readProof } from "../store/records/proofs.ts";

/** An adapter's factor from typed pairs, or from two filed proofs of one gauge. */
export function adapterFactorOf(db: Db, input: Parsed<"adapters.factor">): AdapterFactor | ProofRefused {
  const known = input.knownAdapterId === undefined ? undefined : readAdapter(db, input.knownAdapterId);
  if (input.knownAdapterId !== undefined && known === undefined) throw noAdapter();
  const { from, referenceRelative } = input;
  const other = known === undefined ? undefined : { scale: known.scale, relative: known.scaleUncertainty };
  if ("pairs" in from) {
    const pairs = from.pairs.map(({ run, without, withIt }) => ({
      run,
      without: plain(without),
      withIt: plain(withIt),
    }));
    return adapterFactor(pairs, other, referenceRelative);
  }
  const [without, withIt] = [proofOf(db, from.withoutProofId), proofOf(db, from.withProofId)];
  return adapterFactor(pairsOf(without, withIt, input), other, referenceRelative ?? ratioDoubt(without, withIt));
}

/** What the two proofs leave in doubt beside their scatter: the last digit of both, and the references where they are two. */
function ratioDoubt(without: Proof, withIt: Proof): number {
  const greatestN = Math.max(...withIt.takings.map((t) => t.indicationN));
  const digit = ((without.choices.resolutionN ?? 0) / Math.sqrt(12) / greatestN) * Math.SQRT2;
  if (without.referenceId === withIt.referenceId) return digit; // its own error is the same in both
  const share = (proof: Proof) =>
    Math.max(0, ...proof.takings.filter((t) => t.referenceN > 0).map((t) => t.referenceStandardN / t.referenceN));
  return Math.hypot(digit, share(without), share(withIt));
}

const plain = ({ referenceN, netN }: { referenceN: number; netN: number }) => ({ reference: referenceN, net: netN });

export const noAdapter = () =>
  new AppError("notFound", "There is no such adapter in this data file.", { key: "proof.no.adapter" });

function proofOf(db: Db, proofId: string): Proof {
  const filed = readProof(db, proofId);
  if (filed === undefined)
    throw new AppError("notFound", "There is no such proof in this data file.", { key: "noProof" });
  return filed.proof;
}

/** The rising loads both have, run by run and step by step. */
function pairsOf(
  without: Proof,
  withIt: Proof,
  { adapterId, knownAdapterId }: Parsed<"adapters.factor">,
): AdapterPair[] {
  const isRight = withIt.adapterId === adapterId && without.adapterId === (knownAdapterId ?? null);
  if (without.gaugeId !== withIt.gaugeId || !isRight)
    throw new AppError(
      "invalid",
      "The two proofs must be of one gauge: one with this adapter, one without (or with the known one).",
      {
        key: "proof.notAPair",
        field: "from",
      },
    );
  const before = loadsOf(without);
  return loadsOf(withIt).flatMap(({ run, step, figures }) => {
    const same = before.find((b) => b.run === run && b.step === step);
    return same === undefined ? [] : [{ run, without: same.figures, withIt: figures }];
  });
}

function loadsOf(proof: Proof) {
  return netReadings(readingsOf(proof)).flatMap(({ run, loads }) =>
    loads
      .filter((l) => l.reading.direction === "up" && l.reading.reference > 0)
      .map((l) => ({ run, step: l.reading.step, figures: { reference: l.reading.reference, net: l.net } })),
  );
}

/** A filed proof's readings that count, as the methods take them. */
function readingsOf({ takings }: Proof): ProofReading[] {
  return takings
    .filter((t) => t.replaced === null)
    .map((t) => ({
      reference: t.referenceN,
      indication: t.indicationN,
      direction: t.direction,
      run: t.run,
      step: t.step?.toString(),
      positionDeg: t.positionDeg,
    }));
}
