/** What a backup is called: which data, whose chain (its first eight digits), when. */
export type BackupName = { readonly demo: boolean; readonly origin: string; readonly atMs: number };

const pattern = /^(holdfast|demo)-([0-9a-f]{8})-(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z\.sqlite$/;

/** UTC in the name, so that the names sort by time and mean the same on every computer. */
export function backupName({ demo, origin, atMs }: BackupName): string {
  const stamp = new Date(atMs).toISOString().slice(0, 19).replace(/[-:]/g, "");
  return `${demo ? "demo" : "holdfast"}-${origin.slice(0, 8)}-${stamp}Z.sqlite`;
}

/** Reads a name back; undefined for a file that is no backup of ours. `origin` is its first eight digits. */
export function readBackupName(name: string): BackupName | undefined {
  const m = pattern.exec(name);
  if (m === null) return undefined;
  const atMs = Date.parse(`${m[3]}-${m[4]}-${m[5]}T${m[6]}:${m[7]}:${m[8]}.000Z`);
  return Number.isNaN(atMs) ? undefined : { demo: m[1] === "demo", origin: m[2]!, atMs };
}
