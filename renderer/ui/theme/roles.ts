/**
 * What a screen may name: a role, never a colour. Each has its value on light and on dark paper. Words and marks reach their
 * contrast on `ground`, `sheet` and `raised`; the five verdict colours are apart for eyes without one kind of cone
 * (both computed in `test/renderer/ui`). Chart and style sheet read the same values.
 */
export const roles = {
  /** Behind everything. */
  ground: ["#f3f1ea", "#13171b"],
  /** What is written on: cards, tables, charts. */
  sheet: ["#fcfbf7", "#1a2026"],
  /** Under the pointer, or chosen. */
  raised: ["#e9e6dc", "#262e36"],
  ink: ["#1c2126", "#eceae3"],
  soft: ["#4f565e", "#a9b2bc"],
  /** Hairlines that carry no meaning. */
  line: ["#d5d0c3", "#37404a"],
  /** Borders one has to see: fields, buttons, the axis. */
  edge: ["#7d7a6e", "#7b8792"],
  action: ["#1d4f6e", "#8cc7e6"],
  onAction: ["#ffffff", "#10202b"],
  focus: ["#1c2126", "#eceae3"],
  good: ["#0f6a9a", "#4cc4f5"],
  watch: ["#8c5e00", "#f3d48a"],
  act: ["#80200e", "#ff7236"],
  stop: ["#4a1745", "#c98bb6"],
  cannotTell: ["#565b60", "#cfd5db"],
  bandGood: ["#0f6a9a14", "#4cc4f51a"],
  bandWatch: ["#c79a1c33", "#f3d48a29"],
  bandStop: ["#7c1d581f", "#c98bb62b"],
  /** Between the page and a dialog. */
  veil: ["#1c212680", "#05070999"],
} as const satisfies Record<string, readonly [light: string, dark: string]>;

export type Role = keyof typeof roles;
export type Theme = "light" | "dark";

export function colourOf(role: Role, theme: Theme): string {
  return roles[role][theme === "light" ? 0 : 1];
}

/** `bandGood` as the style sheets know it: `--band-good`. */
export function propertyOf(role: Role): string {
  return `--${role.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)}`;
}
