import { type Taper, tapers } from "./tapers.ts";

/**
 * The taper a text means, however it is written: "hsk a 63", "HSK-A63", "HSK 63A", "ISO 12164-1 A63", "SK 40", "7/24 No. 40",
 * "DIN 69871 A 40", "BT 40" (ISO 7388-2 form J), "CAT 40" (ISO 7388-1 form U), "PSC 63".
 * @returns  undefined for a text that names none of the standard ones; users may keep names of their own
 */
export function readTaper(text: string): Taper | undefined {
  const plain = plainTaper(text);
  for (const { pattern, name } of spellings) {
    const match = pattern.exec(plain);
    if (match === null) continue;
    const designation = name(match.groups ?? {});
    return tapers.find((taper) => taper.designation === designation);
  }
  return undefined;
}

/** Capitals and digits alone, so that blanks, hyphens and "No." do not tell two spellings apart. */
export function plainTaper(text: string): string {
  return text
    .normalize("NFKC")
    .toUpperCase()
    .replace(/\b7\s*[/:]\s*24\b/g, "SK")
    .replace(/\bNO\b\.?/g, "")
    .replace(/[^A-Z0-9]/g, "");
}

type Groups = Readonly<Record<string, string | undefined>>;
type Spelling = { readonly pattern: RegExp; readonly name: (groups: Groups) => string };

const hollow = ({ form, size }: Groups) => `HSK-${form}${size}`;
const steep = (form: string, size: string | undefined) => `SK${size}${form && `-${form}`}`;

const spellings: readonly Spelling[] = [
  { pattern: /^(?:(?:ISO12164|DIN69893)\d?)?(?:HSK)?(?<form>[A-FT])(?<size>\d{2,3})$/, name: hollow },
  { pattern: /^(?:(?:ISO12164|DIN69893)\d?)?HSK(?<size>\d{2,3})(?<form>[A-FT])$/, name: hollow },
  {
    pattern: /^ISO7388[12]?(?:SK)?(?<form>[AUJ][DF]?)(?<size>\d\d)$/,
    name: ({ form = "", size }) => steep(form, size),
  },
  { pattern: /^(?:SK|ISO)(?<size>\d\d)(?<form>(?:[AUJ][DF]?)?)$/, name: ({ form = "", size }) => steep(form, size) },
  { pattern: /^ISO7388[12]?(?:SK)?(?<size>\d\d)$/, name: ({ size }) => steep("", size) },
  {
    pattern: /^(?:DIN69871)(?:SK)?(?<form>A[DF]?)(?:SK)?(?<size>\d\d)$/,
    name: ({ form = "", size }) => steep(form, size),
  },
  { pattern: /^(?:MAS)?BT(?<size>\d\d)$/, name: ({ size }) => steep("J", size) },
  { pattern: /^CAT(?<size>\d\d)$/, name: ({ size }) => steep("U", size) },
  { pattern: /^(?:ISO26623\d?)?PSC(?<size>\d{2,3})$/, name: ({ size }) => `PSC${size}` },
];
