/** The languages everything is written in, on screen and on paper. */
export type Language = "en" | "de";
