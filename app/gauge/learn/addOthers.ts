import { bytesOf } from "../compileFields.ts";
import { LineDecoder } from "../LineDecoder.ts";
import type { LinePattern, PatternField } from "../linePattern.ts";
import { type MainForm, trialOf } from "./mainForm.ts";
import { otherForm } from "./otherForms.ts";
import type { Sample } from "./readSample.ts";
import { clustersOf, type Row, rowsOf } from "./rows.ts";
import type { SampleLine } from "./sampleLines.ts";
import { signatureOf, tokenizer } from "./tokens.ts";
import { isOverloadWord, meaningOf } from "./vocabulary.ts";
import { wholeLines } from "./wholeLines.ts";

/** Lines looked at; a stream that says something else says it often enough to be among them. */
const lineLimit = 20_000;

/** Completes the pattern by what its main form does not read but the gauge means. */
export function addOthers(main: MainForm, sample: Sample): LinePattern {
  const lines = sample.lines.slice(0, lineLimit);
  const split = tokenizer(main.context.mode);
  let grown = main.pattern;
  let rest: readonly SampleLine[] = lines;
  const residual = () => {
    rest = unread(rest, trialOf(grown, main.form)); // what one pattern reads, a richer one reads too
    return rest;
  };
  grown = withInstead(grown, rowsOf(residual(), split, main.ending), main);
  const good = new Set(main.cluster.rows.map((row) => (row.body + row.tail + main.ending.suffix).trim()));
  grown = { ...grown, lines: wholeLines(residual(), good, lines.length) };
  const clusters = clustersOf(rowsOf(residual(), split, main.ending));
  for (const cluster of clusters.slice(0, 12)) {
    const other = otherForm(cluster, main.cluster, main.context, main.form.choice);
    if (other !== undefined && grown.others.length < 12) grown = { ...grown, others: [...grown.others, other] };
  }
  return grown;
}

/** The lines a pattern does not read. */
function unread(lines: readonly SampleLine[], pattern: LinePattern): SampleLine[] {
  const decoder = new LineDecoder({ ...pattern, parity: "none", terminator: "any", afterEnd: 0 });
  let refused = false;
  const refuse = () => {
    refused = true;
  };
  const sink = { reading() {}, rejected: refuse };
  const end = Uint8Array.of(0x0d);
  return lines.filter(({ text }) => {
    refused = false;
    decoder.push(bytesOf(text), sink);
    decoder.push(end, sink);
    return refused;
  });
}

/** Words and dashes that stand where the number would, in lines that are else like the rest. */
function withInstead(pattern: LinePattern, rows: readonly Row[], main: MainForm): LinePattern {
  const place = main.form.choice.force.index;
  const instead: Record<string, "overload" | "underload"> = {};
  for (const row of rows) {
    const token = row.tokens[place];
    if (token === undefined || (token.kind !== "run" && token.kind !== "word")) continue;
    const kinds = signatureOf(row.tokens.map((t, i) => (i === place ? main.cluster.rows[0]!.tokens[place]! : t)));
    if (kinds !== main.cluster.signature) continue;
    if (isOverloadWord(token.text)) instead[token.text] = "overload";
    else if (meaningOf(token.text) === "underload") instead[token.text] = "underload";
  }
  if (Object.keys(instead).length === 0) return pattern;
  const fields = pattern.fields.map(
    (f): PatternField => (f.field === "force" ? { ...f, instead: { ...f.instead, ...instead } } : f),
  );
  return { ...pattern, fields };
}
