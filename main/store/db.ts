import type BetterSqlite3 from "better-sqlite3";

/** An open connection, as the reading functions take it: the store's own, or a job's read-only one. */
export type Db = BetterSqlite3.Database;

const known = new WeakMap<Db, Map<string, BetterSqlite3.Statement<unknown[], unknown>>>();

/** The statement for `sql` on this connection, compiled once. Rows are typed by the caller, who wrote the SELECT. */
export function prepared<Row = unknown>(db: Db, sql: string): BetterSqlite3.Statement<unknown[], Row> {
  let statements = known.get(db);
  if (statements === undefined) {
    statements = new Map();
    known.set(db, statements);
  }
  let statement = statements.get(sql);
  if (statement === undefined) {
    statement = db.prepare<unknown[], unknown>(sql);
    statements.set(sql, statement);
  }
  return statement as BetterSqlite3.Statement<unknown[], Row>; // the SQL beside the call says what a row holds
}
