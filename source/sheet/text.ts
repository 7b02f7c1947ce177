/** Text from outside made harmless: it comes through whole, and cannot act. */

import { cellsOf } from '../shared/plain-text.ts';

/** Control characters shown as their pictures; what XML cannot hold as U+FFFD. */
const visible = (text: string): string =>
  text
    .replace(/[\u0000-\u001f]/g, (control) => String.fromCharCode(0x2400 + control.charCodeAt(0)))
    .replace(/[\u007f-\u009f]|\p{Cs}|[\ufffe\uffff]/gu, '\ufffd');

/** A name for use in a line of text: visible, and unable to turn what stands beside it. */
export const plainText = (text: string): string => visible(text).replace(/[\u202a-\u202e\u2066-\u2069]/g, '');

/** For the content and the quoted attributes of XML and HTML. */
export const escapeXml = (text: string): string =>
  visible(text)
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;');

const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/** A name inside a sentence; where it runs from right to left it is isolated (Unicode UAX 9, first strong isolate). */
export const inSentence = (name: string): string =>
  rightToLeft.test(name) ? `\u2068${plainText(name)}\u2069` : plainText(name);

/**
 * For the middle of a line of Markdown: everything that could open markup, HTML, a table cell, a formula or a link of its
 * own (CommonMark 0.31, backslash escapes; GitHub Flavored Markdown, tables and extended autolinks).
 */
export const escapeMarkdown = (text: string): string =>
  visible(text)
    .replace(/[\\`*_[\]<>#|&~@$]/g, '\\$&')
    .replace(/:(?=\/\/)|(?<=www)\./gi, '\\$&');

/** Cuts to `columns` terminal cells, between graphemes, with a mark where something is left out. */
export function cutToCells(text: string, columns: number, mark: string): string {
  if (cellsOf(text) <= columns) return text;
  const room = columns - cellsOf(mark);
  let kept = '';
  for (const { segment } of new Intl.Segmenter('en').segment(text)) {
    if (cellsOf(kept + segment) > room) break;
    kept += segment;
  }
  return room < 0 ? '' : kept + mark;
}

export const formatAngle = (degrees: number): string => `${Math.round(degrees)}°`;

/** `5` or `5–8`. */
export const span = (from: number, through: number): string =>
  from === through ? `${from}` : `${from}–${through}`;
