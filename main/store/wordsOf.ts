/** What was thrown, in its own words. */
export const wordsOf = (cause: unknown): string => (cause instanceof Error ? cause.message : String(cause));
