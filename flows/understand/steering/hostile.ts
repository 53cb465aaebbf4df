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
  return NOT_SPEECH.some((form) => form.test(said));
}
