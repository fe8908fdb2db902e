import "reflect-metadata";
import { webcrypto, X509Certificate } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { type RequestOptions, request } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as x509 from "@peculiar/x509";
import { memoryStore } from "@sillwood/store/memory";
import { afterAll, expect, it } from "vitest";
import { testRegistry } from "../../bench/test/entry-maker.ts";
import { CertificateError, houseCertificate } from "../src/access/index.ts";
import { createApp } from "../src/app.ts";
import { listenAtHome } from "../src/listen.ts";

const folder = mkdtempSync(join(tmpdir(), "sillwood-certificate-"));
afterAll(() => rmSync(folder, { recursive: true }));
const NOW_ms = Date.now();

const get = (url: string, options: RequestOptions) =>
  new Promise<{ status: number; body: string }>((resolve, reject) => {
    const asked = request(url, options, (answer) => {
      let body = "";
      answer.setEncoding("utf8").on("data", (text) => (body += text));
      answer.on("end", () => resolve({ status: answer.statusCode ?? 0, body }));
    });
    asked.on("error", reject);
    asked.end();
  });

it("a house makes its own certificate once and is trusted by who trusts its authority, and by nobody else", async () => {
  const first = await houseCertificate(folder, [], NOW_ms);
  const again = await houseCertificate(folder, ["10.1.2.3", "bench.local"], NOW_ms + 86_400_000);
  expect(again.fingerprint).toBe(first.fingerprint);
  expect(first.fingerprint).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/);
  expect(statSync(join(folder, "authority.key.pem")).mode & 0o077).toBe(0);
  const app = createApp({
    store: memoryStore("main"),
    kinds: testRegistry,
    door: "paired devices",
    hosts: again.names,
    authority: again.authority,
  });
  const listening = await listenAtHome(app, { port: 0, host: "127.0.0.1", cert: again.cert, key: again.key });
  const ca = new X509Certificate(Buffer.from(again.authority)).toString();
  try {
    expect((await get(`${listening.url}/health`, { ca })).status).toBe(200);
    expect((await get(`${listening.url}/books`, { ca })).status).toBe(401);
    expect((await get(`${listening.url}/house.crt`, { ca })).status).toBe(200);
    await expect(fetch(`${listening.url}/health`)).rejects.toThrow();
    await expect(fetch(listening.url.replace("https", "http"))).rejects.toThrow();
    // Only TLS 1.2 and later.
    const old = { ca, minVersion: "TLSv1.1", maxVersion: "TLSv1.1" } as const;
    await expect(get(`${listening.url}/health`, old)).rejects.toThrow();
  } finally {
    await listening.close();
  }
});

it("its authority can vouch for names of a home and for nobody else's", async () => {
  const other = join(folder, "other");
  await houseCertificate(other, ["potting.local"], NOW_ms);
  await expect(houseCertificate(other, ["bank.example"], NOW_ms)).rejects.toThrow(
    /may not vouch for bank.example/,
  );
  await expect(houseCertificate(other, ["8.8.8.8"], NOW_ms)).rejects.toBeInstanceOf(CertificateError);
  // Whoever stole its key would not ask us: the certificate is signed all the same, and refused by whoever trusts the authority.
  const stolen = await forgedBy(other, "bank.example");
  const app = createApp({ store: memoryStore("main"), kinds: testRegistry, door: "paired devices" });
  const listening = await listenAtHome(app, { port: 0, host: "127.0.0.1", ...stolen });
  try {
    const asked = get(`${listening.url}/health`, { ca: stolen.ca, servername: "bank.example" });
    await expect(asked).rejects.toThrow(/permitted subtree violation/);
  } finally {
    await listening.close();
  }
});

async function forgedBy(authorityFolder: string, name: string) {
  const crypto = webcrypto as unknown as Crypto;
  const algorithm = { name: "ECDSA", namedCurve: "P-256", hash: "SHA-256" };
  const ca = readFileSync(join(authorityFolder, "authority.crt.pem"), "utf8");
  const der = x509.PemConverter.decodeFirst(readFileSync(join(authorityFolder, "authority.key.pem"), "utf8"));
  const signingKey = await crypto.subtle.importKey("pkcs8", der, algorithm, false, ["sign"]);
  const keys = await crypto.subtle.generateKey(algorithm, true, ["sign", "verify"]);
  const forged = await x509.X509CertificateGenerator.create(
    {
      subject: `CN=${name}`,
      issuer: new x509.X509Certificate(ca).subject,
      notAfter: new Date(NOW_ms + 86_400_000),
      signingAlgorithm: algorithm,
      publicKey: keys.publicKey,
      signingKey,
      extensions: [new x509.SubjectAlternativeNameExtension([{ type: "dns", value: name }])],
    },
    crypto,
  );
  const key = x509.PemConverter.encode(
    await crypto.subtle.exportKey("pkcs8", keys.privateKey),
    "PRIVATE KEY",
  );
  return { cert: `${forged.toString("pem")}\n${ca}\n`, key, ca };
}
