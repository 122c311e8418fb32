import type { Works } from "../../../app/ledger/register.ts";
import type { Db } from "../db.ts";
import { registered, registeredOne } from "./register.ts";

/** The works as last described; undefined before the first start is through. */
export const readWorks = (db: Db): Works | undefined => registeredOne(db, "works", "works");

/** Settings that affect a verdict and belong to no record, by key. */
export const readSettings = (db: Db): Readonly<Record<string, unknown>> =>
  Object.fromEntries(registered(db, "setting").map(({ key, value }) => [key, value]));
