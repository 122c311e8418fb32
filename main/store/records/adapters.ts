import type { Adapter } from "../../../app/ledger/register.ts";
import type { Db } from "../db.ts";
import { registered, registeredOne } from "./register.ts";

/** All adapters, retired ones too. */
export const adapterList = (db: Db): Adapter[] => registered(db, "adapter");
export const readAdapter = (db: Db, adapterId: string): Adapter | undefined => registeredOne(db, "adapter", adapterId);
