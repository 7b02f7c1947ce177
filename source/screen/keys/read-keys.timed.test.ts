import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { PassThrough } from 'node:stream';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { bundleScript } from '../../../test/terminal/rig/bundle-script.ts';
import { openTerminal, type Terminal } from '../../../test/terminal/rig/pseudo-terminal.ts';
import { keyId } from './key.ts';
import { type ReadKeysOptions, readKeys } from './read-keys.ts';

/** Reads from a stream that stands in for a terminal, with a clock and timers moved by hand. */
function listen(options: Partial<ReadKeysOptions> = {}) {
  const modes: string[] = [];
  const stdin = Object.assign(new PassThrough(), {
    isTTY: true,
    isRaw: false,
    setRawMode(isRaw: boolean) {
      modes.push(isRaw ? 'raw' : 'cooked');
      stdin.isRaw = isRaw;
    },
  });
  let time = 1000;
  let timersSet = 0;
  let timer: { readonly action: () => void; readonly waitMs: number } | undefined;
  const heard: string[] = [];
  const reader = readKeys(
    stdin as unknown as NodeJS.ReadStream,
    (key, { at }) => heard.push(`${keyId(key)} at ${at}`),
    {
      output: { write: (text) => modes.push(text) },
      now: () => time,
      setTimer(action, waitMs) {
        timersSet++;
        timer = { action, waitMs };
        return () => {
          timer = undefined;
        };
      },
      ...options,
    },
  );
  return {
    ...{ reader, stdin, modes, heard },
    send: (chunk: Buffer | string) => stdin.emit('data', chunk),
    passMs(ms: number) {
      time += ms;
    },
    timersSet: () => timersSet,
    waitMs: () => timer?.waitMs,
    fire() {
      timer?.action();
    },
  };
}

const readers: { reader: { stop(): void } }[] = [];
const listening = (options?: Partial<ReadKeysOptions>) => {
  const all = listen(options);
  readers.push(all);
  return all;
};
afterEach(() => {
  for (const { reader } of readers.splice(0)) reader.stop();
});

describe('reading keys', () => {
  test('gives each key the time its input arrived', () => {
    const { send, passMs, heard } = listening();
    send('ab');
    passMs(40);
    send('\x1b[1;2P');
    expect(heard).toEqual(['a at 1000', 'b at 1000', 'f13 at 1040']);
  });

  test('puts together a character whose bytes come apart', () => {
    const { send, heard } = listening();
    for (const byte of Buffer.from('ö🧶')) send(Buffer.of(byte));
    expect(heard).toEqual(['ö at 1000', '🧶 at 1000']);
  });

  test('takes a lone Escape for a key after 30 ms, with the time it came', () => {
    const { send, passMs, heard, waitMs, fire } = listening();
    send('\x1b');
    expect(heard).toEqual([]);
    expect(waitMs()).toBe(30);
    passMs(30);
    fire();
    expect(heard).toEqual(['escape at 1000']);
  });

  test('does not take the Escape of an arrow for a key', () => {
    const { send, heard, waitMs } = listening();
    send('\x1b');
    send('[A');
    expect(waitMs()).toBeUndefined();
    expect(heard).toEqual(['up at 1000']);
  });

  test('waits longer for the rest of a sequence, but not longer for more of it', () => {
    const { send, heard, waitMs, timersSet, fire } = listening();
    send('\x1b]11;');
    expect(waitMs()).toBe(250);
    send('rgb');
    expect(timersSet()).toBe(1);
    fire();
    send('b');
    expect(heard).toEqual(['b at 1000']);
  });

  test('gives up a paste that never ends', () => {
    const { send, heard, waitMs, fire } = listening();
    send('\x1b[200~plum');
    expect(waitMs()).toBe(2000);
    fire();
    expect(heard).toEqual(['paste at 1000']);
  });

  test('says when the terminal is gone', () => {
    const ends: string[] = [];
    const { stdin } = listening({ onEnd: () => ends.push('end') });
    stdin.emit('error', new Error('read EIO'));
    expect(ends).toEqual(['end']);
  });
});

describe('the modes of the terminal', () => {
  test('are set at first and put back by stop, once', () => {
    const { reader, modes, send, heard } = listening();
    reader.stop();
    reader.stop();
    send('b');
    expect(modes).toEqual(['raw', '\x1b[?2004h', '\x1b[?2004l', 'cooked']);
    expect(heard).toEqual([]);
  });

  test('include kinds on request, taken back in reverse order', () => {
    const { reader, modes } = listening({ reportKinds: true });
    reader.stop();
    expect(modes).toEqual(['raw', '\x1b[?2004h', '\x1b[>27u', '\x1b[<u', '\x1b[?2004l', 'cooked']);
  });

  test('ask for kinds once, however often the program goes on', () => {
    const { reader, modes } = listening({ reportKinds: true });
    process.emit('SIGCONT');
    process.emit('SIGCONT');
    reader.stop();
    expect(modes.filter((mode) => mode === '\x1b[>27u')).toHaveLength(1);
    expect(modes.filter((mode) => mode === '\x1b[<u')).toHaveLength(1);
  });

  test('are set again when the program goes on, before the caller hears of it', () => {
    const { modes } = listening({ onResume: () => modes.push('resumed') });
    process.emit('SIGCONT');
    expect(modes.slice(2)).toEqual(['cooked', 'raw', '\x1b[?2004h', 'resumed']);
  });

  test('leave no listener behind', () => {
    const before = process.listenerCount('SIGCONT');
    const { reader, stdin } = listening();
    reader.stop();
    expect(['data', 'end', 'error'].map((name) => stdin.listenerCount(name))).toEqual([0, 0, 0]);
    expect(process.listenerCount('SIGCONT')).toBe(before);
  });
});

describe('in a real terminal', () => {
  let script = '';
  let terminal: Terminal;
  beforeAll(async () => {
    script = await bundleScript(
      `import { readKeys } from './read-keys.ts';
       import { keyId } from './key.ts';
       const print = (line) => process.stdout.write(line + '\\n');
       const reader = readKeys(process.stdin, (key) => {
         print('[' + keyId(key) + ']' + (key.name === 'paste' ? JSON.stringify(key.text) : ''));
         if (key.name === 'q') reader.stop();
         if (key.name === 'w') for (const until = Date.now() + 400; Date.now() < until; );
         if (key.ctrl && key.name === 'z') reader.suspend();
       }, { output: process.stdout, onResume: () => print('resumed') });
       print('listening');`,
      import.meta.dirname,
    );
  });
  afterEach(() => terminal.close());
  afterAll(() => rmSync(dirname(script), { recursive: true }));

  test('keys come one by one, Ctrl-C among them, and the program ends when it stops reading', async () => {
    terminal = openTerminal({ command: process.execPath, args: [script] });
    await terminal.waitFor('listening');
    terminal.send('\x03\x1b[1;2P🧶\x1b[200~two\nlines\x1b[201~');
    await terminal.waitFor('[paste]"two\\nlines"');
    terminal.send('\x1b');
    await terminal.waitFor('[escape]');
    terminal.send('q');
    expect(await terminal.exited).toEqual({ code: 0, signal: undefined });
    expect(terminal.screen().split('\n')).toEqual([
      ...['listening', '[ctrl+c]', '[f13]', '[🧶]', '[paste]"two\\nlines"', '[escape]', '[q]'],
    ]);
    expect(terminal.raw()).toContain('\x1b[?2004l');
  });

  test('an Escape is no key of its own when the rest of its sequence came while the program was busy', async () => {
    terminal = openTerminal({ command: process.execPath, args: [script] });
    await terminal.waitFor('listening');
    terminal.send('w\x1b');
    await terminal.waitFor('[w]');
    terminal.send('[A');
    await terminal.waitFor('[w]\n[up]');
  });

  test('Ctrl-Z gives the shell its terminal, and fg brings the keys back', async () => {
    terminal = openTerminal({ command: 'bash', args: ['--norc', '-i'], env: { PS1: 'shell> ' } });
    await terminal.waitFor('shell>');
    terminal.send(`'${process.execPath}' '${script}'; echo over\r`);
    await terminal.waitFor('listening');
    terminal.send('\x1a');
    await terminal.waitFor(/Stopped[\s\S]*shell>$/);
    terminal.send('echo cooked $((6 * 7))\r');
    await terminal.waitFor('cooked 42');
    terminal.send('fg\r');
    await terminal.waitFor('resumed');
    terminal.send('b\x03');
    await terminal.waitFor(/\[b\]\n\[ctrl\+c\]/);
    terminal.send('q');
    await terminal.waitFor(/\[q\]/);
  });

  test('Ctrl-Z does no harm where no shell is there to go back to', async () => {
    terminal = openTerminal({ command: process.execPath, args: [script] });
    await terminal.waitFor('listening');
    terminal.send('\x1a');
    await terminal.waitFor('resumed');
    terminal.send('\x03');
    await terminal.waitFor('[ctrl+c]');
  });
});
