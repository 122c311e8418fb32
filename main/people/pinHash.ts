import { randomBytes, scrypt as scryptCallback, timingSafeEqual } from "node:crypto";
import { promisify } from "node:util";

const scrypt = promisify<string, Buffer, number, { N: number; r: number; p: number; maxmem: number }, Buffer>(
  scryptCallback,
);

/** 32 MB and some tens of milliseconds a try, off the core's thread. */
const COST = { n: 2 ** 15, r: 8, p: 1 } as const;
const KEY_BYTES = 32;
/** More memory than this a stored hash may not ask for. */
const MOST_COST = 2 ** 18;

/**
 * What is stored of a PIN: cost, salt and scrypt of it, never the PIN.
 * @see RFC 7914, The scrypt Password-Based Key Derivation Function
 */
export async function hashPin(pin: string, salt = randomBytes(16)): Promise<string> {
  const { n, r, p } = COST;
  const key = await derive(pin, salt, { n, r, p }, KEY_BYTES);
  return ["scrypt", n, r, p, salt.toString("base64"), key.toString("base64")].join("$");
}

/** Whether it is that PIN. A stored form that is none of ours is no PIN of anybody. */
export async function isPin(pin: string, stored: string): Promise<boolean> {
  const [form, n, r, p, salt, key] = stored.split("$");
  const cost = { n: Number(n), r: Number(r), p: Number(p) };
  if (form !== "scrypt" || salt === undefined || key === undefined || !isCost(cost)) return false;
  const expected = Buffer.from(key, "base64");
  if (expected.length < 16) return false;
  return timingSafeEqual(await derive(pin, Buffer.from(salt, "base64"), cost, expected.length), expected);
}

/** scrypt as RFC 7914 has it. */
export function derive(pin: string, salt: Buffer, { n, r, p }: Cost, bytes: number): Promise<Buffer> {
  return scrypt(pin, salt, bytes, { N: n, r, p, maxmem: 256 * n * r + 1024 * r * p });
}

type Cost = { readonly n: number; readonly r: number; readonly p: number };

function isCost({ n, r, p }: Cost): boolean {
  const whole = [n, r, p].every((value) => Number.isSafeInteger(value) && value >= 1);
  return whole && n > 1 && n <= MOST_COST && Number.isInteger(Math.log2(n)) && r <= 32 && p <= 16;
}
