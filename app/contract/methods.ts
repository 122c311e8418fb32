import type { z } from "zod";
import { backups } from "./backups.ts";
import { measuring } from "./measuring.ts";
import { people } from "./people.ts";
import { program } from "./program.ts";
import { proofs } from "./proofs.ts";
import { records } from "./records.ts";
import { reports } from "./reports.ts";
import { rounds } from "./rounds.ts";
import { support } from "./support.ts";

/** The whole list of calls between a face and the core: `noun.verb` -> input schema and output type. */
export const methods = {
  ...program,
  ...measuring,
  ...records,
  ...reports,
  ...rounds,
  ...proofs,
  ...backups,
  ...people,
  ...support,
} as const;

export type Methods = typeof methods;
export type MethodName = keyof Methods;
/** What a caller writes. */
export type Input<M extends MethodName> = z.input<Methods[M]["input"]>;
/** What the handler gets. */
export type Parsed<M extends MethodName> = z.output<Methods[M]["input"]>;
export type Output<M extends MethodName> = NonNullable<Methods[M]["output"]>;
export type Handlers = { readonly [M in MethodName]: (input: Parsed<M>) => Output<M> | Promise<Output<M>> };
