/** The page in front: what this archive is, for somebody who has nothing but it. */
export const readmeText = (about: { program: string; madeAt: string; withWaveforms: boolean }): string =>
  `Holdfast archive
Made ${about.madeAt} by Holdfast ${about.program}.

ledger/*.jsonl     Every entry that was ever filed, one a line, in canonical JSON (RFC 8785), UTF-8. SHA-256 over a
                   line without its line end is the entry's hash; "prev" names the hash of the entry before in the same
                   origin's chain, 64 zeros for the first. Files in the order of their numbers.
archive.json       What there is: the stretches of the ledger, where each origin's chain ends, signed heads (Ed25519
                   over the canonical JSON of at, hash, origin and seq).
csv/*.csv          The same as tables (RFC 4180, UTF-8), one for each kind of record, for reading in other programs.
csv-metadata.json  What the columns are (W3C CSV on the Web).
${
  about.withWaveforms
    ? `waveforms.jsonl    The readings of each cycle as they are stored (base64), named by hash in their check;
                   csv/waveform.csv has the same as numbers.
`
    : "Readings of the single cycles were left out of this archive.\n"
}
Names and PINs of operators are not in here; the ledger knows people by id only.
"holdfast import" takes the ledger over again, entry by entry, with the same hashes. The chain finds accidents and naive
edits; whoever holds both the file and its key can write both anew.
`;
