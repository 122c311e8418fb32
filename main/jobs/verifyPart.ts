import { DamageList } from "../store/ledger/DamageList.ts";
import { type Work, walkSlices } from "../store/ledger/walkSlices.ts";
import { definePart } from "./Job.ts";

/** A second pair of hands for `verify`: takes slices of the same walk until none are left. */
export const job = definePart((work: Work, { db, goOn }) => {
  const damage = new DamageList();
  const walked = walkSlices(db, work, damage, { goOn, progress: () => {} });
  return { ...walked, damage: { kept: damage.kept, count: damage.count } };
});
