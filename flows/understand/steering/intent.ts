import type { Intent } from '../../reading.ts';

/** Words that steer the conversation, said on their own; anything longer is read for facts first. */
const STEERING: [Intent, RegExp][] = [
  [
    'start-over',
    /^(?:please |can we |let'?s |i want to |i'd like to |no )*(?:start|begin|go|do (?:it|this)) (?:all )?(?:again|over|afresh|fresh|anew|from scratch|from the (?:start|beginning|top))(?: (?:again|please|mate|from scratch|then|with this))*$/,
  ],
  [
    'start-over',
    /^(?:please )?(?:restart|re-?set|start over|new start|scrap (?:it|this|that|everything|the lot)(?: and start again)?|forget (?:all that|everything|the lot)|clear (?:everything|all|it)|wipe (?:it|everything)|start a ?new|from the top|delete everything|start (?:a )?new job|begin again)(?: please)?$/,
  ],
  [
    'back',
    /^(?:please |can (?:i|we) |let me |no |oops |sorry )*(?:go )?(?:back|go back|undo|back up|step back|previous|previous question|last question|take (?:it|that|the last one) back|scratch that|ignore that|(?:that|last one|the last one) was (?:wrong|a mistake)|revert|rewind|delete (?:that|the last one)|my mistake go back|one back|cancel that|go back (?:a|one) (?:step|question)|back (?:a|one) (?:step|question)|to the (?:last|previous) (?:one|question)|wrong answer)(?: (?:please|mate|one|that|a bit|a step|one step|to the last one|to the previous question))*$/,
  ],
  [
    'stop',
    /^(?:please |let'?s |can we |just |ok |okay )*(?:stop|cancel|quit|exit|enough|that'?s enough|leave it(?: there)?|forget it|never ?mind|abort|end|finish|i'?m (?:done|finished|out)|bye|good ?bye|see ya|call it (?:off|a day)|pause|not now|give up|i give up|stop (?:it|this|there|now|please|here|asking)|shut up|go away|nvm)(?: (?:for now|for today|please|mate|then|thanks|now|all this))*$/,
  ],
  [
    'where-were-we',
    /^(?:so |ok |right |now |and |sorry )*(?:where (?:were|are|was) (?:we|i)(?: (?:up to|at|again|now))*|where did we (?:get to|leave (?:it|off)|stop)|what was the (?:last )?question(?: again)?|(?:repeat|say|ask) (?:that|it|the question|me)(?: again)?|say again|what'?s (?:next|left|missing)|what (?:is|do you) (?:left|still need)|what else(?: do you need)?|continue|carry on|resume|next|go on|keep going|i'?m back|back again|pardon|come again|what did you (?:ask|say)|what (?:have|did) (?:you|we|i) (?:got|get|have|told|tell|say|said|given|noted|written)(?: (?:down|you|so far|already|me))*|what do (?:you|we) (?:know|have|got)(?: (?:about (?:it|this|the job|me)|so far|already|now|for (?:me|this|it)))*|(?:(?:show|give|tell|read) me )?(?:a |the |quick )*(?:summary|recap|overview|answers|list|details)(?: (?:of (?:it|the job|everything)|so far))*|show (?:me )?(?:what (?:you|we)(?:'?ve)? (?:have|got|know)|the answers|everything|it all|the job|progress)(?: so far)?|recap|what'?s (?:done|recorded|the status|outstanding|still (?:open|missing|needed))|how far (?:are we|along(?: are we)?|have we got)|where am i(?: up to)?|progress|summarise|summarize|sum (?:it )?up|status|how (?:much|many) (?:more|to go|left)(?: questions)?|read (?:it|that) back|(?:can you )?remind me)(?: (?:please|mate|then|again))*$/,
  ],
  [
    'help',
    /^(?:please |can you |i need |i want |some |a bit of )*(?:help|help me|helpp?|i'?m stuck|stuck|i'?m lost|lost|menu|commands|options|info|instructions|(?:what|wat) (?:can|do) you do|how does (?:this|it) work|what (?:do|should) i (?:do|say|type|write|answer)(?: now| here)?|what now|how do i (?:do|measure|find|weigh|get|check|tell|answer) (?:that|this|it)(?: out)?|how (?:should|do) i (?:say|answer)|i do ?n'?t understand|do ?n'?t understand|don'?t get it|what do you mean|what'?s that(?: mean)?|how (?:do|can|would|should) (?:i|you|we) (?:tell|know|find out|check)(?: what (?:it is|kind|sort|wall|it'?s made of))?|what does that mean|meaning|examples?|give me an example|huh|eh|how|who are you|what are you|what is this)(?: (?:please|mate|with (?:this|that|it)|me))*$/,
  ],
  [
    'greet',
    /^(?:hello|hullo|hi|hii+|hey+|hiya|oi|g'?day|gday|good (?:morning|afternoon|evening|day)|howdy|yo|hola|hallo|morning|afternoon|evening|sup|what'?s up|how'?s it going|how are you|how ya going|alright|wotcha|hi there|hello there|hey there|ta|cheers|thanks|thank you|thx|much appreciated|nice one|legend|brilliant|great thanks)(?: (?:there|mate|all|everyone|you|again|how are you|how'?s it going|bot|boss|so much|very much|a lot|mate))*$/,
  ],
];

/** Longest message that can be only a steering word. */
const SHORT = 80;

/** What a message that only steers asks for, or null. */
export function steering(text: string): Intent | null {
  const trimmed = text.trim().toLowerCase();
  if (trimmed.length > SHORT) return null;
  if (/^\?{1,3}$/.test(trimmed)) return 'help';
  const bare = trimmed
    .replace(/[.,!?;:…]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return STEERING.find(([, form]) => form.test(bare))?.[0] ?? null;
}
