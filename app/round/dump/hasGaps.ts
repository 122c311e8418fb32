/** Numbers of records that rise or fall by one, with some left out: those lines were lost. */
export function hasGaps(written: readonly (string | undefined)[]): boolean {
  const numbers = written.flatMap((number) => (number === undefined ? [] : [Number(/\d+/.exec(number)![0])]));
  const steps = numbers.slice(1).map((n, i) => Math.abs(n - numbers[i]!));
  const ones = steps.filter((step) => step === 1).length;
  return ones >= 0.6 * steps.length && steps.some((step) => step > 1 && step < 1000);
}
