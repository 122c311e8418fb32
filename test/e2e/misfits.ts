import type { Page } from "playwright-core";

/**
 * What does not fit the window: what reaches past its edges, acts that must be scrolled to sideways, words that are cut off, acts
 * too low to be hit (WCAG 2.2, 2.5.8: 24 pixels). Each named as a reader would name it.
 */
export function misfitsOf(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const said: string[] = [];
    const name = (element: Element) => {
      const words = (element.getAttribute("aria-label") ?? element.textContent ?? "").trim().replace(/\s+/g, " ");
      return `${element.tagName.toLowerCase()}${element.className ? `.${String(element.className).split(" ")[0]}` : ""} “${words.slice(0, 40)}”`;
    };
    const root = document.scrollingElement!;
    if (root.scrollWidth > width) said.push(`the page scrolls sideways: ${root.scrollWidth} in ${width}`);
    /** Within what scrolls by itself, such as a wide table of figures or a chart. */
    const scrolls = (element: Element | null): boolean =>
      element !== null &&
      element !== document.body &&
      (/auto|scroll/.test(getComputedStyle(element).overflowX) || scrolls(element.parentElement));
    for (const element of document.querySelectorAll("main *, nav *, .banner *, .tour *, dialog[open] *")) {
      const style = getComputedStyle(element);
      const box = element.getBoundingClientRect();
      if (box.width === 0 || box.height === 0 || style.visibility === "hidden") continue;
      if (element.closest(".unseen, .skip, svg, canvas, select") !== null) continue;
      const past = Math.round(Math.max(box.right - width, -box.left));
      const isAct = element.matches("button, a, input, select, textarea");
      if (past > 1 && (isAct || !scrolls(element.parentElement)))
        said.push(`${name(element)} reaches ${past} px past the window`);
      const cut = element.scrollWidth - element.clientWidth;
      if (cut > 1 && /hidden|clip/.test(style.overflowX) && element.clientWidth > 0)
        said.push(`${name(element)} is cut by ${cut} px`);
      if (isAct && !element.matches("a:not(.button), [type=checkbox], [type=radio]") && box.height < 24)
        said.push(`${name(element)} is only ${Math.round(box.height)} px high`);
    }
    return [...new Set(said)];
  });
}
