import type { Page } from "playwright-core";

/** What a screen reader is handed: each text a live region comes to hold. A region that comes with its words in it counts as `mounted`. */
export type Said = { readonly text: string; readonly mounted: boolean };

type Listening = Window & { holdfastSaid?: Said[] };

/** Begins to note what live regions come to say. @see WAI-ARIA 1.2, aria-live and the roles that imply it (status, alert) */
export async function listenToRegions(page: Page): Promise<void> {
  await page.evaluate(() => {
    const said: Said[] = [];
    (window as Listening).holdfastSaid = said;
    const isLive = (one: Element) => {
      const live = one.getAttribute("aria-live");
      if (live !== null) return live !== "off";
      return one.matches("output, [role=status], [role=alert]");
    };
    const regionOf = (node: Node) => {
      let one = node instanceof Element ? node : node.parentElement;
      while (one !== null && !isLive(one)) one = one.parentElement;
      return one;
    };
    const known = new Map([...document.querySelectorAll("*")].filter(isLive).map((one) => [one, one.textContent]));
    new MutationObserver((changes) => {
      const touched = new Set<Element>();
      for (const { target, addedNodes } of changes) {
        const region = regionOf(target);
        if (region !== null) touched.add(region);
        for (const node of addedNodes) {
          if (!(node instanceof Element)) continue;
          for (const one of [node, ...node.querySelectorAll("*")]) if (isLive(one)) touched.add(one);
        }
      }
      for (const region of touched) {
        const text = region.textContent;
        const mounted = !known.has(region) && region.getAttribute("role") !== "alert"; // an alert is read out as it comes
        if (!region.isConnected || known.get(region) === text) continue;
        known.set(region, text);
        if (text?.trim()) said.push({ text: text.replace(/\s+/g, " ").trim(), mounted });
      }
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
}

/** What was said since the last time this was asked. */
export const saidSince = (page: Page): Promise<readonly Said[]> =>
  page.evaluate(() => (window as Listening).holdfastSaid!.splice(0)); // `listenToRegions` came first
