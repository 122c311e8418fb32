import type { LinePattern } from "../linePattern.ts";
import { buildAside, buildForm, type FormContext } from "./buildForm.ts";
import type { FoundChecksum } from "./checksumTrials.ts";
import type { Choice } from "./chooseForce.ts";
import { type Column, columnsOf } from "./columns.ts";
import { established } from "./established.ts";
import { sameChecksum } from "./findChecksum.ts";
import { typicalStep } from "./progress.ts";
import type { Cluster, Row } from "./rows.ts";
import { meaningOf } from "./vocabulary.ts";

type OtherForm = LinePattern["others"][number];

/**
 * The form of a cluster of lines the main form does not read, or undefined when they may as well be damaged lines: what a
 * gauge says on purpose has settled words, comes in a row or with a word that means something, and is not the main
 * form with a piece cut off or one character changed.
 */
export function otherForm(
  cluster: Cluster,
  main: Cluster,
  context: FormContext,
  mainChoice: Choice,
): OtherForm | undefined {
  if (
    cluster.signature === main.signature ||
    cluster.rows.length < 3 ||
    !settled(cluster) ||
    isOneOff(cluster.rows, main.rows)
  )
    return undefined;
  const checksum = context.checksum === undefined ? undefined : sameChecksum(cluster, context.checksum);
  if (context.checksum !== undefined && !sameSpan(context.checksum, checksum, main, cluster)) return undefined;
  const own = { ...context, checksum };
  const cut = main.signature.startsWith(cluster.signature) || main.signature.endsWith(cluster.signature);
  const form = buildForm(cluster, own);
  // A dash right before the number that the main form does not have may be its sign.
  if (form !== undefined && textBefore(form.choice.force, cluster).endsWith("-")) return undefined;
  const reads =
    form !== undefined &&
    form.choice.torque === undefined &&
    (form.choice.unit !== undefined) === (mainChoice.unit !== undefined);
  // What lacks the place of the force is cut, however often it came.
  if (cut && (form === undefined || !samePlace(form.choice.force, mainChoice.force, cluster, main))) return undefined;
  const enough = cluster.rows.length >= Math.max(8, 0.02 * main.rows.length);
  if (reads && (cut ? enough && inRows(cluster) : inRows(cluster) || says(cluster, main)))
    return { means: "reading", fields: [...form.fields] };
  if (cut || newWords(cluster, main).length === 0) return undefined;
  return { means: "aside", fields: [...buildAside(cluster, own)] };
}

/** One gauge checks the same stretch of each of its lines, from the same place and to the same place before the end. */
function sameSpan(wanted: FoundChecksum, found: FoundChecksum | undefined, main: Cluster, cluster: Cluster): boolean {
  const toEnd = (to: number, rows: readonly Row[]) => 2 * rows[0]!.tokens.length - to;
  return found?.from === wanted.from && toEnd(found.to, cluster.rows) === toEnd(wanted.to, main.rows);
}

const textBefore = (force: Column, { rows }: Cluster) => rows[0]!.body.slice(0, rows[0]!.tokens[force.index]!.at);

/** Whether the force of a cut form stands where the main form has it: from the line's beginning, or from its end. */
function samePlace(force: Column, mainForce: Column, cluster: Cluster, main: Cluster): boolean {
  const fromEnd = (column: Column, { rows }: Cluster) => rows[0]!.tokens.length - column.index;
  const ahead = !main.signature.startsWith(cluster.signature) || force.index === mainForce.index;
  const behind = !main.signature.endsWith(cluster.signature) || fromEnd(force, cluster) === fromEnd(mainForce, main);
  return ahead && behind;
}

/** Every column of words keeps to a few words. */
function settled(cluster: Cluster): boolean {
  return columnsOf(cluster).every((column) => {
    if (column.kind !== "word") return true;
    const texts = column.tokens.map((token) => token.text);
    const kept = cluster.rows.length < 8 ? new Map(mostOften(texts)) : established(texts);
    return texts.filter((text) => kept.has(text)).length >= 0.85 * texts.length;
  });
}

/** Of a few lines, the words that come twice at least. */
function mostOften(texts: readonly string[]): [string, number][] {
  return texts
    .map((text): [string, number] => [text, texts.filter((t) => t === text).length])
    .filter(([, n]) => n >= 2);
}

/** Damaged lines stand alone; lines of another form have neighbours of their kind. */
function inRows({ rows }: Cluster): boolean {
  const pace = typicalStep(rows.map((row) => row.order));
  const near = rows.filter(
    (row, i) => row.order - (rows[i - 1]?.order ?? -1e9) <= 2 || (rows[i + 1]?.order ?? 1e9) - row.order <= 2,
  );
  if (rows.length < 5) return false;
  const even = rows.filter((row, i) => i > 0 && row.order - rows[i - 1]!.order === pace);
  return near.length >= 0.5 * rows.length || even.length >= 0.8 * (rows.length - 1);
}

/** A word that means something and that the main form never has. */
const says = (cluster: Cluster, main: Cluster) => newWords(cluster, main).some((word) => meaningOf(word) !== undefined);

/** Words of two letters or more that every line of the cluster has and the main form never. */
function newWords(cluster: Cluster, main: Cluster): string[] {
  const known = new Set(main.rows.flatMap((row) => row.tokens.map((token) => token.text)));
  const words = columnsOf(cluster).flatMap((c) => (c.kind === "word" && c.constant !== undefined ? [c.constant] : []));
  return words.filter((word) => word.length > 1 && !known.has(word));
}

/** Whether most rows are a main row with one character changed, and not always the same change. */
function isOneOff(rows: readonly Row[], main: readonly Row[]): boolean {
  const shapes = [...new Set(main.slice(0, 2000).map((row) => shapeOf(row.body)))];
  const changes = rows.map((row) => changeOf(shapeOf(row.body), shapes)).filter((change) => change !== undefined);
  if (changes.length < 0.5 * rows.length) return false;
  const counts = new Map<string, number>();
  for (const change of changes) counts.set(change, (counts.get(change) ?? 0) + 1);
  return Math.max(...counts.values()) < 0.7 * changes.length || rows.length < 5;
}

/** Digits and signs made alike, the rest as it stands. */
const shapeOf = (text: string) => text.replace(/\d/g, "9").replace(/[+-]/g, "+");

function changeOf(shape: string, shapes: readonly string[]): string | undefined {
  for (const other of shapes) {
    if (other.length !== shape.length) continue;
    let at = -1;
    let off = 0;
    for (let i = 0; i < shape.length && off < 2; i += 1) {
      if (shape[i] === other[i]) continue;
      off += 1;
      at = i;
    }
    if (off === 1) return `${at}${shape[at]}`;
  }
  return undefined;
}
