/** A line of a block in two: the word it begins with, and what it says. */
export function labelled(line: string): { readonly label: string; readonly cell: string } {
  const found = /^([\p{L}][\p{L}. ]*?)[.:=]?\s+(.*\d.*|-+|OL)$/u.exec(line);
  return found === null ? { label: "", cell: line.trim() } : { label: found[1]!, cell: found[2]!.trim() };
}

/**
 * The cells of a record that stands on several lines, in the order of the fields; empty where the block has no such line.
 * The word before a figure may itself say something (`Peak 17.92 kN`): a field whose labels are marked with `=` takes the
 * word instead of the figure.
 * @param labels  for each field the words its line may begin with
 */
export function blockCells(block: string, labels: readonly (readonly string[])[]): string[] {
  const lines = block.split("\n").map(labelled);
  return labels.map((words) => {
    const takesWord = words.some((word) => word.startsWith("="));
    const line = lines.find(({ label }) => words.includes(takesWord ? `=${label}` : label));
    return line === undefined ? "" : takesWord ? line.label : line.cell;
  });
}
