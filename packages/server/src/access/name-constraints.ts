import { BlockList, isIPv4 } from "node:net";

/** Private networks: where a home's addresses lie (RFC 1918, RFC 3927, RFC 6598, RFC 4193, RFC 4291). */
const NETWORKS = [
  [[10, 0, 0, 0], 8],
  [[172, 16, 0, 0], 12],
  [[192, 168, 0, 0], 16],
  [[169, 254, 0, 0], 16],
  [[100, 64, 0, 0], 10],
  [[127, 0, 0, 0], 8],
  [[0xfc, ...Array(15).fill(0)], 7],
  [[0xfe, 0x80, ...Array(14).fill(0)], 10],
  [[...Array(15).fill(0), 1], 128],
] as const;

/**
 * The extension by which an authority may vouch for names of a home alone (RFC 5280, 4.2.1.10), as DER: whoever stole its key could
 * pretend to be this house, and nobody's bank.
 */
export function nameConstraints(names: readonly string[]): Uint8Array<ArrayBuffer> {
  const dns = [...new Set(["local", "localhost", ...names.filter((name) => !isAddress(name))])];
  const subtrees = [
    ...dns.map((name) => tagged(0x82, new TextEncoder().encode(name))),
    ...NETWORKS.map(([address, bits]) =>
      tagged(0x87, Uint8Array.from([...address, ...mask(address.length, bits)])),
    ),
  ];
  return tagged(0x30, tagged(0xa0, joined(subtrees.map((base) => tagged(0x30, base)))));
}

/** Whether an authority that carries this extension may vouch for a name. */
export function vouchesFor(constraints: Uint8Array, name: string): boolean {
  const der = Buffer.from(constraints);
  if (isAddress(name)) return isAtHome(name);
  const parts = name.split(".");
  // The name itself or any domain above it.
  return parts.some((_part, i) =>
    der.includes(Buffer.from(tagged(0x82, new TextEncoder().encode(parts.slice(i).join("."))))),
  );
}

/** Whether an address lies in a network that only a home has. */
export function isAtHome(address: string): boolean {
  const networks = new BlockList();
  for (const [bytes, bits] of NETWORKS)
    if (bytes.length === 4) networks.addSubnet(bytes.join("."), bits, "ipv4");
    else networks.addSubnet(groupsOf(bytes), bits, "ipv6");
  return networks.check(address, isIPv4(address) ? "ipv4" : "ipv6");
}

const groupsOf = (bytes: readonly number[]) =>
  Array.from({ length: 8 }, (_, i) =>
    (((bytes[2 * i] ?? 0) << 8) | (bytes[2 * i + 1] ?? 0)).toString(16),
  ).join(":");

export const isAddress = (name: string): boolean => isIPv4(name) || name.includes(":");

const mask = (length_B: number, bits: number) =>
  Array.from({ length: length_B }, (_, i) => 0xff & ~(0xff >> Math.max(0, Math.min(8, bits - 8 * i))));

function tagged(tag: number, content: Uint8Array): Uint8Array<ArrayBuffer> {
  const { length } = content;
  const head =
    length < 0x80 ? [length] : length < 0x100 ? [0x81, length] : [0x82, length >> 8, length & 0xff];
  return joined([Uint8Array.from([tag, ...head]), content]);
}

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
