/** Vulgar fractions become "1/2" with a space before, since NFKC alone would glue "4½" into "41/2". */
const VULGAR: Record<string, string> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Quotes, primes and dashes as phones and word processors write them, to the ones on a keyboard. */
const LOOKALIKES: Record<string, string> = {
  '‘': "'",
  '’': "'",
  '‛': "'",
  '′': "'",
  '´': "'",
  '`': "'",
  ʹ: "'",
  '“': '"',
  '”': '"',
  '„': '"',
  '‟': '"',
  '″': '"',
  ʺ: '"',
  '‐': '-',
  '‑': '-',
  '‒': '-',
  '–': '-',
  '—': ' - ',
  '−': '-',
  '×': 'x',
  '✕': 'x',
  '✖': 'x',
  '*': 'x',
  '⌀': ' diameter ',
  Ø: ' diameter ',
  ø: ' diameter ',
  '±': ' ± ',
  '…': ' ',
};

/** Keys of a keyboard that no look-alike stands for: nearly every message is typed with these alone. */
const PLAIN = /^(?:[\t\n\r -&()+-_a-~]|'(?!'))*$/;

/** Lower case, one form for each look-alike sign, full-width digits and ligatures undone (NFKC). */
export function normalise(said: string): string {
  if (PLAIN.test(said)) return said.toLowerCase();
  let out = '';
  for (const character of said) {
    const vulgar = VULGAR[character];
    out += vulgar === undefined ? (LOOKALIKES[character] ?? character) : ` ${vulgar} `;
  }
  return out
    .normalize('NFKC')
    .replaceAll('⁄', '/')
    .replaceAll("''", '"')
    .replaceAll('\u2032\u2032', '"')
    .replaceAll('\u2032', "'")
    .replaceAll('\u2212', '-')
    .toLowerCase();
}
