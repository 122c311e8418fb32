let context: AudioContext | undefined;

/** A plain tone. Silent where the browser has not yet let the page sound, or has no sound at all. */
export function tone(hertz: number, seconds: number): void {
  try {
    context ??= new AudioContext();
    if (context.state === "suspended") context.resume();
    const oscillator = context.createOscillator();
    const gain = context.createGain();
    oscillator.frequency.value = hertz;
    gain.gain.setValueAtTime(0.2, context.currentTime);
    gain.gain.exponentialRampToValueAtTime(0.001, context.currentTime + seconds);
    oscillator.connect(gain).connect(context.destination);
    oscillator.start();
    oscillator.stop(context.currentTime + seconds);
  } catch {
    // no sound device: what it would say is on the screen as well
  }
}
