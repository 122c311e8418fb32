import { z } from "zod";
import { id } from "../ledger/fields.ts";
import { type Right, rights } from "../people/rights.ts";
import { method } from "./method.ts";
import type { OperatorView } from "./recordViews.ts";

const right = z.enum(Object.keys(rights) as [Right, ...Right[]]); // keys of an object literal: at least one

/** Digits, so that a glove on a number pad can give it. */
export const pin = z.string().regex(/^\d{4,8}$/, "a PIN is four to eight digits");
const tried = z.string().max(8);

/** Calls about people: who says yes to an act, PINs, and names that are to go. */
export const people = {
  /** Somebody says yes to the next act of a kind, with the PIN where one is set. It has to follow within a minute. */
  "people.confirm": method<{ readonly done: true }>()(z.strictObject({ operatorId: id, right, pin: tried.optional() })),
  /** Sets a PIN, or takes it away with null. Whose it is gives the old one; a keeper resets one that was forgotten. */
  "people.setPin": method<OperatorView>()(
    z.strictObject({ operatorId: id, pin: pin.nullable(), oldPin: tried.optional() }),
  ),
  /** Takes a name out of the file for good: initials stay in its place, or nothing. What was filed stays under the number. */
  "people.hide": method<OperatorView>()(z.strictObject({ operatorId: id, how: z.enum(["initials", "erase"]) })),
} as const;
