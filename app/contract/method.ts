import { z } from "zod";

/**
 * One call of the contract. The input is checked at the border; the output is the core's own and is
 * carried as a type only: checking it again would cost more than it could find.
 */
export type Method<I extends z.ZodType, O> = { readonly input: I; readonly output?: O };

export function method<O>() {
  return <I extends z.ZodType>(input: I): Method<I, O> => ({ input });
}

export const nothing = z.strictObject({});
