import { act, cleanup, render } from "@testing-library/react";
import axe from "axe-core";
import { vi } from "vitest";
import { App } from "../../renderer/screens/shell/App.tsx";
import type { Core } from "../../renderer/state/Core.ts";
import { CoreContext } from "../../renderer/state/CoreContext.ts";
import { createCore } from "../../renderer/state/createCore.ts";
import { createFakeCore, type FakeCore } from "./fakeCore.ts";

/** What jsdom lacks of a browser, as plainly as the page needs it. */
export function standInBrowser(): void {
  HTMLDialogElement.prototype.showModal = function showModal() {
    this.setAttribute("open", "");
    this.querySelector<HTMLElement>("input, select, textarea, button")?.focus();
  };
  HTMLDialogElement.prototype.close = function close() {
    this.removeAttribute("open");
  };
  HTMLElement.prototype.scrollIntoView = () => {};
  window.scrollTo = () => {};
  HTMLCanvasElement.prototype.getContext = () => null;
  globalThis.ResizeObserver = class {
    observe() {}
    unobserve() {}
    disconnect() {}
  };
  vi.stubGlobal("CSS", { escape: (text: string) => text }); // ids need no escaping
  vi.stubGlobal("matchMedia", () => ({ matches: false, addEventListener: () => {}, removeEventListener: () => {} }));
}

export type Page = {
  readonly fake: FakeCore;
  readonly core: Core;
  readonly client: ReturnType<FakeCore["client"]>;
};

/** The whole page at a place, on the fake core. */
export async function openPage(hash = "#/measure", options: Parameters<typeof createFakeCore>[0] = {}): Promise<Page> {
  location.hash = hash;
  const fake = createFakeCore(options);
  const client = fake.client();
  const core: Core = createCore(client, () => void core.refresh());
  render(
    <CoreContext value={core}>
      <App />
    </CoreContext>,
  );
  await settle();
  return { fake, core, client };
}

/** Lets everything that waits for an answer have it. */
export async function settle(): Promise<void> {
  for (let i = 0; i < 5; i += 1) await act(() => Promise.resolve());
}

export function closePage(): void {
  cleanup();
  localStorage.clear();
}

/** A key as a finger presses it: the page waits a moment for a scanner's next one. */
export async function press(key: string): Promise<void> {
  await act(async () => {
    (document.activeElement ?? document.body).dispatchEvent(
      new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }),
    );
    await new Promise((done) => setTimeout(done, key === " " ? 0 : 100));
  });
  await settle();
}

/** A label as a scanner types it. */
export async function scan(label: string): Promise<void> {
  await act(async () => {
    for (const key of [...label, "Enter"])
      document.body.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
  });
  await settle();
}

/** What axe finds wrong; contrast is computed from the roles elsewhere, jsdom knows no colours. */
export async function faults(): Promise<string[]> {
  const result = await axe.run(document.body, {
    rules: { "color-contrast": { enabled: false }, region: { enabled: false } },
  });
  return result.violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 120)).join(" | ")}`);
}
