import { colourOf, type Role, roles, type Theme } from "../ui/theme/roles.ts";

export type Colours = Readonly<Record<Role, string>>;

const made = new Map<Theme, Colours>();

/** The roles as plain colours, for canvas. One object a theme. */
export function coloursOf(theme: Theme): Colours {
  let colours = made.get(theme);
  if (colours === undefined) {
    const entries = (Object.keys(roles) as Role[]).map((role) => [role, colourOf(role, theme)]);
    colours = Object.fromEntries(entries) as Colours; // every role
    made.set(theme, colours);
  }
  return colours;
}

export const CHART_FONT = '"Atkinson Hyperlegible Next Variable", system-ui, sans-serif';
