/** A mistake of the program's own while it has the screen: the terminal is given back before it is told of. */
import { setTimeout } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { useBench } from './home.ts';

/** Each is made in the running program when it gets the signal, or a second after the thread that saves begins. */
const mistakes = {
  'an exception': "process.on('SIGUSR2',()=>{throw(Error('a made mistake'))})",
  'a promise refused': "process.on('SIGUSR2',()=>void(Promise.reject(Error('a made mistake'))))",
  'an exception while drawing':
    "process.on('SIGUSR2',()=>{Object.defineProperty(process.stdout,'columns',{get(){throw(Error('a made mistake'))}})})",
  'an exception in the thread that saves':
    "import{isMainThread}from'node:worker_threads';if(isMainThread)process.on('SIGUSR2',()=>{});else(setTimeout(()=>{throw(Error('a made mistake'))},1000))",
};

describe('a mistake of its own at the bench', () => {
  const bench = useBench();

  it.each(Object.entries(mistakes))(
    '%s is told below the screen, with the log, on a terminal as it was',
    async (_, mistake) => {
      const terminal = bench({
        args: ['demo/token-pouch.json'],
        env: { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(mistake)}` },
      });
      await terminal.waitFor('step 1 of');
      terminal.send('\r');
      await terminal.waitFor('step 2 of');
      terminal.kill('SIGUSR2');
      // A letter, once the signal has come, is drawn.
      await setTimeout(500);
      terminal.send('n');
      expect(await terminal.exited).toMatchObject({ code: 70 });
      const raw = terminal.raw();
      const told = raw.indexOf('Slantwise has a bug (a made mistake)');
      expect(told).toBeGreaterThan(0);
      expect(raw.lastIndexOf('\x1b[?2004l')).toBeGreaterThan(raw.lastIndexOf('\x1b[?2004h'));
      expect(raw.lastIndexOf('\x1b[?2004l')).toBeLessThan(told);
      expect(raw.lastIndexOf('\x1b[?25h')).toBeGreaterThan(raw.lastIndexOf('\x1b[?25l'));
      expect(terminal.screen()).toContain('a made mistake');
      expect(raw.slice(told)).toMatch(/token-pouch[^ ]*\.jsonl: start it again/);
      expect(raw.slice(told)).not.toContain('    at ');
    },
  );
});
