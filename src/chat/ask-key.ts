import { html } from 'hono/html';

/** Asks for a crew's key once; the browser then keeps a cookie that scripts can't read. */
export function askKeyPage(refused: boolean) {
  return html`<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <title>wallhand: key</title>
    <link rel="icon" href="/chat/icon.svg" />
    <link rel="stylesheet" href="/chat/page.css" />
    <link rel="stylesheet" href="/chat/say.css" />
  </head>
  <body class="ask">
    <main>
      <h1>wallhand</h1>
      <form method="post" action="/session">
        <label for="key">Your crew’s key</label>
        <input id="key" name="key" type="password" autocomplete="current-password" required autofocus
          ${refused ? html`aria-invalid="true" aria-describedby="refused"` : ''} />
        ${refused ? html`<p id="refused" role="alert">That isn’t a key of this server. Check it and try again.</p>` : ''}
        <button>Go on</button>
      </form>
    </main>
  </body>
</html>`;
}
