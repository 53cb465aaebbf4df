/** Capital first, full stop last. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  if (trimmed === '') return '';
  const first = trimmed.charAt(0).toUpperCase() + trimmed.slice(1);
  return /[.?:]$/.test(first) ? first : `${first}.`;
}
