import { createPublicKey, type KeyObject, sign, verify } from "node:crypto";
import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";
import { type Db, prepared } from "../db.ts";
import type { DamageList } from "./DamageList.ts";
import { type Head, headOf } from "./head.ts";
import type { Origin } from "./ownOrigin.ts";
import { placeOfEntry } from "./place.ts";

/** The head of a chain as it stood at an instant, signed: what a report prints, and what proves the report later. */
export type SignedHead = {
  readonly origin: string;
  readonly seq: number;
  readonly hash: string;
  readonly at: string;
  /** Ed25519, raw 32 bytes, base64url: the key is published beside what it signed. */
  readonly publicKey: string;
  /** Over the canonical form of origin, seq, hash and at; base64url. */
  readonly signature: string;
};

/**
 * Signs the head of every chain in the file and keeps the signatures; a head this key has signed before is not signed
 * again. The caller holds the transaction.
 */
export function signHeads(db: Db, key: KeyObject, atMs: number): SignedHead[] {
  const publicKey = rawPublicKey(key);
  return prepared<Origin>(db, "SELECT n, origin FROM origin ORDER BY n")
    .all()
    .flatMap((origin) => {
      const head = headOf(db, origin.n);
      if (head.seq === 0) return [];
      return [knownSignature(db, origin, head, publicKey) ?? signOne(db, origin, head, key, atMs)];
    });
}

function knownSignature(db: Db, { n, origin }: Origin, { seq, hash }: Head, publicKey: string): SignedHead | undefined {
  const known = prepared<{ at: string; signature: string }>(
    db,
    "SELECT at, signature FROM signed_head WHERE origin_n = ? AND seq = ? AND hash = ? AND public_key = ?",
  ).get(n, seq, hash, publicKey);
  return known && { origin, seq, hash, publicKey, ...known };
}

function signOne(db: Db, { n, origin }: Origin, { seq, hash }: Head, key: KeyObject, atMs: number): SignedHead {
  const head = { origin, seq, hash, at: new Date(atMs).toISOString() };
  const publicKey = rawPublicKey(key);
  const signature = sign(null, statementOf(head), key).toString("base64url");
  prepared(
    db,
    "INSERT INTO signed_head (origin_n, seq, hash, at, public_key, signature) VALUES (?, ?, ?, ?, ?, ?)",
  ).run(n, seq, hash, head.at, publicKey, signature);
  return { ...head, publicKey, signature };
}

/** Whether the signature is that key's over that head. Says nothing of whose key it is. */
export function isSigned(head: SignedHead): boolean {
  try {
    const jwk = { kty: "OKP", crv: "Ed25519", x: head.publicKey };
    const key = createPublicKey({ key: jwk, format: "jwk" });
    return verify(null, statementOf(head), key, Buffer.from(head.signature, "base64url"));
  } catch {
    return false; // not even a key
  }
}

export const rawPublicKey = (key: KeyObject): string => {
  const jwk = (key.type === "private" ? createPublicKey(key) : key).export({ format: "jwk" });
  return jwk.x ?? "";
};

/** Every signed head of the file, oldest first. */
export function signedHeads(db: Db): SignedHead[] {
  return prepared<SignedHead>(
    db,
    `SELECT o.origin AS origin, h.seq AS seq, h.hash AS hash, h.at AS at, h.public_key AS publicKey, h.signature AS signature
     FROM signed_head h JOIN origin o ON o.n = h.origin_n ORDER BY h.n`,
  ).all();
}

/** Signed heads against the chains: a chain cut short at its end, or written anew, shows here and only here. */
export function verifySignedHeads(db: Db, damage: DamageList): void {
  const hashAt = prepared<Buffer>(db, "SELECT hash FROM entry WHERE n = ?").pluck();
  const originN = prepared<number>(db, "SELECT n FROM origin WHERE origin = ?").pluck();
  for (const head of signedHeads(db)) {
    const { origin, seq } = head;
    const say = (fault: "unsigned" | "missing" | "differs", detail: string) =>
      damage.add({ what: "signedHead", origin, seq, fault, detail: `signed head ${seq} of ${head.at}: ${detail}` });
    const there = hashAt.get(placeOfEntry(db, originN.get(origin) ?? 0, seq) ?? 0)?.toString("hex");
    if (!isSigned(head)) say("unsigned", "its signature does not hold");
    else if (there === undefined) say("missing", "the chain ends before it");
    else if (there !== head.hash) say("differs", "the chain has another entry there");
  }
}

function statementOf({ origin, seq, hash, at }: Omit<SignedHead, "publicKey" | "signature">): Buffer {
  return Buffer.from(canonicalJson({ at, hash, origin, seq }), "utf8");
}
