/** The names a browser on this machine can call the server by. Any other is someone else's page or DNS. */
const LOOPBACK_NAME = /^(127\.0\.0\.1|localhost|\[::1\])(:\d{1,5})?$/i;

/** The host a request was sent to: its header, or its address where an engine keeps no such header. */
function hostOf(request: Request): string {
  return request.headers.get('host') ?? new URL(request.url).host;
}

/** True when an `Origin` is the server's own: same host and port, whatever a proxy did to the scheme. */
export function isOwnOrigin(request: Request, origin: string): boolean {
  return URL.canParse(origin) && new URL(origin).host === hostOf(request).toLowerCase();
}

/**
 * Without keys anything this machine's browser can be made to send would be let in, so that a name that
 * only resolves here, or a page of another site, is refused. Returns the reason, or null when it may pass.
 */
export function refusedLocally(request: Request): string | null {
  if (!LOOPBACK_NAME.test(hostOf(request)))
    return 'Without keys this server answers only to 127.0.0.1, localhost and [::1]. Set WALLHAND_KEYS to serve others.';
  const origin = request.headers.get('origin');
  if (origin !== null && !isOwnOrigin(request, origin))
    return 'Without keys this server answers only its own pages, not those of another site.';
  return null;
}
