/** Uniform numbers between 0 and 1, ends left out, the same for the same seed (linear congruential, Numerical Recipes 2nd ed. 7.1). */
export function seededUniform(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}

/** Standard normal numbers from them (Box and Muller). */
export function seededNormal(seed: number): () => number {
  const uniform = seededUniform(seed);
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
