import type { MiddlewareHandler } from "hono";

/** What the app's own pages may do: nothing from elsewhere, and nobody may frame them. */
const PAGE_POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "media-src 'self' blob:",
  "worker-src 'self' blob:",
  "connect-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join("; ");

/** Sets the headers that keep a browser careful, on every answer, errors too. A route may tighten the policy. */
export const safeHeaders: MiddlewareHandler = async (c, next) => {
  await next();
  const { headers } = c.res;
  if (!headers.has("content-security-policy")) headers.set("content-security-policy", PAGE_POLICY);
  headers.set("x-content-type-options", "nosniff");
  headers.set("referrer-policy", "no-referrer");
  headers.set("x-frame-options", "DENY");
  headers.set("cross-origin-opener-policy", "same-origin");
  headers.set("cross-origin-resource-policy", "same-origin");
  headers.set("permissions-policy", "camera=(self), geolocation=(), microphone=(), payment=(), usb=()");
};
