import { createHash } from "node:crypto";

/** Keys and ids of a crowd's phones, known to the server that lets them in and to the trial. */
export const crowdKey = (n: number): string => createHash("sha256").update(`crowd ${n}`).digest("base64url");
export const crowdId = (n: number): string => `0193a5c8-7b1e-7abc-8def-${String(n).padStart(12, "0")}`;
