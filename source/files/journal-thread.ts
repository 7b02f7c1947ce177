/**
 * A log whose file is written by another thread, which may wait for the disk as long as the disk likes. Here we wait for
 * it only so long that a press may take. Then the press counts as unsaved and the work goes on: what was asked is done
 * in order when the disk answers, and until then nothing is waited for again.
 */
import { MessageChannel, type MessagePort, receiveMessageOnPort, Worker } from 'node:worker_threads';
import type { FileFault, SaveStatus } from '../journal/fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { systemClock } from './clock.ts';
import type { JournalFile } from './journal-file.ts';
import { lockOf } from './lock.ts';
import { HeldBytes, type LogFile } from './log-file.ts';
import type { Report, Request, ThreadAnswer, ThreadBeginning, ThreadData } from './serve-journal.ts';

/** Longer than any disk takes that works, shorter than a hand waits (a rule of thumb). */
const patienceMs = 1000;

/** Threads that owe an answer: the disk of each has not come back. */
const waiting = new Set<JournalThread>();

/** Whether a thread hangs in the system, so that the process cannot end by itself. */
export function hasStuckThread(): boolean {
  for (const thread of waiting) thread.hear();
  return waiting.size > 0;
}

interface ThreadOptions {
  /** The script that calls `serveJournal`: where it stands, or its text. */
  readonly script: URL | string;
  readonly patienceMs?: number;
}

export class JournalThread implements LogFile {
  readonly #options: ThreadOptions;
  readonly path: string;
  /** For a copy elsewhere, which must not wait for this thread. */
  readonly #held: HeldBytes;
  readonly #port: MessagePort;
  readonly #answered = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
  /** The beginning is answered too. */
  #asked = 1;
  /** It was waited for in vain; nothing is waited for until all is answered. */
  #isStuck = false;
  /** Something was asked, and not waited for yet. */
  #isUnheard = false;
  /** Lines given since all was saved. */
  #lines: number;
  #answer: ThreadAnswer;

  private constructor(options: ThreadOptions, beginning: ThreadBeginning, before: ThreadAnswer) {
    this.#options = options;
    this.path = beginning.path;
    this.#held = new HeldBytes(beginning.content);
    this.#lines = beginning.as === 'held' ? beginning.waiting : 0;
    this.#answer = before;
    const { port1, port2 } = new MessageChannel();
    this.#port = port1;
    const workerData: ThreadData = { port: port2, answered: this.#answered, beginning };
    const { script } = options;
    new Worker(script, { eval: typeof script === 'string', workerData, transferList: [port2] }).unref();
    waiting.add(this);
  }

  /** Goes on with a log where `file` leaves it. Does not wait for the thread to begin. */
  static goOn(file: JournalFile, options: ThreadOptions): JournalThread {
    const held = file.handOver();
    const { status, tornPath } = held;
    return new JournalThread(options, { as: 'held', ...held }, succeed({ status, tornPath }));
  }

  get status(): SaveStatus {
    if (this.#isUnheard) this.#settle();
    const { status } = this.#last();
    if (!this.#isStuck) return status;
    return { state: 'unsaved', waiting: this.#lines, trouble: 'no-answer', slowFlushMs: status.slowFlushMs };
  }

  get tornPath(): string | null {
    return this.#last().tornPath;
  }

  append(line: string): void {
    this.hear();
    this.#held.add(new TextEncoder().encode(line));
    this.#lines++;
    this.#ask({ ask: 'append', line });
  }

  save(): SaveStatus {
    this.hear();
    if (!this.#isStuck && this.status.state !== 'saved') this.#ask({ ask: 'save' });
    return this.status;
  }

  /** By a thread of its own, since this one may be waiting. */
  copyTo(path: string): Result<JournalThread, FileFault> {
    const beginning = { as: 'copy', path, lock: lockOf(path), content: this.#held.part(0) } as const;
    const status: SaveStatus = { state: 'saved', slowFlushMs: this.status.slowFlushMs };
    const copy = new JournalThread(this.#options, beginning, succeed({ status, tornPath: null }));
    copy.#wait();
    if (copy.#answer.ok && !copy.#isStuck) return succeed(copy);
    copy.close();
    if (!copy.#answer.ok) return copy.#answer;
    return fail({ code: 'files/trouble', path, trouble: 'no-answer', detail: 'ETIMEDOUT' });
  }

  close(): void {
    this.#ask({ ask: 'close' });
    this.#settle();
  }

  /** Takes in what has been answered. */
  hear(): void {
    for (let got = receiveMessageOnPort(this.#port); got; got = receiveMessageOnPort(this.#port))
      this.#answer = got.message;
    if (Atomics.load(this.#answered, 0) < this.#asked) return;
    this.#isStuck = false;
    waiting.delete(this);
    if (this.#answer.ok && this.#answer.value.status.state === 'saved') this.#lines = 0;
  }

  #ask(request: Request): void {
    this.#port.postMessage(request);
    this.#asked++;
    waiting.add(this);
    this.#isUnheard = true;
  }

  #settle(): void {
    this.#isUnheard = false;
    if (this.#isStuck) this.hear();
    else this.#wait();
  }

  #wait(): void {
    const { patienceMs: mostMs = patienceMs } = this.#options;
    const until = systemClock.elapsedMs() + mostMs;
    for (;;) {
      const count = Atomics.load(this.#answered, 0);
      const leftMs = until - systemClock.elapsedMs();
      this.#isStuck = count < this.#asked;
      if (!this.#isStuck || leftMs <= 0) break;
      Atomics.wait(this.#answered, 0, count, leftMs);
    }
    this.hear();
  }

  /** Only a copy can fail to begin, and one that did is given to nobody. */
  #last(): Report {
    if (!this.#answer.ok) throw new Error(this.#answer.fault.code);
    return this.#answer.value;
  }
}
