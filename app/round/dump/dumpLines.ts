/**
 * The non-empty lines of a dump with their numbers, control characters around them taken off.
 * @param blocks  lines up to an empty one belong together: they come as one, with line feeds between
 * @returns  `cut`: there are line ends, and the last line has none
 */
export function dumpLines(
  text: string,
  blocks = false,
): {
  readonly lines: readonly Line[];
  readonly cut: boolean;
} {
  const parts = text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
  const lines = parts.flatMap((part, i) => {
    const raw = part.replace(control, "");
    return raw.trim() === "" ? [] : [{ line: i + 1, raw }];
  });
  if (blocks) return { lines: inBlocks(lines), cut: !/(\r\n|\n|\r)\s*$/.test(text) && lines.length > 0 };
  return { lines, cut: parts.length > 1 && parts.at(-1)!.replace(control, "").trim() !== "" && !endsAlike(lines) };
}

type Line = { readonly line: number; readonly raw: string };

function inBlocks(lines: readonly Line[]): readonly Line[] {
  const blocks: { line: number; raw: string; last: number }[] = [];
  for (const { line, raw } of lines) {
    const open = blocks.at(-1);
    if (open === undefined || line > open.last + 1) blocks.push({ line, raw, last: line });
    else {
      open.raw += `\n${raw}`;
      open.last = line;
    }
  }
  return blocks;
}

/** All but the tab, which separates cells. */
const control = /^(?:(?!\t)\p{Cc})+|(?:(?!\t)\p{Cc})+$/gu;

/** A file may end without a line end; then its last line is as long as the others, or nearly. */
function endsAlike(lines: readonly Line[]): boolean {
  if (lines.length < 2) return true;
  const lengths = lines.slice(0, -1).map((l) => l.raw.length);
  return lines.at(-1)!.raw.length >= Math.min(...lengths.slice(-5));
}
