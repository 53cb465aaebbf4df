import { html } from 'hono/html';

/** The chat page: a first word, the log, the choices of the open question, and a line to type in. */
export function chatPage() {
  return html`<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1, interactive-widget=resizes-content" />
    <meta name="color-scheme" content="light dark" />
    <title>wallhand</title>
    <link rel="icon" href="/chat/icon.svg" />
    <link rel="stylesheet" href="/chat/page.css" />
    <link rel="stylesheet" href="/chat/say.css" />
    <link rel="stylesheet" href="/chat/card.css" />
    <link rel="stylesheet" href="/chat/drawing.css" />
    <script type="module" src="/chat/page.js"></script>
  </head>
  <body>
    <header>
      <h1>wallhand</h1>
      <button type="button" id="anew">New</button>
    </header>
    <main>
      <p class="theirs">What are you hanging, and on what? Say as much as you know in one go, such as “hanging a 24 kg mirror on a plastered brick wall”. I ask for the rest, one thing at a time.</p>
      <noscript><p class="theirs">This page needs its script. The same conversation is held by <code>npm run chat</code> and by <code>POST /v1/messages</code>.</p></noscript>
      <div id="log" role="log" aria-label="Conversation"></div>
      <div id="choices" role="group" aria-label="Answers to pick from" hidden></div>
    </main>
    <form id="say" aria-label="Say something">
      <p id="status" role="status" class="hidden"></p>
      <div>
        <label class="hidden" for="words">Your message</label>
        <textarea id="words" rows="1" placeholder="Type here" maxlength="2000" enterkeyhint="send" autocomplete="off" required></textarea>
        <button class="main" id="send" disabled>Send</button>
      </div>
    </form>
  </body>
</html>`;
}
