/** Ids in the form of UUIDv7, counted: the same run gives the same ids. */
export function idsFrom(start: number): () => string {
  let n = start;
  return () => {
    n += 1;
    return `0198a000-0000-7000-8000-${n.toString(16).padStart(12, "0")}`;
  };
}
