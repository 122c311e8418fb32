import type { StoredPattern } from "../../../app/ledger/register.ts";
import type { Db } from "../db.ts";
import { registered, registeredOne } from "./register.ts";

export const patternList = (db: Db): StoredPattern[] => registered(db, "linePattern");
export const readPattern = (db: Db, patternId: string): StoredPattern | undefined =>
  registeredOne(db, "linePattern", patternId);
