/** What was stored, by a gauge's word for it (common practice, no source). */
export function kindOf(word: string): "held" | "live" | "other" {
  if (/^(max(imum)?|peak|pk|hold|held|mx|m|p)$/i.test(word)) return "held";
  return /^(live|act(ual)?|now|cur(rent)?|value|l|a|rt|run)$/i.test(word) ? "live" : "other";
}
