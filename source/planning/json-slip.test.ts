import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusalOf } from '../../test/contract/broken-brief.ts';
import { tries } from '../../test/tools/tries.ts';
import { findJsonSlip } from './json-slip.ts';

/** Place and mend, as they stand in `The brief cannot be read at line 1, column 2: …`. */
const slips: readonly (readonly [text: string, line: number, column: number, mend: string])[] = [
  ['{"a": 1', 1, 8, 'the file ends too soon; close every { with } and every [ with ].'],
  ['{\n  "a": [1,\n', 3, 1, 'the file ends too soon; close every { with } and every [ with ].'],
  ['\uFEFF{', 1, 2, 'the file ends too soon; close every { with } and every [ with ].'],
  ['{ // dice\n}', 1, 3, 'take the comment out, JSON has none.'],
  ["{'a': 1}", 1, 2, "use straight double quotes instead of '."],
  ['{“a”: 1}', 1, 2, 'use straight double quotes instead of “.'],
  ['{\n  "a": "dice\n}', 2, 8, 'close this text with a double quote on the same line.'],
  ['{"a": "C:\\dice"}', 1, 7, 'write \\\\ for a backslash and \\t for a tab inside a text.'],
  ['{"a": "dice\tbag"}', 1, 7, 'write \\\\ for a backslash and \\t for a tab inside a text.'],
  ['{"a": .5}', 1, 7, 'write numbers in plain digits, with a point for decimals and no unit, such as 0.5.'],
  ['{"a": 05}', 1, 8, 'write numbers in plain digits, with a point for decimals and no unit, such as 0.5.'],
  [
    '{"a": 19.2 cm}',
    1,
    12,
    'write numbers in plain digits, with a point for decimals and no unit, such as 0.5.',
  ],
  ['{"a": 19,2}', 1, 10, 'write decimals with a point, such as 19.2.'],
  ['{"a": 1,\r\n}', 2, 1, 'take out the comma before }.'],
  ['[1, ]', 1, 5, 'take out the comma before ].'],
  ['{"a": 1\n "b": 2}', 2, 2, 'put a comma before "b".'],
  ['[{}{}]', 1, 4, 'put a comma before {.'],
  ['{"a" 1}', 1, 6, 'put a colon between the key and its value.'],
  ['{a: 1}', 1, 2, 'put the key a in double quotes.'],
  ['{"a": plum}', 1, 7, 'put plum in double quotes, or write a number.'],
  ['{"a": NaN}', 1, 7, 'put NaN in double quotes, or write a number.'],
  ['{"a": }', 1, 7, 'write a value before }.'],
  ['{"a": ,}', 1, 7, 'write a value before this comma.'],
  ['{"a": [1}', 1, 9, 'this } does not match; close { with } and [ with ], the last opened first.'],
  ['{"a": 1}}', 1, 9, 'the brief is closed before this; take out } and what follows.'],
  ['{"a": 1,, "b": 2}', 1, 9, 'take out this comma, or write what is missing before it.'],
  ['<html>', 1, 1, 'take out <, or write what is missing before it.'],
  ['\u001b[2J', 1, 1, 'take out \\u001b, or write what is missing before it.'],
  [
    '{"plum": 1, "mint": 2, "plum": 3}',
    1,
    24,
    'the key "plum" is here a second time; keep one, or rename it.',
  ],
  [
    '{"plum": 1, "\\u0070lum": 3}',
    1,
    13,
    'the key "\\\\u0070lum" is here a second time; keep one, or rename it.',
  ],
];

describe('a brief that is not sound JSON', () => {
  it.each(slips)('is refused with the place and a mend: %j', (text, line, column, mend) => {
    const sentence = `The brief cannot be read at line ${line}, column ${column}: ${mend}`;
    expect(refusalOf(text)).toEqual(['brief/not-json', sentence]);
  });

  it.each(['', ' \n\t', '\uFEFF'])('is empty: %j', (text) => {
    const sentence = 'The brief is empty: write down at least a name, bed, swatch, bag, yarns and stripes.';
    expect(refusalOf(text)).toEqual(['brief/empty', sentence]);
  });

  it('is too big to be a brief', () => {
    const text = `{"name": "${'\\n'.repeat(500_000)}"}`;
    const sentence = `The file has ${text.length} characters, and a brief at most 1000000: look whether it is the right file.`;
    expect(refusalOf(text)).toEqual(['brief/too-big', sentence]);
  });

  it.each(['x', '\\n'])('is read to the end of its longest text: %j', (part) => {
    const text = `{"name": "${part.repeat(990_000 / part.length)}"}`;
    expect(refusalOf(text)[0]).toBe('brief/too-long');
    expect(refusalOf(text.slice(0, -2))[0]).toBe('brief/not-json');
  });

  it('may have a key again in another group', () => {
    expect(findJsonSlip('{"a": {"rows": 1}, "b": {"rows": 2}, "rows": [{"rows": 3}]}')).toBeNull();
  });
});

describe('sound JSON that is no brief', () => {
  it.each([
    ['[1, 2]', 'The brief is a list: it must be a group in braces { }.'],
    ['7', 'The brief is 7: it must be a group in braces { }.'],
    ['null', 'The brief is null: it must be a group in braces { }.'],
    ['"dice"', 'The brief is the text "dice": it must be a group in braces { }.'],
  ])('is refused: %s', (text, sentence) => {
    expect(refusalOf(text)).toEqual(['brief/wrong-type', sentence]);
  });

  it.each([
    ['brief/wrong-type', 'lists', '[', '', ']'],
    ['brief/unknown-key', 'groups', '{"a":', '1', '}'],
    ['brief/wrong-type', 'lists in a field', '{"bed":[', '', ']}'],
  ])('is refused as %s however deep its %s', (code, _what, open, middle, close) => {
    const inner = open.slice(-1) === '[' ? ['[', ']'] : [open, close];
    const deep = `${open}${(inner[0] ?? '').repeat(50_000)}${middle}${(inner[1] ?? '').repeat(50_000)}${close}`;
    expect(refusalOf(middle === '' ? deep : deep.replace('1', '[]'))[0]).toBe(code);
  });
});

describe('the search for a slip in JSON', () => {
  const accepts = (text: string): boolean => {
    try {
      JSON.parse(text);
      return true;
    } catch {
      return false;
    }
  };
  const agrees = (text: string): void => {
    const slip = findJsonSlip(text);
    if (slip?.slip === 'key-twice') return;
    expect([text, slip === null]).toEqual([text, accepts(text)]);
  };

  it('finds none in any sound JSON', () => {
    fc.assert(
      fc.property(fc.json(), (json) => agrees(json)),
      { numRuns: tries(500) },
    );
  });

  it('agrees with the engine on JSON with a character put in, taken out or changed', () => {
    const character = fc.constantFrom(...'{}[]",:0123456789.-+eE\\ \n\t\r\u00a0\u2028tfnu/x');
    const slip = fc.tuple(fc.json(), fc.nat(), fc.constantFrom(0, 1), fc.option(character, { nil: '' }));
    fc.assert(
      fc.property(slip, ([json, at, taken, put]) => {
        const place = at % (json.length + 1);
        agrees(json.slice(0, place) + put + json.slice(place + taken));
      }),
      { numRuns: tries(5000) },
    );
  });

  it('agrees with the engine on any row of JSON marks', () => {
    const marks = fc.array(
      fc.constantFrom(
        '{',
        '}',
        '[',
        ']',
        ',',
        ':',
        '"a"',
        '"',
        '1',
        '-',
        '.',
        'e',
        'true',
        'null',
        ' ',
        '\\',
      ),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(marks, (row) => agrees(row.join(''))),
      { numRuns: tries(20_000) },
    );
  });
});
