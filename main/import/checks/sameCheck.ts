/** Two rows with the same key say the same of one spindle: instant and value, to what a change of unit may round. */
export const sameCheck = (atMs: number, valueN: number): string => `${atMs} ${valueN.toPrecision(9)}`;
