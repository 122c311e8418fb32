import { z } from "zod";
import { id } from "../ledger/fields.ts";
import { referenceFields, rigWeight } from "../ledger/proof.ts";

/**
 * A reference as a page sends it: figures of weights and place may be anything that is a number, so that the core can say what is wrong
 * with them in words of the trade (mass 0, latitude 91).
 */
const figure = z.number();

const weight = rigWeight.extend({
  massKg: figure,
  massStandardKg: figure,
  densityKgM3: figure,
  densityStandardKgM3: figure,
});

const { weights } = referenceFields.shape;

export const looseReference = referenceFields.extend({
  referenceId: id.optional(),
  weights: weights
    .unwrap()
    .extend({ weights: z.array(weight).min(1, "a rig has at least one weight").max(60) })
    .optional(),
});
