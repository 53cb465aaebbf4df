const FILLER =
  "(?:please|mate|thanks|thank you|ta|cheers|that is|thats|that's|it is|it's|we|i|am|is|are|to (?:all|both)(?: of (?:it|them|that))?|boss|love|all(?: of (?:it|them))?|then|so|well|oh|um|er|uh|and|the|for sure|by me|with me|sir|now|here|just|that|it|you|of course|lets|let's)";
const YES =
  '(?:y|yes+|yess|yea|yeah+|yeh|yep+|yup|ya|aye|si|ja|oui|sure thing|sure|ok|okay|okey|okey dokey|k|kk|correct|right|righto|rightio|too right|spot on|exactly|go|go ahead|go for it|go on|do it|sounds (?:good|right|fine|about right)|looks (?:good|right|fine|ok|okay)|lgtm|all good|all right|alright|alrighty|fine|good|great|perfect|confirm|confirmed|i confirm|agreed|agree|accept|accepted|affirmative|understood|understand|i understand|got it|gotcha|noted|will do|roger|absolutely|definitely|certainly|indeed|happy(?: with that)?|true|no worries|fair enough|acknowledged|acknowledge|do(?:ne)?|have|read and understood|i do|we do|i have|we have|they do|it does|ready|👍+|✅|👌)';
const NO =
  "(?:n|no+|nope|nah+|nay|naw|na|non|nein|negative|not really|no thanks|no thank you|not at all|never|no way|don'?t think so|i don'?t|we don'?t|do not|it is ?n[o']?t|it isn'?t|isn'?t|it'?s not|wrong|incorrect|not (?:quite|right|correct|true|yet|now|that i know of)|nothing like that|it does ?n'?t|doesn'?t|they don'?t|haven'?t|i haven'?t|false|👎|disagree|don'?t|as far as i know|afaik|i think not)";

const whole = (word: string): RegExp =>
  new RegExp(
    `^[\\s\\p{P}]*(?:${FILLER}[\\s\\p{P}]+)*${word}(?:[\\s\\p{P}]+(?:${word}|${FILLER}))*[\\s\\p{P}]*$`,
    'iu',
  );

const WHOLE_YES = whole(YES);
const WHOLE_NO = whole(NO);
const PLAIN_NO = whole('(?:n|no+|nope|nah+|nay|naw|na|negative|not at all|no thanks)');

/** Longer than this is never only a yes or a no; it also keeps the patterns from backtracking for long. */
const SHORT = 60;

/** A yes and nothing but a yes. */
export function isYes(text: string): boolean {
  return text.length <= SHORT && WHOLE_YES.test(text);
}

/** A no and nothing but a no. */
export function isNo(text: string): boolean {
  return text.length <= SHORT && WHOLE_NO.test(text);
}

/** A no that cannot be a "not yet" or a "haven't". */
export function isPlainNo(text: string): boolean {
  return text.length <= SHORT && PLAIN_NO.test(text);
}

/** Begins with a yes or a no, before what else it says: "yes, vacuum". */
export function leading(text: string): 'yes' | 'no' | null {
  if (/^\W*(?:yes|yeah|yep|yup|yea|aye|sure thing|sure|ok|okay|correct)\b/i.test(text)) return 'yes';
  if (
    /^\W*(?:no|nope|nah)\b(?! (?:idea|clue|problem|worries|wait|way|need|matter|one|info|tape))/i.test(text)
  )
    return 'no';
  return null;
}

/** "None of these", in answer to a list. */
export function isNoneOfThese(text: string): boolean {
  if (text.length > SHORT) return false;
  return /^\W*(?:no|nope|nah)?\W*(?:none|non|neither|nothing|nil|zero|zilch|nada|not any|no to|all no|no)\b(?:\W*(?:of|these|those|them|the|above|that|thats|any|at|all|apply|applies|apply here|like|here|to|both|it|no|none|nope|everything|every one|on|list|i know|know|mate|thanks|please|is|are|true|as far as|far|as|i|ones|things))*\W*$/i.test(
    text,
  );
}
