/** Begins as a question does. A list of the trade's own 120 (trade.md, part 8) was read for the forms. */
const ASKS =
  /^\W*(?:(?:hey|hi|mate|ok|so|and|but|um|quick (?:one|question)|question|just wondering|i was wondering|wondering|btw|by the way|tell me|do you know|any idea|another (?:one|question)|before (?:that|we go on)|first)\W+)*(?:(?:what(?:'?s|s)?|wot|wat|which|how(?:'?s)?(?! about)|where(?:'?s|s)?|when|who(?:'?s)?)\b|(?:can|could|does)\b(?!'| ?not\b| ?n'?t)|do(?! (?:it|that|this)\b)\b|should(?! (?:be|have|read)\b)\b|(?:shall|will|would|may|must|did|am|won'?t|can'?t|isn'?t|is|are) (?:i|you|u|we|it|they|he|she|this|that|there|these|those|the|my|a|an|one|two|any|some|someone|sticky|screws?|plugs?|anchors?|board)\b|(?:has|have) (?:you|it got|anyone|i|we)\b)/;

/** Trouble at the wall, said as a statement. */
const TROUBLE = [
  /\bplugs?\b.{0,20}\b(?:spins?|spinning|turns|sticks? out|won'?t go in|came out|pulls? out|loose|keeps turning)\b/,
  /\bscrew\b.{0,20}\b(?:snapped|broke|won'?t (?:go|bite|tighten)|spins|stripped|sheared)\b/,
  /\bhole'?s? (?:is |are |came out )?(?:too (?:big|deep|shallow|small)|in the wrong place)\b/,
  /\b(?:i|we|just|it)?'?(?:ve)? ?hit (?:a |the |some )?(?:metal|wire|cable|pipe|reo|rebar|steel|water|void|something)\b/,
  /\bbit(?:'s| has| is)? (?:gone blue|wanders|wandered|wandering|stuck|skates|smoking|burnt|blunt)\b/,
  /\b(?:smell|smells of) (?:of )?gas\b|\bsmoke\b.*\bdrill/,
  /\b(?:detector|scanner) (?:is |says |shows )?(?:quiet|nothing|beeps|clear)\b/,
  /\bdust (?:is|turns?|turned|went|goes|comes out|came out)\b/,
  /\bwrong place by\b|\bkeeps going crooked\b|\bit leans (?:forward|out)\b|\bhangs crooked\b/,
  /\bpilot hole for\b|\breadings? \d.*\bkn\b|^\W*\d+\s*\/\s*\d+ masonry in mm\b|^\W*#?\d+ (?:gauge|g) in (?:mm|inch|inches)\b/,
  /\b(?:hammer or no hammer|one hook or two|plug or screw|pan head or countersunk)\b/,
];

/** The question comes second: "hollow block, what do I use"; or it is only named: "plug for aerated block". */
const INSIDE =
  /[,.;] *(?:what|which|how|who) (?:do|does|can|should|bit|plug|screw|size|must|will|is|far|deep|long|many|much)\b|[,.;] *(?:can|should|do) (?:i|we|you)\b|^\W*(?:a )?(?:plugs?|holes?|bits?|screws?|anchors?|pilot(?: hole)?|drill|toggles?) (?:size )?for\b/;

/** Questions about what the assistant wants, not about the trade. */
const ABOUT_THE_ASKING = /\b(?:do you (?:need|want|mean)|you asking|should i (?:tell|give) you)\b/;

/** Announces the job itself in question form: "can you help me hang a 24 kg mirror". */
const A_REQUEST =
  /^\W*(?:(?:hi|hey|hello|so)\W+)*(?:can|could|would|will) (?:you|u|someone|anyone|ya) (?:please |pls )?(?:help|tell|work out|give|show|plan|do)\b/;

/** True when a message asks something of the trade rather than answers. */
export function isTradeQuestion(text: string): boolean {
  const low = text.toLowerCase();
  if (TROUBLE.some((form) => form.test(low))) return true;
  if (A_REQUEST.test(low) || ABOUT_THE_ASKING.test(low)) return false;
  if (
    /^\W*(?:is|are|can|will|does|would|could)\b.*\b(?:ok|okay|enough|safe|allowed|hold|good|strong|alright|possible|fine)\b.*\?\s*$/.test(
      low,
    )
  )
    return true;
  if (INSIDE.test(low)) return true;
  const length = low.trim().split(/\s+/).length;
  if (/^\W*(?:what|how|which) \w+\W*$/.test(low)) return true;
  if (ASKS.test(low)) return length > 2;
  return (
    /\?\s*$/.test(low) &&
    /\b(?:what|which|how|can i|could i|should i|is it|is that|ok to|safe to|do i|does it|will it|would it)\b/.test(
      low,
    )
  );
}

const PARTS =
  /(?<=\?)\s*|(?<=[.!;])\s+|,\s*(?=(?:what|which|how|where|can|could|should|do i|does|is it|will)\b)|\s+(?=(?:btw|by the way|oh and|and by the way|and btw)\b)/i;

/** A premise of the question ("hollow block, what do I use") tells nothing of the job; a sentence does. */
const TELLS =
  /\b(?:it'?s|its|it is|is|are|was|btw|by the way|mine|my|weighs?|i'?ve|we'?ve|also|got|(?:want|looking|trying|going|need) to (?:hang|put|mount|fix)|hanging|putting up)\b/i;

/** What is told in the same breath as a question: "how deep should I drill? it's 24kg by the way". Null when nothing is. */
export function besideTheQuestion(text: string): string | null {
  const parts = text.split(PARTS).filter((part) => /[\p{L}\p{N}]/u.test(part));
  if (parts.length < 2) return null;
  const told = parts.filter((part) => TELLS.test(part) && !/\?\s*$/.test(part) && !isTradeQuestion(part));
  return told.length === 0 || told.length === parts.length ? null : told.join(' ; ');
}

/** True for "is it safe", "can I hang a 24 kg mirror …": a question that may carry a whole job. */
export function isRequest(text: string): boolean {
  const low = text.toLowerCase();
  return (
    A_REQUEST.test(low) ||
    /^\W*(?:can|could|how (?:do|can|should|would)|what'?s the best way) (?:i|we|to)\b.{0,20}\b(?:hang|put up|mount|fix)\b/.test(
      low,
    )
  );
}
