/** Help by topic: what can be done, and lines to try. */

import type { Session } from '../../session/session.ts';
import { rowAt } from '../../steps/job.ts';
import type { Words } from '../../wording/words.ts';
import type { HelpTopicName } from '../help-topic-names.ts';
import type { Named } from '../named.ts';
import { findExample, firstYarn, markExample, noteExample, weighExample } from './help-examples.ts';

export interface HelpTopic extends Named {
  readonly id: HelpTopicName;
  readonly lines: (words: Words) => readonly string[];
  /** Lines to type, in an order in which all of them work. */
  readonly examples: (session: Session, words: Words) => readonly string[];
}

export const helpTopics: readonly HelpTopic[] = [
  {
    id: 'keys',
    names: (words: Words) => words.help.topics.keys.names,
    lines: (words: Words) => words.help.topics.keys.lines,
    examples: () => ['next', 'back'],
  },
  {
    id: 'switches',
    names: (words: Words) => words.help.topics.switches.names,
    lines: (words: Words) => words.help.topics.switches.lines,
    examples: () => ['pedal gap 100', 'pause long', 'pedal confirm'],
  },
  {
    id: 'finding',
    names: (words: Words) => words.help.topics.finding.names,
    lines: (words: Words) => words.help.topics.finding.lines,
    examples: (session) => ['where', findExample(session), 'find and carriage right'],
  },
  {
    id: 'ripping',
    names: (words: Words) => words.help.topics.ripping.names,
    lines: (words: Words) => words.help.topics.ripping.lines,
    examples: ({ job, done }) => [
      'back',
      'redo',
      `rip row ${Math.max(1, rowAt(job, done))}`,
      'choose',
      'stop',
    ],
  },
  {
    id: 'replanning',
    names: (words: Words) => words.help.topics.replanning.names,
    lines: (words: Words) => words.help.topics.replanning.lines,
    examples: () => ['replan 20 stitches 9.8 cm 30 rows 10.5 cm', 'replan longer', 'choose 1', 'back'],
  },
  {
    id: 'yarn',
    names: (words: Words) => words.help.topics.yarn.names,
    lines: (words: Words) => words.help.topics.yarn.lines,
    examples: (session) => [
      'plan',
      'why yarn',
      weighExample(session),
      `replan weighed ${firstYarn(session)} 20`,
    ],
  },
  {
    id: 'log',
    names: (words: Words) => words.help.topics.log.names,
    lines: (words: Words) => words.help.topics.log.lines,
    examples: (_, words) => [noteExample(words), 'notes', markExample(words), 'bags', 'save ../bag.jsonl'],
  },
  {
    id: 'replay',
    names: (words: Words) => words.help.topics.replay.names,
    lines: (words: Words) => words.help.topics.replay.lines,
    examples: () => ['bags'],
  },
  {
    id: 'language',
    names: (words: Words) => words.help.topics.language.names,
    lines: (words: Words) => words.help.topics.language.lines,
    examples: () => ['language auto', 'units cm'],
  },
  {
    id: 'screen',
    names: (words: Words) => words.help.topics.screen.names,
    lines: (words: Words) => words.help.topics.screen.lines,
    examples: () => ['draw strip', 'draw bed', 'large on', 'bell on', 'speech on'],
  },
];
