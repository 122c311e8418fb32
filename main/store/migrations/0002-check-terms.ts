import type { Migration } from "../migrate.ts";
import { fillTerms } from "../projections/checkTerms.ts";

/**
 * What judging a check anew needs of it, small enough to go through all checks at once: a check's body is packed, and
 * unpacking a hundred thousand of them takes many times as long as judging them.
 */
export const checkTerms: Migration = {
  version: 2,
  up(db) {
    db.exec(`
      CREATE TABLE check_terms (
        n INTEGER PRIMARY KEY,
        terms TEXT NOT NULL,
        sum INTEGER NOT NULL
      ) STRICT;
    `);
    fillTerms(db);
  },
};
