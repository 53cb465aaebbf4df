const WHY =
  /^\W*(?:(?:but|and|ok|so|hang on|wait|sorry|um)\W+)*(?:why\b|y\?|y do you\b|how come\b|what(?:'?s| is| was| do you (?:want|need)| would you (?:want|need)| d'?you (?:want|need)| you (?:want|need))(?: to know)? (?:that|this|it|those|these)(?: (?:one|info|number))? for\b|what for\b|for what\b|what'?s (?:that|it|this) (?:got to do|matter)|(?:does|do) (?:it|that|this) (?:really |even )?matter|is (?:that|this|it) (?:really )?(?:needed|necessary|important|relevant)|what difference does|do (?:you|i) (?:really )?(?:need|have) (?:to know )?(?:that|this|it|to (?:say|answer|tell you))|what'?s the (?:point|reason)|what does (?:that|it) (?:have to do|matter)|what'?s it to you|reason\?*$|explain\b|where (?:does|do|did) .{1,40} come from|how (?:did|do) you (?:get|come|work|arrive|know|reckon|calculate)\b|what(?:'?s| is) the (?:basis|source)|who says|says who)/;

const ASKED_ABOUT = [
  /\bwhy (?:is it |are there |are they |is there |do you (?:need|want|ask(?: for| about| me)?)(?: to know)? |do i need (?:a |an )?|must it be |not |only |a |an )*(.*)$/,
  /\bhow come (?:it'?s |there'?s |you (?:need|want|ask(?: for| about)?) )?(.*)$/,
  /\bwhere (?:does|do|did) (?:the )?(.*?) come from/,
  /\bhow (?:did|do) you (?:get|come (?:up with|to)|work out|arrive at|know|reckon|calculate) (.*)$/,
  /\bexplain (.*)$/,
  /\bwhat(?:'?s| is) the (?:basis|source) (?:of|for) (.*)$/,
];

/** Words that point at the open question and at nothing else. */
const THIS_ONE =
  /^(?:that|this|it|those|these|ask|asking|do you ask|so|not|me|matter|does (?:it|that|this) matter|(?:is|does) (?:that|this|it).*|for|do you (?:need|want).*|would you.*|on earth.*|the question|though|please)?$/;

/** True when a message asks for the reason. */
export function asksWhy(text: string): boolean {
  return WHY.test(text.toLowerCase());
}

/** What the reason is asked of, as typed: "72 mm" in "why 72 mm?"; undefined when it is the open question. */
export function askedAbout(text: string): string | undefined {
  const low = text
    .toLowerCase()
    .replace(/[?!.]+\s*$/, '')
    .trim();
  for (const form of ASKED_ABOUT) {
    const about = form.exec(low)?.[1]?.trim();
    if (about !== undefined && !THIS_ONE.test(about)) return about;
  }
  return undefined;
}
