import { isSteady } from "./progress.ts";
import { clustersOf, mainCluster, noTail, rowsOf } from "./rows.ts";
import type { SampleLine } from "./sampleLines.ts";
import { type NumberMode, tokenizer } from "./tokens.ts";

/**
 * How this stream writes its numbers: decimal point or comma, and what groups thousands, if anything does. A comma
 * between digits may be a decimal comma, a separator of columns or a thousands mark; the whole sample decides.
 */
export function chooseMode(lines: readonly SampleLine[]): NumberMode {
  const texts = lines.map((line) => line.text);
  const share = (pattern: RegExp) => texts.filter((text) => pattern.test(text)).length / Math.max(1, texts.length);
  const glued = signsBehindDigits(share);
  if (share(/\d'\d{3}/) > 0.02 && groups(texts, "'"))
    return { mark: share(/\d,\d/) > 0.2 ? "," : ".", thousands: "'", glued };
  if (share(/\d,\d/) > 0.02 && groups(texts, ",")) return { mark: ".", thousands: ",", glued };
  if (share(/\d\.\d/) > 0.02 && groups(texts, ".")) return { mark: ",", thousands: ".", glued };
  const mark = share(/\d,\d/) > 0.2 && commaIsDecimal(texts) ? "," : ".";
  const thousands = blankGroups(lines, { mark, thousands: "", glued }) ? " " : "";
  return { mark, thousands, glued };
}

/**
 * Whether a plus or minus right behind digits is the next number's sign. A dash that stands in every line may part
 * anything, as in a date; one that comes and goes, or stands before decimals, is a minus.
 */
function signsBehindDigits(share: (pattern: RegExp) => number): boolean {
  const dashes = share(/\d-\d(?!\d-\d|\d\d-\d)(?<!\d-\d\d?-\d)/);
  return share(/\d\+\d/) > 0.02 || (dashes > 0.02 && dashes < 0.7) || share(/\d-\d+[.,]\d/) > 0.02;
}

/** Whether `mark` groups thousands: always three digits behind it, and below a thousand numbers have none. */
function groups(texts: readonly string[], mark: "," | "." | "'"): boolean {
  const other = mark === "," ? "." : ",";
  const m = mark === "." ? "\\." : mark;
  const good = new RegExp(`^[1-9]\\d{0,2}(${m}\\d{3})+([${other}]\\d+)?$`);
  const small = new RegExp(`^\\d{1,3}([${other}]\\d+)?$`);
  let grouped = 0;
  let plain = 0;
  let wrong = 0;
  for (const text of texts) {
    const tokens = Array.from(text.matchAll(/[.,]?\d(?:[\d.,']*\d)?/g), (found) => found[0]);
    const marked = tokens.filter((token) => token.includes(mark));
    grouped += marked.filter((token) => good.test(token)).length;
    wrong += marked.filter((token) => !good.test(token)).length;
    // Lines without the mark show that smaller numbers go without; a counter beside it in the same line does not.
    if (marked.length === 0 && tokens.some((token) => small.test(token))) plain += 1;
    if (marked.length === 0 && tokens.every((token) => token.length > 3 && !small.test(token))) wrong += 1;
  }
  return grouped > 0 && plain >= Math.max(3, 0.05 * texts.length) && wrong <= 0.05 * (grouped + plain);
}

/** Whether a comma between digits is a decimal comma: it stands nowhere else, its decimals are of one length. */
function commaIsDecimal(texts: readonly string[]): boolean {
  const lengths = new Map<number, number>();
  const before: number[] = [];
  let elsewhere = 0;
  let many = 0;
  for (const text of texts) {
    if (/(^|[^\d]),|,(?!\d)/.test(text)) elsewhere += 1;
    if (/\d,\d+,\d/.test(text)) many += 1;
    const found = /(\d+),(\d+)/.exec(text);
    if (found === null) continue;
    before.push(Number(found[1]));
    lengths.set(found[2]!.length, (lengths.get(found[2]!.length) ?? 0) + 1);
  }
  const oneLength = Math.max(...lengths.values()) >= 0.8 * before.length || lengths.size <= 3;
  // A first column that counts up is a counter or clock, and the comma behind it a separator.
  return elsewhere < 0.3 * texts.length && many < 0.2 * texts.length && oneLength && !isSteady(before);
}

/** Whether blanks group thousands: joining the groups makes lines alike that were not, or the groups never stand alone. */
function blankGroups(lines: readonly SampleLine[], mode: NumberMode): boolean {
  if (lines.filter((line) => /(?<![\d.,])\d{1,3} \d{3}(?!\d)/.test(line.text)).length < 0.02 * lines.length)
    return false;
  const main = (thousands: "" | " ") =>
    mainCluster(clustersOf(rowsOf(lines, tokenizer({ ...mode, thousands }), noTail)));
  const joined = main(" ");
  const apart = main("");
  if (joined === undefined || apart === undefined) return false;
  const groupsSeen = joined.rows.some((row) => row.tokens.some((token) => token.number?.grouped));
  if (groupsSeen && joined.rows.length > apart.rows.length + 0.02 * lines.length) return true;
  return joined.rows.length >= apart.rows.length && groupsSeen && groupsNeverAlone(apart.rows.map((row) => row.body));
}

function groupsNeverAlone(texts: readonly string[]): boolean {
  const pairs = texts.map((text) => /(?<![\d.,])(\d{1,3}) (\d{3})(?!\d)/.exec(text));
  const found = pairs.filter((pair) => pair !== null);
  if (found.length < 0.95 * texts.length || isSteady(found.map((pair) => Number(pair[1])))) return false;
  return found.some((pair) => pair[2]!.startsWith("0"));
}
