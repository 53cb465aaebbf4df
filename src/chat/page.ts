import { html } from 'hono/html';

export function chatPage() {
  return html`<!doctype html><html lang="en"><head><title>wallhand</title></head><body></body></html>`;
}
