import { z } from "zod";
import { id, instant, offsetMinutes } from "./fields.ts";
import { type Body, type Kind, kinds } from "./kinds.ts";

/** What stands around every body. `prev` is the hash of the entry before in the same origin's chain. */
export const envelope = z.strictObject({
  v: z.literal(1),
  origin: z.uuid(),
  seq: z.number().int().min(1),
  id,
  kind: z.enum(Object.keys(kinds) as [Kind, ...Kind[]]), // keys of an object literal: at least one
  at: instant,
  offsetMinutes,
  prev: z.string().regex(/^[0-9a-f]{64}$/),
  body: z.record(z.string(), z.json()),
});

/** One ledger entry. Its canonical form (RFC 8785) is what is hashed and stored. */
export type Entry<K extends Kind = Kind> = {
  readonly v: 1;
  readonly origin: string;
  readonly seq: number;
  readonly id: string;
  readonly kind: K;
  readonly at: string;
  readonly offsetMinutes: number;
  readonly prev: string;
  readonly body: Body<K>;
};
