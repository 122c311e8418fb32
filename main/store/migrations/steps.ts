import type { Migration } from "../migrate.ts";
import { first } from "./0001-first.ts";
import { checkTerms } from "./0002-check-terms.ts";
import { proofs } from "./0003-proofs.ts";

/** Every schema step ever shipped, in order. A shipped step is never edited; the schema only grows. */
export const steps: readonly Migration[] = [first, checkTerms, proofs];
