import { colourOf, propertyOf, type Role, roles, type Theme } from "./roles.ts";

/** Puts the roles' values on the page. Set through the style object, which the page's policy allows. */
export function applyTheme(root: HTMLElement, theme: Theme): void {
  root.dataset.theme = theme;
  root.style.colorScheme = theme;
  for (const role of Object.keys(roles) as Role[]) {
    root.style.setProperty(propertyOf(role), colourOf(role, theme));
  }
}
