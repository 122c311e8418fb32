/** The hash a chain starts from. */
export const GENESIS = "0".repeat(64);
