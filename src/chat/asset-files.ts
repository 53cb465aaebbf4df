const STYLE = 'text/css; charset=utf-8';
const SCRIPT = 'text/javascript; charset=utf-8';

/** What the chat page asks for besides itself: the files of `browser/`, and what they are. */
export const ASSET_TYPES: Readonly<Record<string, string>> = {
  'page.css': STYLE,
  'icon.svg': 'image/svg+xml',
  'card.css': STYLE,
  'drawing.css': STYLE,
  'say.css': STYLE,
  'page.js': SCRIPT,
  'card.js': SCRIPT,
  'choices.js': SCRIPT,
  'drawing.js': SCRIPT,
  'elements.js': SCRIPT,
  'extent.js': SCRIPT,
  'figures.js': SCRIPT,
  'marks.js': SCRIPT,
  'outbox.js': SCRIPT,
  'post.js': SCRIPT,
  'replies.js': SCRIPT,
  'shapes.js': SCRIPT,
  'size-label.js': SCRIPT,
  'dimensions.js': SCRIPT,
  'tabs.js': SCRIPT,
  'tape.js': SCRIPT,
  'transcript.js': SCRIPT,
  'turn.js': SCRIPT,
};
