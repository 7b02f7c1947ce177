import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { labelled, pageWidth, table, wrap } from './page.ts';

/** Wide letters take two cells of a terminal, and marks on a letter none (Unicode UAX 11); string-width measures them by itself. */
describe('a page in letters that are wide, or that have marks', () => {
  const texts = [
    '梅 と 薄荷 の 縞 の 巾着 は 13.6 cm です',
    'e\u0301te\u0301 et hiver a\u0300 rayures',
    '자두 와 박하 줄무늬 주머니',
  ];

  it('wraps by the cells they take', () => {
    for (const text of texts)
      for (let columns = 8; columns <= 40; columns++) {
        const lines = wrap(text, columns);
        expect(lines.join(' ')).toBe(text);
        expect(Math.max(...lines.map((line) => stringWidth(line)))).toBeLessThanOrEqual(columns);
      }
    expect(wrap(texts[0] ?? '', 16)).toEqual(['梅 と 薄荷 の 縞', 'の 巾着 は', '13.6 cm です']);
  });

  it('cuts a word that is wider than the page between two cells', () => {
    expect(wrap('巾着袋巾着袋', 5)).toEqual(['巾着', '袋巾', '着袋']);
    expect(wrap('梅', 1)).toEqual(['梅']);
  });

  it('sets columns and labels by cells too', () => {
    const widths = table([
      ['梅', '9 m'],
      ['plum', '12 m'],
    ]).map((line) => stringWidth(line));
    expect(widths).toEqual([11, 11]);
    const lines = labelled('梅', 'stripes and cord '.repeat(12).trim());
    expect(lines.length).toBeGreaterThan(2);
    expect(Math.max(...lines.map((line) => stringWidth(line)))).toBeLessThanOrEqual(pageWidth);
    expect(lines.map((line) => stringWidth(line.slice(0, line.indexOf('s'))))[0]).toBe(12);
  });
});
