import type { Migration } from "../migrate.ts";
import { first } from "./0001-first.ts";

/** Every schema step ever shipped, in order. A shipped step is never edited; the schema only grows. */
export const steps: readonly Migration[] = [first];
