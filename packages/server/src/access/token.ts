import { createHash, randomBytes } from "node:crypto";

/** Long enough that nobody guesses one: 32 bytes of the system's randomness. */
export const newToken = (): string => randomBytes(32).toString("base64url");

const SHAPE = /^[A-Za-z0-9_-]{43}$/;

/** What is kept of a token. It is random as a whole, so that a fast hash suffices; a short code needs a slow one. */
export const hashToken = (token: string): string => createHash("sha256").update(token).digest("hex");

/** `__Host-`: the browser takes it only over HTTPS, for this host and port's whole site, from nobody else. */
const COOKIE = "__Host-sillwood";
/** As long as browsers keep one: a phone may lie in a drawer for a winter. @source our assumption */
export const KEPT_d = 400;

export const tokenCookie = (token: string): string =>
  `${COOKIE}=${token}; Path=/; Max-Age=${KEPT_d * 86_400}; Secure; HttpOnly; SameSite=Strict`;

export const noCookie = `${COOKIE}=; Path=/; Max-Age=0; Secure; HttpOnly; SameSite=Strict`;

/** The token of a request: a program's bearer or a browser's cookie; undefined where there is none or it is none of ours. */
export function tokenOf(headers: {
  get(name: "authorization" | "cookie"): string | null | undefined;
}): string | undefined {
  const bearer = /^Bearer (.+)$/i.exec(headers.get("authorization") ?? "")?.[1];
  const cookie = (headers.get("cookie") ?? "")
    .split(/;\s*/)
    .find((part) => part.startsWith(`${COOKIE}=`))
    ?.slice(COOKIE.length + 1);
  return [bearer, cookie].find((token) => token !== undefined && SHAPE.test(token));
}
