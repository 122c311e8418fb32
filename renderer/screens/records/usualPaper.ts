/** What this PC's printer is likely loaded with, by where its language is spoken. */
export const usualPaper = (): "A4" | "Letter" => (/-(US|CA|MX)$/.test(navigator.language) ? "Letter" : "A4");
