import type { z } from "zod";
import { measuring } from "./measuring.ts";
import { program } from "./program.ts";
import { records } from "./records.ts";
import { reports } from "./reports.ts";
import { rounds } from "./rounds.ts";

/** The whole list of calls between a face and the core: `noun.verb` -> input schema and output type. */
export const methods = { ...program, ...measuring, ...records, ...reports, ...rounds } as const;

export type Methods = typeof methods;
export type MethodName = keyof Methods;
/** What a caller writes. */
export type Input<M extends MethodName> = z.input<Methods[M]["input"]>;
/** What the handler gets. */
export type Parsed<M extends MethodName> = z.output<Methods[M]["input"]>;
export type Output<M extends MethodName> = NonNullable<Methods[M]["output"]>;
export type Handlers = { readonly [M in MethodName]: (input: Parsed<M>) => Output<M> | Promise<Output<M>> };
