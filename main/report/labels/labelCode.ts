/** What a label stands on. */
export type LabelKind = "spindle" | "adapter" | "gauge";

const letters = { spindle: "S", adapter: "A", gauge: "G" } as const;

/**
 * What the code on a label holds: `HF:`, the letter of its kind, `:`, the record's id in capitals. No name, no place and no
 * figure: an id says nothing without the records. Capitals, digits, colon and hyphen are the alphanumeric set of
 * ISO/IEC 18004, which makes the code small.
 */
export const labelCode = (kind: LabelKind, id: string): string => `HF:${letters[kind]}:${id.toUpperCase()}`;
