/**
 * Text from outside made harmless for a terminal: it comes through whole, and cannot act. Controls (C0, C1) are shown as their
 * pictures or U+FFFD; signs that turn the writing round or cannot be seen are left out (Unicode UAX 9). Line ends stay.
 */
const harmful =
  /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200b\u200e\u200f\u202a-\u202e\u2060-\u2064\u2066\u2067\ufeff]/;

const everyHarmful = new RegExp(harmful, 'g');

export const harmless = (text: string): string =>
  harmful.test(text) ? text.replace(everyHarmful, shownAs) : text;

function shownAs(sign: string): string {
  const code = sign.charCodeAt(0);
  if (code < 0x20) return String.fromCharCode(0x2400 + code);
  return code < 0xa0 ? '\ufffd' : '';
}
