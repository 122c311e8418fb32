/** The address every page of ours has; nothing else may be shown or talk to the core. */
export const PAGE_ORIGIN = "app://holdfast";
