/** Why bytes are no table with a head; the message goes on from the file's name and a colon. */
export class TableError extends Error {
  override name = "TableError";
}
