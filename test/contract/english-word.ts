/** A word that no German sentence has. From memory: the commonest of English, and the trade's. */
export const englishWord =
  /\b(the|and|of|to|with|from|at|by|on|or|not|for|is|are|be|has|it|its|this|that|there|which|one|each|then|after|before|left|right|end|rows?|needle|loops?|knit|cut|feeder|inches)\b/i;
