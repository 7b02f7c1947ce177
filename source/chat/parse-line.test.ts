import { describe, expect, it } from 'vitest';
import { englishWords } from '../wording/words.ts';
import { formatChatFault } from './chat-faults.ts';
import { chatCommands } from './commands/chat-commands.ts';
import { completeLine, parseLine } from './parse-line.ts';

const weigh = (yarn: string, value: number, unit: string | null) => ({
  kind: 'weigh',
  weighed: { yarn, amount: { value, unit } },
});
const confirm = (count: number) => ({ kind: 'do', command: { do: 'confirm', count } });

describe('a typed line', () => {
  it.each([
    ['', confirm(1)],
    ['next', confirm(1)],
    ['  Next   12 ', confirm(12)],
    ['nex 3', confirm(3)],
    ['/next', confirm(1)],
    ['back', { kind: 'do', command: { do: 'back' } }],
    ['undo', { kind: 'do', command: { do: 'back' } }],
    ['note', null],
    ['note  mint feels   tighter', { kind: 'do', command: { do: 'note', text: 'mint feels   tighter' } }],
    ['weigh plum 22', weigh('plum', 22, null)],
    ['weigh Dark plum 22,5 g', weigh('Dark plum', 22.5, 'g')],
    ['weigh plum 2 0.8oz', weigh('plum 2', 0.8, 'oz')],
    ['go stripe 3', { kind: 'go', to: { at: 'stripe', number: 3 } }],
    ['go st 3', null],
    ['go strip 3', { kind: 'go', to: { at: 'stripe', number: 3 } }],
    ['go strip', { kind: 'go', to: { at: 'phase', phase: 'stripes' } }],
    ['go stitch 12 of the graft', { kind: 'go', to: { at: 'stitch', number: 12 } }],
    ['go graft 12', { kind: 'go', to: { at: 'stitch', number: 12 } }],
    ['go round 40', { kind: 'go', to: { at: 'round', number: 40 } }],
    ['go cord 40', { kind: 'go', to: { at: 'round', number: 40 } }],
    ['go seam 3', { kind: 'go', to: { at: 'bar', number: 3 } }],
    ['go bar 5', { kind: 'go', to: { at: 'bar', number: 5 } }],
    ['go closing-row 3', null],
    ['rip 3 rows', { kind: 'rip', to: { at: 'rows-back', count: 3 } }],
    ['rip last row', { kind: 'rip', to: { at: 'rows-back', count: 1 } }],
    ['rip the last row', { kind: 'rip', to: { at: 'rows-back', count: 1 } }],
    ['back 3', { kind: 'do', command: { do: 'back' }, times: 3 }],
    ['undo row', { kind: 'rip', to: { at: 'rows-back', count: 1 } }],
    ['where R10 R55 plum', null],
    ['go graft', { kind: 'go', to: { at: 'phase', phase: 'graft' } }],
    ['go closing row', { kind: 'go', to: { at: 'phase', phase: 'closing-row' } }],
    ['go cast', { kind: 'go', to: { at: 'phase', phase: 'cast-on' } }],
    ['go mark before the rehang', { kind: 'go', to: { at: 'mark', name: 'before the rehang' } }],
    ['rip row 30', { kind: 'rip', to: { at: 'row', number: 30 } }],
    ['choose', { kind: 'choose', number: null }],
    ['choose 2', { kind: 'choose', number: 2 }],
    ['stop', { kind: 'stop' }],
    ['bags', { kind: 'bags' }],
    ['whe', { kind: 'show', what: 'where' }],
    ['help go', { kind: 'help', topic: 'go' }],
    ['quit', { kind: 'quit' }],
  ])('%j', (line, intent) => {
    const parsed = parseLine(line, englishWords);
    expect(parsed.ok ? parsed.value : null).toEqual(intent);
  });

  it.each([
    ['care nothing', 'chat/unknown-command', 'There is no command care. Type help to see them all.'],
    ['i need nothing', 'chat/unknown-command', 'There is no command i. Type help to see them all.'],
    ['wh', 'chat/ambiguous', 'wh could be where or why: type one more letter.'],
    ['nxet', 'chat/unknown-command', 'There is no command nxet. Did you mean next?'],
    ['xyzzy', 'chat/unknown-command', 'There is no command xyzzy. Type help to see them all.'],
    ['next two', 'chat/not-a-count', 'two is not a whole number above 0. For example: next 4.'],
    ['next -1', 'chat/not-a-count', '-1 is not a whole number above 0. For example: next 4.'],
    ['q anything', 'chat/takes-nothing', 'quit takes no other words: type it without "anything".'],
    ['exit the row', 'chat/takes-nothing', 'quit takes no other words: type it without "the row".'],
    ['note', 'chat/needs-more', 'Something is missing. For example: note TEXT.'],
    ['weigh', 'chat/needs-more', 'Something is missing. For example: weigh plum 22 g.'],
    [
      'weigh plum -3',
      'chat/not-a-weighing',
      'plum -3 is not a yarn and a weight of 0 or more. For example: weigh plum 22 g.',
    ],
    [
      'weigh 22 g',
      'chat/not-a-weighing',
      '22 g is not a yarn and a weight of 0 or more. For example: weigh plum 22 g.',
    ],
    ['cord', 'chat/needs-more', 'Something is missing. For example: cord 7.4.'],
    ['cord 7.4 cups', 'chat/not-a-length', '7.4 cups is not a length. For example: cord 7.4.'],
    ['measured', 'chat/needs-more', 'Something is missing. For example: measured 13.6 18.'],
    [
      'measured 13.6',
      'chat/not-two-sizes',
      '13.6 is not a width and a depth. For example: measured 13.6 18.',
    ],
    ['go', 'chat/needs-more', 'Something is missing. For example: go stripe 3.'],
    [
      'go home',
      'chat/unknown-place',
      'home is not a place to go to. For example: go stripe 3; type help go for more.',
    ],
    ['re', 'chat/ambiguous', 're could be redo, replan, rename, restore or record: type one more letter.'],
    [
      'find L9',
      'chat/which-edge',
      'Is L9 the left edge or the right? Type left L9, or right L9, or give both edges.',
    ],
    ['choose some', 'chat/not-a-count', 'some is not a whole number above 0. For example: choose 2.'],
    ['rip', 'chat/needs-more', 'Something is missing. For example: rip stripe 3.'],
  ])('%j is answered with what to type instead', (line, code, sentence) => {
    const parsed = parseLine(line, englishWords);
    expect(parsed.ok ? null : parsed.fault.code).toBe(code);
    expect(parsed.ok ? null : formatChatFault(parsed.fault, englishWords)).toBe(sentence);
  });

  it('means the same when a command is shortened as far as it stays clear', () => {
    for (const { name, example } of chatCommands) {
      const whole = parseLine(example, englishWords);
      expect(whole.ok, example).toBe(true);
      const others = chatCommands.filter((other) => other.name !== name && !name.startsWith(other.name));
      for (let length = 1; length < name.length; length++) {
        const begun = name.slice(0, length);
        const clear = others.every(
          (other) => !other.name.startsWith(begun) && !other.aliases.includes(begun),
        );
        if (!clear || chatCommands.some((other) => other.name === begun)) continue;
        if (chatCommands.some((other) => other.name !== name && other.name.startsWith(begun))) continue;
        expect(parseLine(example.replace(name, begun), englishWords), begun).toEqual(whole);
      }
    }
  });
});

describe('completion', () => {
  it.each([
    ['n', ['next', 'note', 'notes', 'new']],
    ['/whe', ['/where']],
    ['go s', ['go stripes', 'go seam', 'go stripe', 'go step', 'go stitch']],
    ['go mark be', ['go mark before']],
    ['rip mark a', ['rip mark after']],
    ['replan s', ['replan shorter']],
    ['xyz', []],
  ])('%j', (text, found) => {
    expect(completeLine(text, ['before', 'after'])).toEqual(found);
  });
});
