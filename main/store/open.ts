import { accessSync, chmodSync, closeSync, constants, existsSync, mkdirSync, openSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import Database from "better-sqlite3";
import type { Db } from "./db.ts";
import { faultOf, inPlainWords } from "./faults.ts";
import { markFile, refuseStrangers } from "./fileMark.ts";
import { damageAtOpening } from "./ledger/damageAtOpening.ts";
import { headKey } from "./ledger/headKey.ts";
import { ownOrigin, thisMachine } from "./ledger/ownOrigin.ts";
import { takeLock } from "./lock.ts";
import { migrate } from "./migrate.ts";
import { steps } from "./migrations/steps.ts";
import { networkShareOf } from "./networkShare.ts";
import { OpenStore } from "./OpenStore.ts";
import { openReader } from "./openReader.ts";
import type { OpenOptions, Store } from "./Store.ts";
import { StoreError } from "./StoreError.ts";

// Who only reads needs no more than that file.
export { openReader };

/** How long a call waits for another connection of this program. The core must not stand still longer. */
const WAIT_MS = 40;

/**
 * Opens a data file, for writing unless told otherwise; makes folder and file when they are not there. A damaged
 * file, or one on a write-protected medium, opens for reading with the reason in `refusal`.
 * @throws StoreError  `locked`, `newer`, `demoMismatch`, `networkShare`; `notFound` when reading only; `readOnly`
 *   when a new file cannot be made; `damaged` when nothing in it can be read
 */
export function openStore(options: OpenOptions): Store {
  const path = resolve(options.path);
  const demo = options.demo ?? false;
  if (options.readOnly === true) return openForReading(path, options, undefined);
  try {
    prepareFolder(path);
    return openForWriting(path, demo, options);
  } catch (cause) {
    const fault = faultOf(cause);
    // A file that is there and "not found" is one beside which nothing can be written.
    if (fault !== "readOnly" && !(fault === "notFound" && existsSync(path))) throw cause;
    if (!existsSync(path)) throw new StoreError("readOnly", cannotMake(path), cause);
    return openForReading(path, options, { code: "readOnly", message: writeProtected(path) });
  }
}

/**
 * A further writing connection of the program that holds the lock: for work in a thread (an import, writing the log
 * back). While it is in a transaction, the store's own writing answers `busy`.
 */
export function openBeside(path: string): Db {
  return inPlainWords(() => withSafety(new Database(path, { fileMustExist: true, timeout: 10_000 })));
}

/** The same as a store, for a job that files. Continues the same chain; gives no lock back when it is closed. */
export function openStoreBeside(options: OpenOptions): Store {
  const db = openBeside(options.path);
  const origin = ownOrigin(db, options.machine ?? thisMachine(), options.now());
  const { path, demo = false } = options;
  return new OpenStore({ path, demo, db, origin, refusal: undefined, options, key: undefined, unlock: () => {} });
}

function openForWriting(path: string, demo: boolean, options: OpenOptions): Store {
  const unlock = takeLock(openPrivately(`${path}.lock`), path);
  try {
    if (existsSync(path) && statSync(path).size > 0) peek(path, demo);
    const db = inPlainWords(() => openWriter(path, demo));
    const damage = damageAtOpening(db);
    if (damage !== undefined) {
      db.close();
      unlock();
      return openForReading(path, options, { code: "damaged", message: damage });
    }
    const machine = options.machine ?? thisMachine();
    const origin = inPlainWords(() => ownOrigin(db, machine, options.now(), options.freshOrigin));
    const key = options.freshOrigin === true ? undefined : headKey(path); // a copy in the making signs nothing yet
    const store = new OpenStore({ path, demo, db, origin, refusal: undefined, options, key, unlock });
    store.signQuietly();
    return store;
  } catch (cause) {
    unlock();
    throw cause;
  }
}

function openWriter(path: string, demo: boolean): Db {
  const db = openPrivately(path, WAIT_MS);
  try {
    withSafety(db);
    markFile(db, demo);
    migrate(db, steps, (version) => `${path}.before-form-${version + 1}`);
    return db;
  } catch (cause) {
    db.close();
    throw cause;
  }
}

function withSafety(db: Db): Db {
  db.pragma("journal_mode = WAL");
  db.pragma("synchronous = FULL");
  db.pragma("foreign_keys = ON");
  db.pragma("trusted_schema = OFF");
  db.pragma("cell_size_check = ON");
  db.pragma("journal_size_limit = 8388608");
  return db;
}

function openForReading(path: string, options: OpenOptions, why: Store["refusal"]): Store {
  if (!existsSync(path)) {
    throw new StoreError("notFound", `There is no data file at ${path}. Check the name; nothing was made.`);
  }
  const db = openReader(path);
  try {
    refuseStrangers(db, path, options.demo ?? false);
  } catch (cause) {
    db.close();
    throw cause;
  }
  const refusal = why ?? { code: "readOnly" as const, message: "The data file was opened for reading only." };
  return new OpenStore({
    path,
    demo: options.demo ?? false,
    db,
    origin: undefined,
    refusal,
    options,
    key: undefined,
    unlock: () => {},
  });
}

/** A look before anything is touched: a file that is not ours to open stays as it is, to the byte. */
function peek(path: string, demo: boolean): void {
  const db = openReader(path);
  try {
    refuseStrangers(db, path, demo);
  } finally {
    db.close();
  }
}

function prepareFolder(path: string): void {
  const folder = dirname(path);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  accessSync(folder, constants.W_OK);
  if (existsSync(path)) accessSync(path, constants.W_OK);
  const share = networkShareOf(folder);
  if (share === undefined) return;
  throw new StoreError(
    "networkShare",
    `The data file ${path} lies on a network share (${share}). The database needs shared memory that only a disk of this computer ` +
      "has, and two computers would damage it. Keep the data file on this computer; backups may go to the share.",
  );
}

/** Only this user may read what lies here: the file is made with its rights before SQLite opens it. */
function openPrivately(path: string, timeout = 0): Db {
  if (!existsSync(path)) closeSync(openSync(path, "a", 0o600));
  else if (process.platform !== "win32" && (statSync(path).mode & 0o077) !== 0) chmodSync(path, 0o600);
  return new Database(path, { timeout });
}

const cannotMake = (path: string) =>
  `A data file cannot be made at ${path}: this user may not write there. Choose another place with HOLDFAST_HOME, or give the right to write.`;

const writeProtected = (path: string) =>
  `The data file ${path} cannot be written: the file, its folder or its disk is write-protected. It was opened for reading.`;
