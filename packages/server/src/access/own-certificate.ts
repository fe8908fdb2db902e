import "reflect-metadata";
import { webcrypto } from "node:crypto";
import { chmodSync, existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { hostname, networkInterfaces } from "node:os";
import { join } from "node:path";
import * as x509 from "@peculiar/x509";
import { isAddress, isAtHome, nameConstraints, vouchesFor } from "./name-constraints.ts";

/** What a server at home shows to browsers, and what phones must be told to trust once. */
export interface HouseCertificate {
  /** PEM: the certificate of this start with its authority behind it. */
  readonly cert: string;
  readonly key: string;
  /** DER of the authority, as a phone installs it. */
  readonly authority: Uint8Array;
  /** SHA-256 of the authority in pairs of digits: to compare by eye. */
  readonly fingerprint: string;
  readonly names: readonly string[];
}

const ALGORITHM = { name: "ECDSA", namedCurve: "P-256", hash: "SHA-256" } as const;
// The same thing; its type has another name where no browser is declared.
const CRYPTO = webcrypto as never;
const NAME_CONSTRAINTS = "2.5.29.30";
const DAY_ms = 86_400_000;
/** Ten years for the authority, so that phones are told once; a year for each start's own. */
const AUTHORITY_d = 3652;
const SERVER_d = 397;

/** Every name and address by which devices at home may call this machine. */
function homeNames(more: readonly string[] = []): string[] {
  const own = hostname().toLowerCase();
  const addresses = Object.values(networkInterfaces())
    .flatMap((each) => each ?? [])
    // An address that the world can reach is no home's: a proxy with a name of its own belongs before it.
    .filter(({ internal, address }) => !internal && !address.startsWith("fe80") && isAtHome(address))
    .map(({ address }) => address);
  const local = own.includes(".") ? own : `${own}.local`;
  return [...new Set([...more, ...addresses, own, local, "localhost", "127.0.0.1"])];
}

/**
 * The certificate for these names, signed by the authority of this machine, which is made on first use and kept in a folder
 * that only its owner reads. A new one is signed at every start, since addresses at home change.
 *
 * @param given names beyond this machine's own
 * @throws CertificateError when the authority in the folder was made for other names
 */
export async function houseCertificate(
  folder: string,
  given: readonly string[],
  now_ms: number,
): Promise<HouseCertificate> {
  x509.cryptoProvider.set(CRYPTO);
  const all = homeNames(given);
  const authority = await authorityIn(folder, all, now_ms);
  const constraints = authority.certificate.getExtension(NAME_CONSTRAINTS)?.value ?? new ArrayBuffer(0);
  const vouched = (name: string) => vouchesFor(new Uint8Array(constraints), name);
  const strange = given.find((name) => !vouched(name));
  if (strange !== undefined)
    throw new CertificateError(
      `the house's own authority in ${folder} may not vouch for ${strange}. Use a name that ends in .local, or remove that folder: a new authority is made for this name, and every phone must be told to trust it`,
    );
  // A machine that was renamed is still reached by its addresses.
  const names = all.filter(vouched);
  const keys = await webcrypto.subtle.generateKey(ALGORITHM, true, ["sign", "verify"]);
  const certificate = await x509.X509CertificateGenerator.create(
    {
      subject: "CN=Sillwood",
      issuer: authority.certificate.subject,
      notBefore: new Date(now_ms - DAY_ms),
      notAfter: new Date(now_ms + SERVER_d * DAY_ms),
      signingAlgorithm: ALGORITHM,
      publicKey: keys.publicKey,
      signingKey: authority.key,
      extensions: [
        new x509.BasicConstraintsExtension(false, undefined, true),
        new x509.KeyUsagesExtension(x509.KeyUsageFlags.digitalSignature, true),
        new x509.ExtendedKeyUsageExtension([x509.ExtendedKeyUsage.serverAuth]),
        new x509.SubjectAlternativeNameExtension(
          names.map((value) => ({ type: isAddress(value) ? ("ip" as const) : ("dns" as const), value })),
        ),
        await x509.AuthorityKeyIdentifierExtension.create(authority.certificate, false, CRYPTO),
        await x509.SubjectKeyIdentifierExtension.create(keys.publicKey, false, CRYPTO),
      ],
    },
    CRYPTO,
  );
  const fingerprint = Buffer.from(await authority.certificate.getThumbprint("SHA-256", CRYPTO));
  return {
    cert: `${certificate.toString("pem")}\n${authority.certificate.toString("pem")}\n`,
    key: await pemOf(keys.privateKey),
    authority: new Uint8Array(authority.certificate.rawData),
    fingerprint: fingerprint
      .toString("hex")
      .toUpperCase()
      .replace(/..(?=.)/g, "$&:"),
    names,
  };
}

/** The certificate that was asked for can't be made. */
export class CertificateError extends Error {
  override readonly name = "CertificateError";
}

interface Authority {
  readonly certificate: x509.X509Certificate;
  readonly key: webcrypto.CryptoKey;
}

async function authorityIn(folder: string, names: readonly string[], now_ms: number): Promise<Authority> {
  const [certPath, keyPath] = [join(folder, "authority.crt.pem"), join(folder, "authority.key.pem")] as const;
  if (existsSync(certPath) && existsSync(keyPath)) {
    const certificate = new x509.X509Certificate(readFileSync(certPath, "utf8"));
    const der = new Uint8Array(x509.PemConverter.decodeFirst(readFileSync(keyPath, "utf8")));
    if (certificate.notAfter.getTime() > now_ms + SERVER_d * DAY_ms)
      return { certificate, key: await webcrypto.subtle.importKey("pkcs8", der, ALGORITHM, false, ["sign"]) };
  }
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const keys = await webcrypto.subtle.generateKey(ALGORITHM, true, ["sign", "verify"]);
  const certificate = await x509.X509CertificateGenerator.createSelfSigned(
    {
      name: "CN=Sillwood at home",
      notBefore: new Date(now_ms - DAY_ms),
      notAfter: new Date(now_ms + AUTHORITY_d * DAY_ms),
      signingAlgorithm: ALGORITHM,
      keys,
      extensions: [
        new x509.BasicConstraintsExtension(true, 0, true),
        new x509.KeyUsagesExtension(x509.KeyUsageFlags.keyCertSign | x509.KeyUsageFlags.cRLSign, true),
        new x509.Extension(NAME_CONSTRAINTS, true, nameConstraints(names)),
        await x509.SubjectKeyIdentifierExtension.create(keys.publicKey, false, CRYPTO),
      ],
    },
    CRYPTO,
  );
  keep(keyPath, await pemOf(keys.privateKey));
  keep(certPath, certificate.toString("pem"));
  return { certificate, key: keys.privateKey };
}

/** Written under another name first: half a key would lock every phone out. */
function keep(path: string, text: string): void {
  writeFileSync(`${path}.part`, text, { mode: 0o600 });
  chmodSync(`${path}.part`, 0o600);
  renameSync(`${path}.part`, path);
}

const pemOf = async (key: webcrypto.CryptoKey): Promise<string> =>
  x509.PemConverter.encode(await webcrypto.subtle.exportKey("pkcs8", key), "PRIVATE KEY");
