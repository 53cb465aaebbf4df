/** Control codes (not a tab or a new line) and signs that turn the direction of text: a figure may hide behind one. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const HIDING = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

/** Markup, code or a query: nobody on site says so, and nothing of it is read. */
const NOT_SPEECH = [
  /<\s*\/?\s*[a-z!][^>]*>?/i,
  /\b(?:drop|alter|truncate)\s+table\b|\bunion\s+(?:all\s+)?select\b|\bselect\s+.{1,80}\s+from\s+\w+|\binsert\s+into\b|\bdelete\s+from\b|\bor\s+['"]?1['"]?\s*=\s*['"]?1\b|;\s*--/i,
  /\bjavascript:|\bon(?:error|load|click)\s*=|\$\{|\{\{|\{%|<\?|\bfunction\s*\(|=>|\beval\s*\(/i,
  /\bignore (?:all |any )?(?:previous|prior|above) (?:instructions|prompts?)\b|\bsystem prompt\b/i,
  /\.\.\/\.\.|\/etc\/passwd|%00|\\x[0-9a-f]{2}/i,
];

/** True for what is typed at a program rather than said to one. */
export function isHostile(said: string): boolean {
  return HIDING.test(said) || NOT_SPEECH.some((form) => form.test(said));
}
