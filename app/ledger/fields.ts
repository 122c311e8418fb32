import { z } from "zod";

/** Small schemas that many records share. Everything is strict: an unknown key is refused, not kept. */
export const id = z.uuidv7();

/** UTC instant with milliseconds, as `Date.prototype.toISOString` writes it. */
export const instant = z.iso.datetime({ precision: 3 });

/** What the wall clock was off from UTC there and then, in minutes east. */
export const offsetMinutes = z.number().int().min(-840).max(840);

/** A plain date in the works' time zone. */
export const plainDate = z.iso.date();

export const name = z.string().trim().min(1, "a name is needed").max(120);
export const note = z.string().max(10_000);
export const reasonText = z.string().trim().min(3, "a reason is needed").max(2_000);
export const forceN = z.number().min(-1e9).max(1e9);
export const positiveN = z.number().positive().max(1e9);
export const fraction = z.number().min(0).max(1);
export const state = z.enum(["inUse", "retired"]);

/** A force unit's symbol; which exist stands in `app/quantity`. */
export const unit = z.string().min(1).max(8);

/**
 * An object of exactly these members. A parsed one has them in canonical order, so that `canonicalJson` finds nothing
 * to sort; declare them in the order that reads best.
 */
export function strict<const Shape extends z.ZodRawShape>(shape: Shape) {
  const names = Object.keys(shape).sort();
  return z.strictObject(Object.fromEntries(names.map((name) => [name, shape[name]])) as unknown as Shape); // the same members
}
