/** What the chat page asks for besides itself. */
export const ASSET_FILES = [
  { path: '/chat/page.css', type: 'text/css; charset=utf-8', file: 'page.css' },
  { path: '/chat/page.js', type: 'text/javascript; charset=utf-8', file: 'page.js' },
] as const;
