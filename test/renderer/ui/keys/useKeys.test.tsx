import { createRoot } from "react-dom/client";
import { expect, it } from "vitest";
import { useKeys } from "../../../../renderer/ui/keys/useKeys.ts";

function Screen({ act, onPress }: { readonly act: number; readonly onPress: () => void }) {
  useKeys({ keys: { " ": onPress } });
  return <p>{act}</p>;
}

it("a key means the screen that is shown, from the moment it is shown", async () => {
  const pressed: number[] = [];
  const at = document.body.appendChild(document.createElement("div"));
  const root = createRoot(at);
  const shown = (act: number) =>
    new Promise<void>((done) => {
      const observer = new MutationObserver(() => {
        if (at.textContent !== String(act)) return;
        observer.disconnect();
        dispatchEvent(new KeyboardEvent("keydown", { key: " " })); // no task has run since it was put there
        done();
      });
      observer.observe(at, { childList: true, subtree: true, characterData: true });
      root.render(<Screen act={act} onPress={() => pressed.push(act)} />);
    });
  await shown(1);
  await new Promise((done) => setTimeout(done, 50)); // the listener is there now
  pressed.length = 0;
  await shown(2);
  root.unmount();
  at.remove();
  expect(pressed).toEqual([2]);
});
