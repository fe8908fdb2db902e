export { closeAsTheBookSays } from "./closings.ts";
export { CertificateError, type HouseCertificate, houseCertificate } from "./own-certificate.ts";
export { type Pairings, pairings } from "./pairing.ts";
export { hashToken } from "./token.ts";
