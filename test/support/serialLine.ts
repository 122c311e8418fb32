import type { SerialSetting } from "../../app/contract/linkViews.ts";

/**
 * What a receiver set to one thing makes of what a sender sends at another: the characters are laid out as bits in
 * time (start bit 0, data from the least, parity, stop bits 1) and sampled in the middle of the receiver's bits, as a
 * UART does. Frames whose stop bit is not 1 are received as they are, as drivers hand them on.
 * @see ECMA-6 for the characters; start-stop transmission, ITU-T V.4 (from memory)
 */
export function received(text: Uint8Array, sent: SerialSetting, read: SerialSetting): Uint8Array {
  const levels = [...text].flatMap((byte) => frame(byte, sent));
  const level = (bit: number) => levels[Math.floor(bit)] ?? 1;
  const ratio = sent.baud / read.baud; // sender's bits in one of the receiver's
  const out: number[] = [];
  const readBits = read.dataBits + (read.parity === "none" ? 0 : 1);
  for (let at = 0; at < levels.length; ) {
    if (level(at) !== 0) {
      at += Math.min(1, ratio / 16); // a UART looks for the edge sixteen times a bit
      continue;
    }
    let byte = 0;
    for (let i = 0; i < read.dataBits; i += 1) byte |= level(at + (1.5 + i) * ratio) << i;
    out.push(byte);
    at += (1.5 + readBits) * ratio;
    if (level(at) === 0) while (at < levels.length && level(at) === 0) at += ratio / 16;
  }
  return Uint8Array.from(out);
}

function frame(byte: number, { dataBits, parity, stopBits }: SerialSetting): number[] {
  const data = Array.from({ length: dataBits }, (_, i) => (byte >> i) & 1);
  const ones = data.reduce((sum, bit) => sum + bit, 0);
  const check = parity === "none" ? [] : [parity === "even" ? ones & 1 : 1 - (ones & 1)];
  return [0, ...data, ...check, ...Array.from({ length: stopBits }, () => 1), 1, 1];
}
