/** The ways of not knowing, as said on site; sayings.json and the glossary of the trade are where they come from. */
const NOT_KNOWING = [
  /\b(?:do ?n[o']?t|does ?n[o']?t|did ?n[o']?t|would ?n[o']?t|could ?n[o']?t|do not|would not) (?:really |actually |even |rightly )?(?:know|have a clue|have any idea|remember|recall)\b/,
  /\b(?:dunno|dun no|don'?t no|idk|iunno|no idea|no clue|not a clue|clueless|unsure|un ?sure|unknown|not known|not (?:a hundred percent |100% |too |really |very |entirely |quite |all that )?(?:sure|certain))\b/,
  /\b(?:have ?n[o']?t|has ?n[o']?t|ai ?n'?t|have not|haven) (?:got )?(?:a|the|any|no) (?:clue|idea|foggiest|faintest|scooby|tape|scales?)\b/,
  /\b(?:have ?n[o']?t|has ?n[o']?t|have not|has not|not|never|did ?n[o']?t|ain'?t) (?:yet |even |actually |been |got round to )*(?:measured?|weigh(?:ed)?|checked|looked|counted|asked|found out)\b/,
  /\b(?:beats me|search me|who knows|god knows|hard to (?:say|tell)|no way (?:to tell|of knowing|of telling)|your guess is as good|not the foggiest|anyone'?s guess|wouldn'?t have a clue)\b/,
  /\b(?:ca ?n'?t|can not|could ?n[o']?t|cannot) (?:really )?(?:tell|say|see|reach|get (?:at|to)|measure|weigh|remember|find (?:out|it|them|any|one))\b/,
  /^\W*not found(?: (?:it|them|any))?\W*$/,
  /\b(?:i'?ll|i will|will|we'?ll|i'?d|have to|need to|gotta|got to|going to|gonna|let me|must) (?:have to |need to |go (?:and |an |n )?|just |better )*(?:measure|check|look|ask|find out|weigh|get back|see about)\b/,
  /\b(?:boss|client|owner|customer|he|she|they|nobody|no one|landlord) (?:never|did ?n[o']?t|has ?n[o']?t|hasn't) (?:said|say|told|tell|mention(?:ed)?)\b/,
  /\b(?:nobody|no one) (?:told|knows|said)\b/,
  /\bnot (?:that|as far as|so far as) (?:i|we)(?: a?m| are|'m)? ?(?:know|aware)(?: of)?\b/,
  /\b(?:no (?:tape|scales?|tape measure|info(?:rmation)?)|without a tape)\b/,
  /^\W*(?:pass|skip(?: (?:it|this|that|this one|that one))?|later|ask me later|not yet|tbc|tba|n\/?a|no clue|\?\?+|come back to (?:it|that))\W*$/,
];

/** True when the words say, somewhere, that something is not known. */
export function saysNotKnown(text: string): boolean {
  const low = text.toLowerCase();
  return NOT_KNOWING.some((form) => form.test(low));
}
