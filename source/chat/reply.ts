/** What comes back on a line typed at the prompt. Nothing is performed here: the effect is part of the reply. */

import type { Command } from '../session/command.ts';
import type { Session } from '../session/session.ts';
import type { PedalAct, SettingChange } from '../settings/settings.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { metric, type Units } from '../shared/units.ts';
import { stepAt } from '../steps/job.ts';
import { doneBefore, type LandmarkFault } from '../steps/landmarks.ts';
import type { ChatFault, Intent, Picture } from './intent.ts';
import { answer, type Line } from './line.ts';
import { formatTopic } from './wording/help.ts';
import { sayMarks, sayNotes, sayPlace, sayWhere } from './wording/place.ts';
import { formatPlanPage } from './wording/plan-page.ts';
import { sayStep } from './wording/steps.ts';

export type Reply =
  | { readonly kind: 'do'; readonly command: Command }
  | { readonly kind: 'say'; readonly lines: readonly Line[] }
  | { readonly kind: 'set'; readonly change: SettingChange }
  | { readonly kind: 'pedal'; readonly act: PedalAct | 'off' | null }
  | { readonly kind: 'again' }
  | { readonly kind: 'draw'; readonly picture: Picture | null }
  | { readonly kind: 'sheet'; readonly out: string }
  | { readonly kind: 'leave' };

export function replyTo(
  session: Session,
  intent: Intent,
  units: Units = metric,
): Result<Reply, ChatFault | LandmarkFault> {
  switch (intent.kind) {
    case 'do':
      return succeed({ kind: 'do', command: intent.command });
    case 'go':
      return replyToGo(session, intent.to);
    case 'show':
      return succeed({ kind: 'say', lines: show(session, intent.what, units) });
    case 'help':
      return succeed({ kind: 'say', lines: answer(...formatTopic(intent.topic)) });
    case 'set':
    case 'pedal':
    case 'again':
    case 'draw':
    case 'sheet':
    case 'leave':
      return succeed(intent);
  }
}

type Place = Extract<Intent, { readonly kind: 'go' }>['to'];

function replyToGo(session: Session, to: Place): Result<Reply, ChatFault | LandmarkFault> {
  if (to.at === 'mark') {
    const done = session.marks.get(to.name);
    return done === undefined
      ? fail({ code: 'chat/no-such-mark', name: to.name, known: [...session.marks.keys()] })
      : succeed({ kind: 'do', command: { do: 'jump', done } });
  }
  const done = doneBefore(session.job, to);
  return done.ok ? succeed({ kind: 'do', command: { do: 'jump', done: done.value } }) : done;
}

function show(
  session: Session,
  what: Extract<Intent, { readonly kind: 'show' }>['what'],
  units: Units,
): readonly Line[] {
  switch (what) {
    case 'where':
      return answer(...sayWhere(session));
    case 'plan':
      return answer(...formatPlanPage(session.job.plan, { units }).split('\n'));
    case 'notes':
      return answer(...sayNotes(session));
    case 'marks':
      return answer(...sayMarks(session));
  }
}

/** What the transcript says once a command has been carried out. */
export function sayDone(before: Session, after: Session, command: Command): readonly Line[] {
  switch (command.do) {
    case 'confirm':
      return doneLines(before, after);
    case 'take-back':
      return answer(`Taken back: ${sayPlace(after)}`);
    case 'redo':
      return answer(`Done again: ${sayPlace(after)}`);
    case 'jump':
      return answer(`Jumped: ${sayPlace(after)}`, ...sayWhere(after).slice(1));
    case 'note':
      return answer(`Noted: ${command.text}`);
    case 'rip-back':
      return answer(`Ripped back: ${sayPlace(after)}`, ...sayWhere(after).slice(1));
    case 'mend':
      return answer(`Set right: ${sayPlace(after)}`);
    case 'replan':
      return answer(`Planned anew: ${after.job.plan.rows} rows round. ${sayPlace(after)}`);
    case 'mark':
      return answer(`Marked this place as ${command.name}.`);
  }
}

function doneLines({ done, job }: Session, after: Session): readonly Line[] {
  const last = after.done;
  const text =
    last === done + 1
      ? `${last} ${sayStep(job.plan, stepAt(job, last))}`
      : `${done + 1} to ${last}: ${last - done} steps confirmed`;
  return [{ tone: 'done', text }];
}
