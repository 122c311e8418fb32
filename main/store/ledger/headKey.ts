import { createPrivateKey, generateKeyPairSync, type KeyObject } from "node:crypto";
import { existsSync, readFileSync, renameSync } from "node:fs";
import { writeAtomically } from "../writeAtomically.ts";

/** Where the key of a data file lies: beside it, never in it. */
export const headKeyFile = (dataFile: string): string => `${dataFile.replace(/\.sqlite$/, "")}.key`;

/**
 * The Ed25519 key that signs the heads of the chains; made when there is none. A lost or spoiled key is replaced: what
 * it signed still proves itself by the public key beside each signature, and a spoiled file is kept aside.
 * @returns  undefined when none can be read or written: then nothing is signed, and measuring goes on
 */
export function headKey(dataFile: string): KeyObject | undefined {
  const path = headKeyFile(dataFile);
  try {
    const known = readKey(path);
    if (known !== undefined) return known;
    if (existsSync(path)) renameSync(path, `${path}.unreadable`);
    const { privateKey } = generateKeyPairSync("ed25519");
    writeAtomically(path, String(privateKey.export({ format: "pem", type: "pkcs8" })));
    return privateKey;
  } catch {
    return undefined;
  }
}

function readKey(path: string): KeyObject | undefined {
  try {
    const key = createPrivateKey(readFileSync(path, "utf8"));
    return key.asymmetricKeyType === "ed25519" ? key : undefined;
  } catch {
    return undefined;
  }
}
