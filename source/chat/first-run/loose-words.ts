/** What people say around an answer: words that make a number less sure, and lines that say nobody knows. */

const hedges =
  /(?<!\p{L})(?:about|roughly|approximately|approx\.?|circa|ca\.?|maybe|some|ungefähr|etwa|zirka|vielleicht)\s*(?=[\d~≈½¼¾])/giu;

/** Only where a part of the line begins: behind a number they are the girth. */
const rounds = /(^|[,;]|(?<!\p{L})(?:by|x|and|mal|und)(?!\p{L}))\s*(?:around|rund)\s*(?=[\d~≈½¼¾])/giu;

const trailing = /\s*(?:or so|oder so|more or less|mehr oder weniger)\s*$/iu;

/** The line with its numbers as if they were sure. */
export const withoutHedges = (line: string): string =>
  line
    .replace(hedges, ' ')
    .replace(rounds, '$1 ')
    .replace(/[~≈]\s*(?=[\d½¼¾])/g, '')
    .replace(trailing, '')
    .trim();

const unsure =
  /^(?:(?:i )?(?:dunno|don'?t know|do not know)(?: yet)?|no idea|not sure|skip|unknown|any|whatever|usual|wei(?:ß|ss) (?:ich )?nicht|ich wei(?:ß|ss) (?:es )?nicht|keine ahnung|egal|überspringen|üblich)[.!]?$/iu;

/** Takes what is usual, as an empty line does. */
export const isUnsure = (line: string): boolean => unsure.test(line.trim());
