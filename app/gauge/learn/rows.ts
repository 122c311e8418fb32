import type { SampleLine } from "./sampleLines.ts";
import { shapes, signatureOf, type Token } from "./tokens.ts";

/** A line in its tokens. `body` is the line without its checksum and end bytes. */
export type Row = {
  readonly body: string;
  readonly tail: string;
  readonly order: number;
  readonly tokens: readonly Token[];
};

/** Lines that have the same kinds of tokens in the same order. */
export type Cluster = { readonly signature: string; readonly rows: readonly Row[] };

/** What ends every line before its terminator: a check of `tail` characters, then fixed control characters. */
export type LineTail = { readonly tail: number; readonly suffix: string };

export const noTail: LineTail = { tail: 0, suffix: "" };

export function rowsOf(lines: readonly SampleLine[], split: (line: string) => Token[], ending: LineTail): Row[] {
  const rows: Row[] = [];
  for (const { text, order } of lines) {
    if (!text.endsWith(ending.suffix)) continue;
    const end = text.length - ending.suffix.length;
    if (end < ending.tail) continue;
    const body = text.slice(0, end - ending.tail);
    rows.push({ body, tail: text.slice(end - ending.tail, end), order, tokens: split(body) });
  }
  return rows;
}

/** Clusters of the rows, largest first. */
export function clustersOf(rows: readonly Row[]): Cluster[] {
  const bySignature = new Map<string, Row[]>();
  for (const row of rows) {
    const signature = signatureOf(row.tokens);
    const known = bySignature.get(signature);
    if (known === undefined) bySignature.set(signature, [row]);
    else known.push(row);
  }
  return [...bySignature]
    .map(([signature, list]) => ({ signature, rows: list }))
    .sort((a, b) => b.rows.length - a.rows.length);
}

/**
 * The cluster that holds the readings: the largest with a number in it, but not an echoed request whose digits
 * never change while another cluster's do.
 */
export function mainCluster(clusters: readonly Cluster[]): Cluster | undefined {
  const numeric = clusters.filter((c) => c.signature.includes(shapes.number));
  const first = numeric[0];
  if (first === undefined || distinct(first) > 1) return first;
  return (
    numeric.find((c) => distinct(c) > 1 && c.rows.length >= 0.3 * first.rows.length) ??
    withDecimals(numeric, first) ??
    first
  );
}

/** Of two that never change, a number with decimals is no request. */
const withDecimals = (clusters: readonly Cluster[], first: Cluster) =>
  clusters.find((c) => c.rows.length >= 0.5 * first.rows.length && c.rows[0]!.tokens.some((t) => t.number?.mark));

const distinct = (cluster: Cluster) => new Set(cluster.rows.map((row) => row.body)).size;
