import type { FiledTaking } from "../../../app/ledger/proof.ts";
import type { ProofReading } from "../../../app/proof/data/ProofReading.ts";

/** A taking as the methods read it, in newtons. */
export const asReading = ({
  referenceN,
  indicationN,
  direction,
  run,
  step,
  positionDeg,
}: FiledTaking): ProofReading => ({
  reference: referenceN,
  indication: indicationN,
  direction,
  run,
  step: step === null ? undefined : String(step),
  positionDeg,
});
