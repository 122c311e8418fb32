import type { DamageList } from "../store/ledger/DamageList.ts";

/** What an archive out of a damaged file says of itself, beside the usual page in front. */
export const salvageNotes = ({ kept, count }: DamageList, beyond: number, doubtful: number): string =>
  `This archive was written from a damaged data file. It holds what could be read.

ledger/*.jsonl   of each chain the part that holds from its beginning; it can be taken over again.
beyond.jsonl     ${beyond} entries that are what was filed, but with something before them missing or damaged.
doubtful.jsonl   ${doubtful} entries whose text can be read and is NOT what was filed. Believe nothing in them unchecked.
csv/*.csv        the entries of ledger and beyond.jsonl; none of the doubtful ones.

What is damaged or gone (${count} places${count > kept.length ? `, the first ${kept.length} of them` : ""}):
${kept.map(({ origin, detail }) => `${origin === undefined ? "" : `chain ${origin.slice(0, 8)}, `}${detail}`).join("\n") || "nothing in the entries themselves"}
`;
