import { createPrivateKey, createPublicKey, sign, verify } from "node:crypto";
import { existsSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { headKey, headKeyFile } from "../../../main/store/ledger/headKey.ts";
import { isSigned, rawPublicKey, signedHeads } from "../../../main/store/ledger/signedHeads.ts";
import { verifyFile } from "../../../main/store/ledger/verifyFile.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { storeInTemp } from "../../support/storeInTemp.ts";

const base64 = (hex: string) => Buffer.from(hex, "hex").toString("base64url");

describe("the signature", () => {
  // RFC 8032, section 7.1, tests 1 to 3.
  const published = JSON.parse(readFileSync("test/published/rfc8032-ed25519.json", "utf8"));

  it.each([0, 1, 2])("is Ed25519 as published, test %i", (i) => {
    const { secretKey, publicKey, message } = published.inputs[i];
    const jwk = { kty: "OKP", crv: "Ed25519", d: base64(secretKey), x: base64(publicKey) };
    const key = createPrivateKey({ key: jwk, format: "jwk" });
    expect(rawPublicKey(key)).toBe(base64(publicKey));
    const signature = sign(null, Buffer.from(message, "hex"), key);
    expect(signature.toString("hex")).toBe(published.expected.signatures.published[i]);
    expect(verify(null, Buffer.from(message, "hex"), createPublicKey(key), signature)).toBe(true);
  });
});

describe("signed heads", () => {
  it("prove a copied head against the ledger, and nothing but that head", () => {
    const store = storeInTemp();
    const filed = store.append([{ kind: "spindle", body: aSpindle() }]);
    const [head] = store.signHeads();
    expect(head).toMatchObject({ origin: store.origin, seq: 1, hash: filed[0]!.hash });
    expect(isSigned(head!)).toBe(true);
    expect(isSigned({ ...head!, hash: head!.hash.replace(/^./, (c) => (c === "0" ? "1" : "0")) })).toBe(false);
    expect(isSigned({ ...head!, seq: 2 })).toBe(false);
    expect(isSigned({ ...head!, at: "2020-01-01T00:00:00.000Z" })).toBe(false);
    expect(isSigned({ ...head!, publicKey: "AAAA" })).toBe(false);
  });

  it("are made when a file is opened and closed, once for each head", () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    store.close();
    const again = storeInTemp({ path: store.path });
    again.signHeads();
    again.signHeads();
    expect(signedHeads(again.db)).toHaveLength(1);
  });

  it("have a key of this user's own, beside the file and never in it", () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    const path = headKeyFile(store.path);
    expect(path).toBe(store.path.replace("holdfast.sqlite", "holdfast.key"));
    expect(statSync(path).mode & 0o777).toBe(0o600);
    const secret = createPrivateKey(readFileSync(path, "utf8")).export({ format: "jwk" }).d!;
    store.close();
    const bytes = readFileSync(store.path);
    expect(bytes.includes(secret)).toBe(false);
    expect(bytes.includes(Buffer.from(secret, "base64url"))).toBe(false);
  });

  it("still prove themselves when the key was lost; the new one shows beside it", async () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    store.close();
    rmSync(headKeyFile(store.path));
    const again = storeInTemp({ path: store.path });
    const report = await verifyFile(again.db);
    expect(report).toMatchObject({ damaged: [], signedHeads: 2 });
    expect(report.keys).toHaveLength(2);
  });

  it("go on with a new key when the old is spoilt, which is kept aside", () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    store.close();
    const path = headKeyFile(store.path);
    writeFileSync(path, "not a key");
    expect(headKey(store.path)?.asymmetricKeyType).toBe("ed25519");
    expect(readFileSync(`${path}.unreadable`, "utf8")).toBe("not a key");
  });

  it("are not made where no key can be written, and nothing else suffers", () => {
    expect(headKey("/nowhere/at/all/holdfast.sqlite")).toBeUndefined();
    expect(existsSync("/nowhere")).toBe(false);
  });
});
