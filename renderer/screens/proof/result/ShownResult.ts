import type { ProofPage, RunningProof } from "../../../../app/contract/proofViews.ts";
import { netReadings } from "../../../../app/proof/data/netReadings.ts";
import type { Direction, ProofReading } from "../../../../app/proof/data/ProofReading.ts";
import type { ProofMethod } from "../../../../app/proof/plan/ProofPlan.ts";
import type { ProofResult } from "../../../../app/proof/result/ProofResult.ts";

/** A result with what its charts need beside it, the same for a proof in work and a filed one. */
export type ShownResult = {
  readonly gaugeName: string;
  readonly method: ProofMethod;
  readonly result: ProofResult;
  readonly accreditation: string | undefined;
  /** The day, for names of files. */
  readonly day: string;
  /** Every reading under a rising load that counts, zero taken off, newtons. */
  readonly loads: readonly { readonly run: string; readonly referenceN: number; readonly netN: number }[];
};

type Raw = {
  readonly run: string;
  readonly positionDeg: number;
  readonly direction: Direction;
  readonly step: number | null | undefined;
  readonly referenceN: number;
  readonly indicationN: number;
};

function risingLoads(readings: readonly Raw[]): ShownResult["loads"] {
  const plain = readings.map(
    ({ run, positionDeg, direction, step, referenceN, indicationN }): ProofReading => ({
      run,
      positionDeg,
      direction,
      step: step == null ? undefined : String(step),
      reference: referenceN,
      indication: indicationN,
    }),
  );
  return netReadings(plain).flatMap(({ run, loads }) =>
    loads
      .filter(({ reading }) => reading.direction === "up")
      .map(({ reading, net }) => ({ run, referenceN: reading.reference, netN: net })),
  );
}

export function shownOfFiled({ proof }: ProofPage): ShownResult | undefined {
  if (proof.result === null) return undefined;
  return {
    gaugeName: proof.gauge.name,
    method: proof.plan.method,
    result: proof.result,
    accreditation: proof.accreditation ?? undefined,
    day: proof.on,
    loads: risingLoads(proof.takings.filter(({ replaced }) => replaced === null)),
  };
}

export function shownOfRunning(proof: RunningProof, result: ProofResult, day: string): ShownResult {
  return {
    gaugeName: proof.gauge.name,
    method: proof.plan.method,
    result,
    accreditation: proof.about.accreditation,
    day,
    loads: risingLoads(
      proof.acts.flatMap(({ act, taking }) =>
        act.kind === "read" && taking !== undefined ? [{ ...act, ...taking }] : [],
      ),
    ),
  };
}
