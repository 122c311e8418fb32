import type { LedgerReport } from "../ledger/LedgerReport.ts";
import { verifyFile } from "../ledger/verifyFile.ts";
import type { Watch } from "../ledger/walkSlices.ts";
import { openReader } from "../open.ts";

/** Opens a copy that nobody writes and walks all of it. */
export async function verifyCopy(path: string, watch: Watch): Promise<LedgerReport> {
  const db = openReader(path);
  try {
    return await verifyFile(db, { watch });
  } finally {
    db.close();
  }
}
