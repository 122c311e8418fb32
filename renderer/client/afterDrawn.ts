/** A hidden page draws nothing and gets no frame; it must still let the next batch come. */
const HIDDEN_MS = 250;

/** Runs `then` once what has changed by now is on the screen, or a moment later where nothing is drawn. */
export function afterDrawn(then: () => void): void {
  if (document.visibilityState === "hidden") {
    setTimeout(then, HIDDEN_MS);
    return;
  }
  let done = false;
  const once = () => {
    if (done) return;
    done = true;
    then();
  };
  // The frame callback runs before painting; a task after it runs once the frame is out.
  requestAnimationFrame(() => setTimeout(once, 0));
  setTimeout(once, HIDDEN_MS); // a page hidden meanwhile gets no frame
}
