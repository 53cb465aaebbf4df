import type { MiddlewareHandler } from 'hono';

/** Only our own script, style and requests; no frame, no plug-in, no other site, nothing inline. */
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join('; ');

const HEADERS = {
  'content-security-policy': CONTENT_SECURITY_POLICY,
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(), geolocation=(), microphone=()',
  // Not no-referrer: a browser then gives the Origin of our own form as null, and it would be refused.
  'referrer-policy': 'same-origin',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
} as const;

/** A year; sent only where the request came over TLS, as RFC 6797 wants. */
const STRICT_TRANSPORT_SECURITY = 'max-age=31536000';

export const securityHeaders: MiddlewareHandler = async (c, next) => {
  await next();
  for (const [name, value] of Object.entries(HEADERS)) c.res.headers.set(name, value);
  if (!c.res.headers.has('cache-control')) c.res.headers.set('cache-control', 'no-store');
  if (c.req.url.startsWith('https:'))
    c.res.headers.set('strict-transport-security', STRICT_TRANSPORT_SECURITY);
};
